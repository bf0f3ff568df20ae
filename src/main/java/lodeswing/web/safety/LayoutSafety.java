package lodeswing.web.safety;

import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.safety.SafetyReview;
import lodeswing.safety.SafetyRig;
import lodeswing.web.body.Body;
import lodeswing.web.layout.LayoutDocument;

/** Maps a layout with who uses it and how it is held to what the cautions ask. */
final class LayoutSafety {

  private LayoutSafety() {}

  /** The review of a layout. */
  static SafetyReview review(LayoutDocument document) {
    return SafetyReview.of(rig(document));
  }

  static SafetyRig rig(LayoutDocument document) {
    Optional<Body> audience = document.canonical().findObject("audience");
    return new SafetyRig(
        document.layout(),
        document.magnetMasses(),
        document.bobMagnetMass(),
        audience.map(own -> own.findNumber("ageFrom")).orElse(OptionalDouble.empty()),
        document
            .canonical()
            .findObject("plate")
            .flatMap(own -> own.findText("fixing"))
            .map("fixed"::equals),
        flag(audience, "laser"),
        flag(audience, "filings"));
  }

  private static Optional<Boolean> flag(Optional<Body> audience, String member) {
    return audience.filter(own -> own.has(member)).map(own -> own.flag(member));
  }
}
