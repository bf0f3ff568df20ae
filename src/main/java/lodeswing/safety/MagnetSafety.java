package lodeswing.safety;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Figures of magnets that are alike, each by itself.
 *
 * @param kind which
 * @param index flux index; empty for dipoles, which have no face
 * @param smallPart whether it fits into the gauge for small parts
 * @param over whether it is a small part with an index at or over the limit
 * @param reach distance in front of its face beyond which it has less than 0.5 mT [m]
 * @param pinch pull on its like at contact, the same as on thick steel [N]; empty for dipoles
 */
public record MagnetSafety(
    MagnetKind kind,
    Optional<FluxIndex> index,
    boolean smallPart,
    boolean over,
    double reach,
    OptionalDouble pinch) {}
