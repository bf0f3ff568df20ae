package lodeswing.web.freeswing;

import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.MapShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;
import lodeswing.web.layout.LayoutShapes;

/** What the answers about free swings look like. */
final class FreeSwingShapes {
  private static final Shape TEXT = new TextShape(10_000);
  private static final Shape NUMBER = NumberShape.between(-1e300, 1e300);
  private static final Shape LINKS = new MapShape(TEXT, 50, 40);
  private static final Shape NOTES = new ListShape(TEXT, 0, 50);

  private static final ObjectShape PUSH =
      ObjectShape.named("FreeRelease", "How the bob is let go, in the layout's unit of length.")
          .open()
          .required("x", NUMBER, "Plan position.")
          .required("y", NUMBER, "Plan position.")
          .required("vx", NUMBER, "Plan velocity.")
          .required("vy", NUMBER, "Plan velocity.")
          .build();

  private static final ObjectShape PERIOD =
      ObjectShape.named("FreePeriod", "Periods of one of the two swings.")
          .open()
          .required("smallS", NUMBER, "Of small swings without loss.")
          .optional(
              "withLossS",
              NUMBER,
              "Of small swings with the loss; left out where that has no linear law, or where"
                  + " nothing swings.")
          .optional(
              "atReleaseS", NUMBER, "Without loss, of this release's swing along this axis alone.")
          .build();

  private static final ObjectShape PERIODS =
      ObjectShape.named("FreePeriods", "Periods along both axes.")
          .open()
          .required("x", PERIOD, "The swing along x, about the second axis.")
          .required("y", PERIOD, "The swing along y, about the upper axis.")
          .build();

  private static final ObjectShape RATIO =
      ObjectShape.named("SwingRatio", "Whole numbers of swings in the same time.")
          .open()
          .required("ratio", TEXT, "Swings along y and along x, such as 2:3.")
          .required("y", NUMBER, "Swings along y.")
          .required("x", NUMBER, "Swings along x.")
          .required("offPercent", NUMBER, "By how much the rig's ratio is greater.")
          .required("closesAfterS", NUMBER, "Time in which that figure closes.")
          .optional(
              "formsAfterS",
              NUMBER,
              "Time in which it runs through all its forms, from a line traced there and back over"
                  + " the widest one to the same again; left out where it keeps its form.")
          .build();

  private static final ObjectShape AXIS_DECAY =
      ObjectShape.named("SwingDecay", "How a small swing along one axis dies away.")
          .open()
          .required("halvesInS", NUMBER, "Time in which it has half its size.")
          .required("swingsToHalf", NUMBER, "The same in swings.")
          .required("qualityFactor", NUMBER, "Rate over loss.")
          .build();

  private static final ObjectShape DECAY =
      ObjectShape.named("FreeDecay", "How the swing dies away.")
          .open()
          .optional("x", AXIS_DECAY, "Along x, where the loss has a linear law.")
          .optional("y", AXIS_DECAY, "Along y, likewise.")
          .optional(
              "halvedAtS",
              NUMBER,
              "When a quarter of this release's energy is left, by the exact motion and whatever"
                  + " the law of its loss; left out where that is not reached.")
          .build();

  private static final ObjectShape PRECESSION =
      ObjectShape.named("EllipsePrecession", "Turn of the ellipse of this release, anticlockwise.")
          .open()
          .required("degPerS", NUMBER, "At first.")
          .required("degPerSwing", NUMBER, "At first, in one swing.")
          .optional("degInAll", NUMBER, "Until the bob is at rest, by the linear loss.")
          .required("source", TEXT, "The formula's source.")
          .build();

  private static final ObjectShape MAGNETS =
      ObjectShape.named("FreeParting", "The path among the magnets beside the free one.")
          .open()
          .required("within", NUMBER, "The distance, in the layout's unit of length.")
          .optional(
              "partedAtS",
              NUMBER,
              "When the two are that far apart; left out where they never are.")
          .required("sure", new FlagShape(), "The same at a hundredfold tighter tolerance.")
          .optional("endedAtS", NUMBER, "When the path among the magnets ends before that.")
          .optional("endedBy", TEXT, "What ends it.")
          .optional(
              "trustedUntilS", NUMBER, "Until when the second path is right, where it is drawn.")
          .build();

  /** The document of a free swing. */
  static final ObjectShape DOCUMENT =
      ObjectShape.named("FreeSwing", "A rig without its magnets.")
          .open()
          .required("layoutId", TEXT, "The layout.")
          .required("model", ChoiceShape.of("bench", "textbook"), "The model.")
          .required("units", new MapShape(TEXT, 20, 40), "Units by quantity.")
          .required("release", PUSH, "The release that the figure is of.")
          .required("durationS", NUMBER, "How long the figure is drawn.")
          .required("periods", PERIODS, "The two periods.")
          .required("ratio", NUMBER, "Swings along y to one along x.")
          .required("figure", RATIO, "The simplest ratio whose figure keeps its form to be seen.")
          .required(
              "nearestRatios",
              new ListShape(RATIO, 1, 20),
              "The best ratios of numbers up to 12, simplest first, nearest last.")
          .required("decay", DECAY, "How it dies away.")
          .optional("precession", PRECESSION, "On a round rig, how an ellipse turns.")
          .required(
              "widest",
              NUMBER,
              "Greatest distance of the path from the straight line through release and middle.")
          .optional("endedAtS", NUMBER, "When the free path ends before its time.")
          .optional("magnets", MAGNETS, "The path among the magnets, where it is asked of.")
          .required("sentence", TEXT, "The result in words.")
          .required("notes", NOTES, "What to know, in sentences.")
          .required("engineRevision", NUMBER, "Revision of the engine that computed it.")
          .required("links", LINKS, "Where to go from here.")
          .build();

  private static final ObjectShape HAND =
      ObjectShape.named("HandError", "Errors of each length by itself that change the figure.")
          .open()
          .optional("yokeDropMm", NUMBER, "Of the drop.")
          .optional("legMm", NUMBER, "Of the leg.")
          .optional("hookOffsetMm", NUMBER, "Of the hook offset.")
          .build();

  private static final ObjectShape WHOLE =
      ObjectShape.named("WholeMillimetres", "The same with lengths of whole millimetres.")
          .open()
          .optional("yokeDropMm", NUMBER, "The drop.")
          .optional("legMm", NUMBER, "The leg.")
          .optional("hookOffsetMm", NUMBER, "The hook offset.")
          .required("offPercent", NUMBER, "By how much the ratio is then greater.")
          .optional("formsAfterS", NUMBER, "Time in which the figure runs through all its forms.")
          .build();

  private static final ObjectShape DESIGN =
      ObjectShape.named("RatioDesign", "A suspension that gives the ratio.")
          .open()
          .required("keeps", ChoiceShape.of(DesignController.KEEPS), "What of the rig stays.")
          .required("sentence", TEXT, "The design in words.")
          .required(
              "pendulum", LayoutShapes.PENDULUM, "The changed pendulum, as a layout takes it.")
          .required("hand", HAND, "How exact the hand must be.")
          .required("wholeMillimetres", WHOLE, "What a ruler makes of it.")
          .required("periodXS", NUMBER, "Period of small swings along x.")
          .required("periodYS", NUMBER, "Period of small swings along y.")
          .required("closesAfterS", NUMBER, "Time in which the figure closes.")
          .optional(
              "tightUpToMm", NUMBER, "Swing along x at which an upper cord of a Y cord goes slack.")
          .required("pivotHeightMm", NUMBER, "Height of the upper axis over the plate.")
          .required("layoutId", TEXT, "The layout with this pendulum; it is stored.")
          .required("links", LINKS, "Where to go from here.")
          .build();

  /** The document of a design. */
  static final ObjectShape DESIGNS =
      ObjectShape.named("FreeSwingDesign", "The suspensions that give a wanted ratio.")
          .open()
          .required("layoutId", TEXT, "The layout that was asked of.")
          .required("ratio", TEXT, "The ratio in its lowest terms.")
          .required("y", NUMBER, "Swings along y.")
          .required("x", NUMBER, "Swings along x in the same time.")
          .required("designs", new ListShape(DESIGN, 1, 10), "Each by itself does.")
          .required("sentence", TEXT, "The first one in words.")
          .required("notes", NOTES, "What to know, in sentences.")
          .required("engineRevision", NUMBER, "Revision of the engine that computed it.")
          .required("links", LINKS, "Where to go from here.")
          .build();

  private FreeSwingShapes() {}
}
