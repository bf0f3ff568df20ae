package lodeswing.web.occupancy;

import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.MapShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;

/** What the answer about an occupancy looks like. */
final class OccupancyShapes {

  private static final Shape TEXT = new TextShape(10_000);
  private static final Shape NUMBER = NumberShape.between(-1e300, 1e300);
  private static final Shape SHARES = new ListShape(NumberShape.between(0, 1), 1, 100_000);

  private static final ObjectShape FIGURE =
      ObjectShape.named("OccupancyFigure", "A figure with its 95 % interval.")
          .open()
          .required("value", NUMBER, "The figure.")
          .required("low", NUMBER, "Lower end of the interval.")
          .required("high", NUMBER, "Upper end of the interval.")
          .build();

  private static final ObjectShape CELLS =
      ObjectShape.named("OccupancyCells", "A square of square cells about the middle.")
          .open()
          .required("halfWidth", NUMBER, "Half the square's side, in the layout's unit of length.")
          .required("side", NUMBER, "Cells along a side.")
          .required(
              "timeShares", SHARES, "Share of the time by cell, row by row from the upper left.")
          .required("freeTimeShares", SHARES, "The same without magnets.")
          .build();

  /** The document. */
  static final ObjectShape DOCUMENT =
      ObjectShape.named("Occupancy", "Where the bob spends its time.")
          .open()
          .required("layoutId", TEXT, "The layout.")
          .required("model", ChoiceShape.of("bench", "textbook"), "The model.")
          .required("units", new MapShape(TEXT, 20, 40), "Units by quantity.")
          .required("radius", NUMBER, "Radius of the disc that releases come from.")
          .required("durationS", NUMBER, "How long each is followed.")
          .required("releases", NUMBER, "How many there are.")
          .required("seed", NUMBER, "Seed of their places.")
          .optional(
              "correlation",
              FIGURE,
              "Rank correlation of the time spent with the field's strength over the cells of the"
                  + " disc; left out where there is no field.")
          .optional("freeCorrelation", FIGURE, "The same for the swing without magnets.")
          .optional(
              "change",
              FIGURE,
              "Chance that the bob is in a stronger field than it would be without the magnets' pull,"
                  + " less the chance that it is in a weaker one (rank-biserial correlation). Below"
                  + " 0: they drive it to the weak zones.")
          .optional("meanFieldMillitesla", FIGURE, "Flux density met on the average, on the bench.")
          .optional(
              "freeMeanFieldMillitesla", FIGURE, "The same field on the way without its pull.")
          .optional("meanField", FIGURE, "Strength met on the average, in a textbook layout.")
          .optional("freeMeanField", FIGURE, "The same field on the way without its pull.")
          .required("overMagnets", FIGURE, "Share of the time over a magnet.")
          .required("freeOverMagnets", FIGURE, "The same on the way without magnets.")
          .required("source", TEXT, "Source of the correlation.")
          .required("notReleased", NUMBER, "Releases that could not begin.")
          .required("endedEarly", NUMBER, "Paths that met a limit of the model.")
          .required("elsewhere", NUMBER, "Share of the time beside the cells.")
          .required("cells", CELLS, "The maps.")
          .required("sentence", TEXT, "The result in words.")
          .required("notes", new ListShape(TEXT, 0, 50), "What to know, in sentences.")
          .required("engineRevision", NUMBER, "Revision of the engine that computed it.")
          .required("links", new MapShape(TEXT, 50, 40), "Where to go from here.")
          .build();

  private OccupancyShapes() {}
}
