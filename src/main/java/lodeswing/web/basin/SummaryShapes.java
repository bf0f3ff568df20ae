package lodeswing.web.basin;

import lodeswing.web.body.FlagShape;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.MapShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;

/** What the answer of a map's summary looks like. */
final class SummaryShapes {

  private static final Shape TEXT = BasinShapes.TEXT;
  private static final Shape NUMBER = BasinShapes.NUMBER;

  private static final ObjectShape SHARE =
      ObjectShape.named("OutcomeShare", "How many of a map's releases end alike.")
          .open()
          .required("index", NUMBER, "The end's number in tiles and legend.")
          .required("kind", TEXT, "rest-point, or what else becomes of the bob.")
          .optional("restPointId", TEXT, "The rest point's id.")
          .optional("label", TEXT, "The label it stands for.")
          .required("name", TEXT, "The label, or the end in words.")
          .required("releases", NUMBER, "How many of the map's releases end so.")
          .required("share", NUMBER, "Their share of all of the map's releases, 0 to 1.")
          .required("low", NUMBER, "Lower end of its 95 % interval for the window's area.")
          .required("high", NUMBER, "Upper end of its 95 % interval.")
          .build();

  private static final ObjectShape FIGURE =
      ObjectShape.named("MapFigure", "A figure of a map with its 95 % interval.")
          .open()
          .required("value", NUMBER, "The figure.")
          .required("low", NUMBER, "Lower end of its interval.")
          .required("high", NUMBER, "Upper end of its interval.")
          .required("source", TEXT, "The publication that defines it.")
          .required("sentence", TEXT, "What it says, for a pupil.")
          .build();

  private static final ObjectShape WADA =
      ObjectShape.named("WadaFinding", "Whether every piece of the border touches all ends.")
          .open()
          .required("verdict", TEXT, "wada, partly-wada, not-wada, too-few-labels or unresolved.")
          .required(
              "indices",
              new ListShape(NUMBER, 0, 1_000),
              "The ends that took part; rare ones do not.")
          .optional("share", FIGURE, "Share of the border that has every end close by.")
          .required("source", TEXT, "The publication of the test.")
          .required("sentence", TEXT, "What it says, for a pupil.")
          .build();

  private static final ObjectShape DRAWN =
      ObjectShape.named("DrawnReleases", "Releases drawn closer together than the map's pixels.")
          .open()
          .required("releases", NUMBER, "How many were followed.")
          .required("seed", NUMBER, "Seed of the draws.")
          .required("smallest", NUMBER, "Smallest distance used, in the layout's unit of length.")
          .required("largest", NUMBER, "Largest distance used.")
          .build();

  /** The document. */
  static final ObjectShape DOCUMENT =
      ObjectShape.named("BasinSummary", "What a map amounts to.")
          .open()
          .required("basinId", TEXT, "The map.")
          .required("layoutId", TEXT, "The layout.")
          .required("model", TEXT, "bench or textbook.")
          .required("window", BasinShapes.WINDOW, "What the map shows.")
          .required("units", new MapShape(TEXT, 20, 40), "Units by quantity.")
          .required("side", NUMBER, "Pixels along the side of the map that is summarised.")
          .required("releases", NUMBER, "How many releases that map has.")
          .required("sentence", TEXT, "The whole in one sentence, for a pupil.")
          .required(
              "shares", new ListShape(SHARE, 0, 1_000), "Every end that occurs, with its share.")
          .required("shareSource", TEXT, "The publication of the shares' intervals.")
          .optional("boxDimension", FIGURE, "Box-counting dimension of the border, 1 to 2.")
          .optional("uncertaintyExponent", FIGURE, "How doubt falls with a surer hand, 0 to 1.")
          .optional("basinEntropy", FIGURE, "Basin entropy, in boxes of 5 by 5 pixels.")
          .optional("boundaryBasinEntropy", FIGURE, "The same over boxes on the border.")
          .required("wada", WADA, "The test for the Wada property.")
          .optional("drawn", DRAWN, "What gave the exponent where the map could not.")
          .required(
              "steadyShare", NUMBER, "Share of the labels that are not chance, as in the map.")
          .required("followedS", NUMBER, "How long each release is followed at most.")
          .required("notes", new ListShape(TEXT, 0, 50), "What to know, in sentences.")
          .required("engineRevision", NUMBER, "Revision of the engine that computed it.")
          .optional(
              "olderEngine",
              new FlagShape(),
              "true where an older revision than today's computed it; the Link header of relation"
                  + " latest-version leads to today's answer.")
          .required("links", BasinShapes.LINKS, "Where to go from here.")
          .build();

  private SummaryShapes() {}
}
