package lodeswing.web.basin;

import lodeswing.web.body.CellShape;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.MapShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;

/** What a list of releases may be, and what its answer looks like. */
final class OutcomeShapes {

  static final NumberShape SPEED = NumberShape.between(-1_000_000, 1_000_000);

  /** Above any operator's limit, which is checked apart. */
  private static final int MOST = 10_000_000;

  private static final Shape PLACES = new ListShape(BasinShapes.PLACE, 1, MOST);
  private static final Shape SPEEDS = new ListShape(SPEED, 1, MOST);

  private static ObjectShape.Builder columns(ObjectShape.Builder builder) {
    return builder
        .required("x", PLACES, "Plan positions, in the layout's unit of length.")
        .required("y", PLACES, "Plan positions.")
        .optional("vx", SPEEDS, "Pushes along x, units of length a second; 0 if left out.")
        .optional("vy", SPEEDS, "Pushes along y.");
  }

  /** The body of a request. */
  static final ObjectShape REQUEST =
      columns(ObjectShape.named("ReleaseList", "Releases as columns of one length.")).build();

  /** A stored request. */
  static final ObjectShape STORED =
      columns(
              ObjectShape.named("StoredReleaseList", "A list as it is kept.")
                  .required("layoutId", new TextShape(60), "The layout.")
                  .required("settled", new FlagShape(), "Whether settling times are asked for."))
          .build();

  private static final Shape NUMBERS = new ListShape(BasinShapes.NUMBER, 0, MOST);
  private static final Shape TIMES = new ListShape(CellShape.number(), 0, MOST);

  /** The answer. */
  static final ObjectShape DOCUMENT =
      ObjectShape.named("OutcomeList", "Where each release ends, as columns in the order asked.")
          .open()
          .required("outcomesId", BasinShapes.TEXT, "Its id.")
          .required("layoutId", BasinShapes.TEXT, "The layout.")
          .required("units", new MapShape(BasinShapes.TEXT, 20, 40), "Units by quantity.")
          .required("x", NUMBERS, "Plan positions.")
          .required("y", NUMBERS, "Plan positions.")
          .required(
              "outcome",
              new ListShape(BasinShapes.TEXT, 0, MOST),
              "The label or name of each end, as in getOutcome.")
          .required("sealedAtS", TIMES, "From when each end was certain; null where it never was.")
          .optional("settledAtS", TIMES, "When each bob had settled; null where it never did.")
          .optional(
              "olderEngine",
              new FlagShape(),
              "true where an older revision than today's computed it; the Link header of relation"
                  + " latest-version leads to today's answer.")
          .required("links", BasinShapes.LINKS, "Where to go from here.")
          .build();

  private OutcomeShapes() {}
}
