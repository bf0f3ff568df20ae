package lodeswing.web.check;

import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.analysis.check.CheckedRig;
import lodeswing.analysis.check.CheckedRig.Hook;
import lodeswing.analysis.check.CheckedRig.Plate;
import lodeswing.analysis.check.CheckedRig.Stand;
import lodeswing.analysis.check.CheckedRig.Surroundings;
import lodeswing.web.body.Body;
import lodeswing.web.layout.LayoutDocument;

/** Maps a layout with all that stands about it to what a check knows, in SI. */
final class LayoutRig {

  private static final double MM = 1000;

  private LayoutRig() {}

  static CheckedRig of(LayoutDocument document) {
    Optional<Body> stand = document.canonical().findObject("stand");
    Optional<Body> plate = document.canonical().findObject("plate");
    Optional<Body> hook = document.canonical().findObject("hook");
    Surroundings around =
        new Surroundings(
            new Stand(
                metres(stand, "heightMm"),
                metres(stand, "baseMm"),
                scaled(stand, "tiltDeg", Math.toRadians(1))),
            new Plate(
                plate.flatMap(own -> own.findText("fixing")).map("fixed"::equals),
                scaled(plate, "frictionCoefficient", 1)),
            new Hook(
                metres(hook, "openingMm"), metres(hook, "depthMm"), scaled(hook, "ratedLoadN", 1)),
            metres(document.canonical().findObject("tolerances"), "gapMm"),
            scaled(document.canonical().findObject("audience"), "ageFrom", 1));
    return new CheckedRig(
        document.layout(),
        document.labels().stream().map(Optional::isPresent).toList(),
        document.magnetMasses(),
        around);
  }

  private static OptionalDouble metres(Optional<Body> body, String member) {
    return scaled(body, member, 1 / MM);
  }

  private static OptionalDouble scaled(Optional<Body> body, String member, double unit) {
    OptionalDouble own = body.map(b -> b.findNumber(member)).orElse(OptionalDouble.empty());
    return own.isPresent() ? OptionalDouble.of(own.getAsDouble() * unit) : own;
  }
}
