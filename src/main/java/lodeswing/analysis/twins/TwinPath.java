package lodeswing.analysis.twins;

import java.util.OptionalDouble;

/**
 * One of two paths, followed to its end.
 *
 * @param watch what was seen of it
 * @param trustedUntil until when the computed path is right; empty where that was not reached
 * @param sealedAt when its end was decided
 */
public record TwinPath(TwinWatch watch, OptionalDouble trustedUntil, OptionalDouble sealedAt) {}
