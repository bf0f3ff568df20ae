package lodeswing.web.basin;

import java.util.List;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.MapShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;
import lodeswing.web.layout.LayoutShapes;

/** What a map's request may be, and what its answers look like. */
final class BasinShapes {
  static final NumberShape PLACE = NumberShape.between(-100_000, 100_000);
  static final NumberShape HALF_WIDTH = NumberShape.above(0, 100_000);

  static final Shape TEXT = new TextShape(10_000);
  static final Shape NUMBER = NumberShape.between(-1e300, 1e300);
  static final Shape LINKS = new MapShape(TEXT, 50, 40);

  static final ObjectShape WINDOW =
      ObjectShape.named("MapWindow", "The square of the plate that a map shows.")
          .withDefault("x", PLACE, 0.0, "Its middle, in the layout's unit of length.")
          .withDefault("y", PLACE, 0.0, "Its middle.")
          .required("halfWidth", HALF_WIDTH, "Half of its side.")
          .build();

  /** The body of a request. */
  static final ObjectShape REQUEST =
      ObjectShape.named("BasinRequest", "A map of where every release at rest ends.")
          .optional("layoutId", new TextShape(60), "The id of a stored layout.")
          .optional("layout", LayoutShapes.REQUEST, "Or a whole layout.")
          .optional("window", WINDOW, "What the map shows; the magnets with a margin if left out.")
          .exactlyOneOf(List.of("layoutId"), List.of("layout"))
          .build();

  /** A stored request. */
  static final ObjectShape STORED =
      ObjectShape.named("StoredBasin", "A map's request as it is kept.")
          .required("layoutId", new TextShape(60), "The layout.")
          .required("window", WINDOW, "The window.")
          .build();

  private static final ObjectShape ZOOM =
      ObjectShape.named("ZoomRange", "The zooms at which tiles are served.")
          .open()
          .required("min", NUMBER, "0: one tile shows the window.")
          .required("max", NUMBER, "The last that is served: the last steady one, but at least 6.")
          .required(
              "steady",
              NUMBER,
              "The last at which labels on boundaries hold under a tolerance ten times tighter; what"
                  + " is seen beyond it is drawn by rounding as much as by the rig.")
          .build();

  private static final ObjectShape POINT =
      ObjectShape.named("PlanPoint", "A place on the plate.")
          .open()
          .required("x", NUMBER, "In the layout's unit of length.")
          .required("y", NUMBER, "In the layout's unit of length.")
          .build();

  private static final ObjectShape SHADING =
      ObjectShape.named("Shading", "What lightness means in a map.")
          .open()
          .required("by", TEXT, "lightness.")
          .required("halfTimeS", NUMBER, "The time at which shading is halfway.")
          .required("meaning", TEXT, "In words.")
          .build();

  private static final ObjectShape LEGEND_LINE =
      ObjectShape.named("LegendLine", "One end that a release can have.")
          .open()
          .required("index", NUMBER, "Its number in tiles.")
          .required("kind", TEXT, "rest-point, or what else becomes of the bob.")
          .optional("restPointId", TEXT, "The rest point's id.")
          .optional("label", TEXT, "The label it stands for.")
          .required("name", TEXT, "The label, or the end in words.")
          .optional("x", NUMBER, "The rest point; left out where any place of a ring may be it.")
          .optional("y", NUMBER, "The rest point, likewise.")
          .required("color", TEXT, "Its colour at middle lightness, as #rrggbb.")
          .required("shades", new ListShape(TEXT, 1, 3), "Its colour from light to dark.")
          .required("colorName", TEXT, "Its colour in words.")
          .required("pattern", TEXT, "Its pattern where patterns=true.")
          .required(
              "patternRows",
              new ListShape(TEXT, 1, 64),
              "One period of it, a row of pixels each from the top; 1 is inked.")
          .required("ink", TEXT, "The ink of its pattern on color, as #rrggbb.")
          .required("alwaysPatterned", new FlagShape(), "Whether it is never drawn plain.")
          .build();

  static final Shape LEGEND_LINES = new ListShape(LEGEND_LINE, 0, 1_000);

  /** The document of a legend. */
  static final ObjectShape LEGEND =
      ObjectShape.named("MapLegend", "What colours and patterns mean.")
          .open()
          .required("legend", LEGEND_LINES, "One line for each end.")
          .required("shading", SHADING, "What lightness means.")
          .build();

  private static ObjectShape.Builder grid(String name, String text) {
    return ObjectShape.named(name, text)
        .open()
        .required("basinId", TEXT, "Its id.")
        .required("tiles", TEXT, "URL template of the tiles with {z}, {x} and {y}.")
        .required("zoom", ZOOM, "Zooms served.")
        .required("tileSize", NUMBER, "Pixels along a tile's side.")
        .required("origin", POINT, "Upper left corner of tile 0/0/0.")
        .required("yDown", new FlagShape(), "true: tile rows are counted downwards.")
        .required("unitsPerTile", NUMBER, "Side of a tile at zoom 0, in the unit of length.")
        .required("units", new MapShape(TEXT, 20, 40), "Units by quantity.");
  }

  /** The document of a map. */
  static final ObjectShape DOCUMENT =
      grid("Basin", "A map of where every release at rest ends.")
          .required("layoutId", TEXT, "The layout.")
          .required("model", TEXT, "bench or textbook.")
          .required("window", WINDOW, "What zoom 0 shows.")
          .required("preview", TEXT, "A picture of the whole window.")
          .required("overlay", TEXT, "Magnets and labels, to lie over the whole window.")
          .required("legend", LEGEND_LINES, "What colours and patterns mean.")
          .required("shading", SHADING, "What lightness means.")
          .required(
              "steadyShare",
              NUMBER,
              "Share of the labels that hold when the tolerance is tightened tenfold; the rest is"
                  + " chance, as it is on the table.")
          .required("followedS", NUMBER, "How long each release is followed at most.")
          .required("notes", new ListShape(TEXT, 0, 50), "What to know, in sentences.")
          .required("engineRevision", NUMBER, "Revision of the engine that computed it.")
          .optional(
              "olderEngine",
              new FlagShape(),
              "true where an older revision than today's computed it; the Link header of relation"
                  + " latest-version leads to today's answer.")
          .required("links", LINKS, "Where to go from here.")
          .build();

  /** What a tile viewer needs. */
  static final ObjectShape VIEWER =
      grid("BasinViewer", "What a tile viewer with a coordinate system of its own needs.")
          .required("pixelsPerUnit", NUMBER, "Pixels to a unit of length at zoom 0.")
          .required("bounds", new ListShape(POINT, 2, 2), "Lower left and upper right corner.")
          .required("overlay", TEXT, "Magnets and labels, to lie over bounds.")
          .required("alternative", TEXT, "The map in words.")
          .build();

  private BasinShapes() {}
}
