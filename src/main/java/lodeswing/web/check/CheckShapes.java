package lodeswing.web.check;

import java.util.Arrays;
import lodeswing.analysis.check.CheckCode;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.MapShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;

/** What the answer about a check looks like. */
final class CheckShapes {

  static final ChoiceShape CODES =
      ChoiceShape.of(Arrays.stream(CheckCode.values()).map(CheckCode::word).toArray(String[]::new));

  private static final Shape TEXT = new TextShape(10_000);
  private static final Shape NUMBER = NumberShape.between(-1e300, 1e300);
  private static final ChoiceShape VERDICT = ChoiceShape.of("good", "watch", "fails", "unknown");

  private static final ObjectShape CHANGE =
      ObjectShape.named(
              "CheckChange",
              "The smallest change of one member that makes the line good, found on the model and"
                  + " checked again. from and to are numbers, or words where the member is one;"
                  + " from is left out where the layout did not say.")
          .open()
          .required("pointer", TEXT, "JSON Pointer of the member in the canonical layout.")
          .required("sentence", TEXT, "The same in words.")
          .required("variant", TEXT, "Address that stores the changed layout.")
          .build();

  private static final ObjectShape LINE =
      ObjectShape.named("CheckLine", "One line of a check.")
          .open()
          .required("code", CODES, "Which line.")
          .optional("figure", NUMBER, "What was measured; left out where it cannot be.")
          .optional("limit", NUMBER, "Where good begins.")
          .required("unit", TEXT, "Unit of both; 1 for a share.")
          .required(
              "verdict",
              VERDICT,
              "good; watch: it works with little room; fails; unknown: something is missing.")
          .required("reason", TEXT, "Why, in one sentence.")
          .optional(
              "needs",
              new ListShape(TEXT, 0, 10),
              "JSON Pointers of the members that would make an unknown line known.")
          .optional("change", CHANGE, "What would make it good.")
          .required("source", TEXT, "Where the limit is from.")
          .build();

  private static final ObjectShape PART =
      ObjectShape.named("CheckPart", "A part of a build, or several alike.")
          .open()
          .required("pointer", TEXT, "JSON Pointer of it, or of the first of them.")
          .required("what", TEXT, "What it is.")
          .required("count", NUMBER, "How many.")
          .optional("size", TEXT, "Its sizes.")
          .optional("of", TEXT, "Material or grade.")
          .optional("massG", NUMBER, "Mass of one; left out where it is not known.")
          .optional("weighed", new FlagShape(), "Whether that was weighed.")
          .build();

  /** The document. */
  static final ObjectShape DOCUMENT =
      ObjectShape.named("Check", "A rig checked line by line.")
          .open()
          .required("layoutId", TEXT, "The layout.")
          .required("model", ChoiceShape.of("bench", "textbook"), "The model.")
          .required("units", new MapShape(TEXT, 20, 40), "Units by quantity.")
          .required("radius", NUMBER, "Radius of the disc that the bob is released from.")
          .required("spread", NUMBER, "How far the hand wanders.")
          .required("seed", NUMBER, "Seed of the tries.")
          .required("verdict", VERDICT, "The worst of the lines; never good with one unknown.")
          .required("lines", new ListShape(LINE, 1, 50), "The lines.")
          .required(
              "periodsS",
              new ListShape(NUMBER, 2, 2),
              "Periods of the small swings along x and y without magnets.")
          .optional("qualityFactor", NUMBER, "Where the loss is linear: of the swing along x.")
          .optional("massG", NUMBER, "Mass of all that hangs, on the bench.")
          .optional(
              "parts", new ListShape(PART, 0, 300), "Of a bar: its parts and the plate's magnets.")
          .required("sentence", TEXT, "The result in words.")
          .required("notes", new ListShape(TEXT, 0, 50), "What to know, in sentences.")
          .required("engineRevision", NUMBER, "Revision of the engine that computed it.")
          .required("links", new MapShape(TEXT, 50, 40), "Where to go from here.")
          .build();

  private CheckShapes() {}
}
