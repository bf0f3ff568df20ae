package lodeswing.web.safety;

import java.util.Arrays;
import lodeswing.safety.SafetyCode;
import lodeswing.safety.Severity;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.MapShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;

/** What the answer about safety notes looks like. */
final class SafetyShapes {

  private static final Shape TEXT = new TextShape(10_000);
  private static final Shape NUMBER = NumberShape.between(0, 1e300);
  private static final ListShape POINTERS = new ListShape(TEXT, 0, 10);
  private static final ChoiceShape CODES =
      ChoiceShape.of(
          Arrays.stream(SafetyCode.values()).map(SafetyCode::word).toArray(String[]::new));
  private static final ChoiceShape SEVERITY =
      ChoiceShape.of(Arrays.stream(Severity.values()).map(Severity::word).toArray(String[]::new));

  private static final ObjectShape LIMIT =
      ObjectShape.named(
              "SafetyLimit",
              "What a figure is held against, or the flux density that a distance is computed from.")
          .open()
          .required("figure", TEXT, "Name of the figure.")
          .optional("value", NUMBER, "The limit, in the figure's unit.")
          .optional("fieldMillitesla", NUMBER, "The flux density.")
          .build();

  private static final ObjectShape NOTE =
      ObjectShape.named("SafetyNote", "One caution.")
          .open()
          .required("code", CODES, "What it is about.")
          .required(
              "severity",
              SEVERITY,
              "danger: can kill or maim; warning: can injure; caution: can injure slightly or spoil"
                  + " things; note: good to know.")
          .required("title", TEXT, "A title.")
          .required("text", TEXT, "The caution in full sentences, with its figures.")
          .required("short", TEXT, "The same in one line.")
          .required("rule", TEXT, "When it is said and how its figures are computed.")
          .required("source", TEXT, "Where its limits and its advice are from.")
          .required("notCovered", TEXT, "What it does not take into account.")
          .required("figures", new MapShape(NUMBER, 20, 60), "Figures; each name tells its unit.")
          .optional("limits", new ListShape(LIMIT, 0, 10), "What the figures are held against.")
          .optional("needs", POINTERS, "Pointers of members of the layout that would tell more.")
          .build();

  private static final ObjectShape MAGNET =
      ObjectShape.named("MagnetSafety", "Figures of magnets that are alike, each by itself.")
          .open()
          .required("of", TEXT, "JSON Pointer of the first of them in the canonical layout.")
          .required("count", NUMBER, "How many they are.")
          .required("names", TEXT, "Their labels or numbers.")
          .optional(
              "smallPart",
              new FlagShape(),
              "Whether one fits into the small-parts gauge; left out for dipoles, which have no"
                  + " size.")
          .optional(
              "fluxIndexKilogaussSquareMm2",
              NUMBER,
              "Magnetic flux index; left out for dipoles, which have no face.")
          .optional(
              "probeReadingMillitesla",
              NUMBER,
              "Greatest flux density along its own axis that the standard probe reads 0.38 mm above"
                  + " the pole face.")
          .optional("poleAreaMm2", NUMBER, "Area of the pole face, of a sphere of its section.")
          .optional(
              "overLimit",
              new FlagShape(),
              "Whether it is a small part with an index of 50 or more.")
          .required(
              "distanceToHalfMilliteslaMm",
              NUMBER,
              "Distance in front of the pole face beyond which it has less than 0.5 mT.")
          .optional(
              "pinchForceN",
              NUMBER,
              "Pull on its like at contact, which is also that on thick steel; left out for dipoles.")
          .build();

  /** The document. */
  static final ObjectShape DOCUMENT =
      ObjectShape.named("SafetyNotes", "The cautions for a rig.")
          .open()
          .required("layoutId", TEXT, "The layout.")
          .required("model", ChoiceShape.of("bench", "textbook"), "The model.")
          .required("title", TEXT, "A heading.")
          .required("severity", SEVERITY, "The gravest of the notes.")
          .required("notes", new ListShape(NOTE, 1, 50), "The cautions.")
          .required(
              "magnets",
              new ListShape(MAGNET, 0, 300),
              "Each kind of magnet: the bob's first, then in the order of the plate's.")
          .required(
              "lines",
              new ListShape(TEXT, 1, 50),
              "What every sheet prints: the cautions in short, the gravest first, and to whom they"
                  + " defer.")
          .optional("needs", POINTERS, "Pointers of members that would bring more cautions.")
          .required("deferral", TEXT, "To whom all of this defers.")
          .required("links", new MapShape(TEXT, 50, 40), "Where to go from here.")
          .build();

  private SafetyShapes() {}
}
