package lodeswing.safety;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.core.rig.Layout;

/**
 * A rig with what its cautions ask of it.
 *
 * @param layout what moves
 * @param plateMasses of the plate's magnets [kg], where they are known
 * @param bobMagnetMass of the bob's magnet [kg], where it is known
 * @param youngest age of the youngest who uses it [years], where that is said
 * @param fixed whether the plate's magnets are glued, screwed or let in, where that is said
 * @param laser whether a laser is used with it, where that is said
 * @param filings whether iron filings are used with it, where that is said
 */
public record SafetyRig(
    Layout layout,
    List<OptionalDouble> plateMasses,
    OptionalDouble bobMagnetMass,
    OptionalDouble youngest,
    Optional<Boolean> fixed,
    Optional<Boolean> laser,
    Optional<Boolean> filings) {

  public SafetyRig {
    plateMasses = List.copyOf(plateMasses);
  }
}
