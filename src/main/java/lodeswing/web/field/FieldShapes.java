package lodeswing.web.field;

import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.MapShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;

/** What the answers about the field look like. */
final class FieldShapes {

  private static final Shape TEXT = new TextShape(10_000);
  private static final Shape NUMBER = NumberShape.between(-1e300, 1e300);
  private static final Shape NUMBERS = new ListShape(NUMBER, 0, 20_000_000);
  private static final int MOST = 100_000;

  private static final ObjectShape VECTOR =
      ObjectShape.named("FieldVector", "A vector in the layout's frame.")
          .open()
          .required("x", NUMBER, "Along x.")
          .required("y", NUMBER, "Along y.")
          .required("z", NUMBER, "Upwards.")
          .build();

  private static final ObjectShape WINDOW =
      ObjectShape.named("FieldWindow", "A square of the plan.")
          .open()
          .required("x", NUMBER, "Its middle [mm].")
          .required("y", NUMBER, "Its middle [mm].")
          .required("halfWidth", NUMBER, "Half its side [mm].")
          .build();

  private static final ObjectShape SURFACE =
      ObjectShape.named("FieldSurface", "Over which the field is shown.")
          .open()
          .required(
              "kind",
              ChoiceShape.of("level", "path"),
              "A level plane, or where the bob magnet's centre passes.")
          .optional("zMm", NUMBER, "Height of a level plane over the plate.")
          .build();

  private static final ObjectShape ZONE =
      ObjectShape.named("WeakZone", "How far a weakness reaches, and the lowest way out of it.")
          .open()
          .required("levelMillitesla", NUMBER, "Half way from the spot to the pass.")
          .required("areaMm2", NUMBER, "Where the strength is below that about the spot.")
          .required("acrossMm", NUMBER, "Diameter of the circle of that area.")
          .required("passMillitesla", NUMBER, "Strength on the lowest way out.")
          .required("passX", NUMBER, "Where that is, within a cell of the grid.")
          .required("passY", NUMBER, "Where that is.")
          .required(
              "outwards", new FlagShape(), "Whether it leads out of the window, not to a spot.")
          .build();

  private static final ObjectShape SPOT =
      ObjectShape.named("WeakSpot", "A place weaker than all round.")
          .open()
          .required("number", NUMBER, "As pictures number it.")
          .required(
              "of",
              ChoiceShape.of("plane", "whole"),
              "Of the part in the plane, or of the whole field.")
          .required(
              "kind",
              ChoiceShape.of("saddle", "source", "sink", "spiral", "centre", "line", "minimum"),
              "What it is.")
          .required("index", NUMBER, "Its index; 0 where it is no isolated zero.")
          .required("x", NUMBER, "Its place [mm].")
          .required("y", NUMBER, "Its place [mm].")
          .required("z", NUMBER, "Height of the surface there [mm].")
          .required("strengthMillitesla", NUMBER, "Of what is looked at; 0 at a zero.")
          .required("verticalMillitesla", NUMBER, "The field's upright component there.")
          .optional("zone", ZONE, "How far it reaches.")
          .optional("over", TEXT, "The magnet over which it lies.")
          .optional("between", new ListShape(TEXT, 0, 10), "The magnets that border it.")
          .required("sentence", TEXT, "All of it in words.")
          .build();

  private static final Shape SPOTS = new ListShape(SPOT, 0, MOST);

  private static final ObjectShape COUNT =
      ObjectShape.named("WeakSpotCount", "The count of Poincare and Hopf.")
          .open()
          .required("indexSum", NUMBER, "Sum of the zeros' indices.")
          .optional("edgeTurns", NUMBER, "How often the field turns along the window's edge.")
          .required("agrees", new FlagShape(), "Whether both are the same.")
          .required("gridSide", NUMBER, "Places along a side of the grid that was searched.")
          .build();

  private static final ObjectShape NULL =
      ObjectShape.named("FieldNull", "A place in space without any field.")
          .open()
          .required("number", NUMBER, "In this list.")
          .required("kind", TEXT, "Always a saddle.")
          .required("index", NUMBER, "1 or -1.")
          .required("x", NUMBER, "Its place [mm].")
          .required("y", NUMBER, "Its place [mm].")
          .required("z", NUMBER, "Its height over the plate [mm].")
          .required("spine", VECTOR, "Direction of its spine.")
          .required("sentence", TEXT, "All of it in words.")
          .build();

  private static final ObjectShape SPACE =
      ObjectShape.named("FieldNulls", "Places without any field in the box above the magnets.")
          .open()
          .required("fromMm", NUMBER, "Height of the box's bottom.")
          .required("toMm", NUMBER, "Height of its top.")
          .required("nulls", new ListShape(NULL, 0, MOST), "The places.")
          .required("indexSum", NUMBER, "Sum of their indices.")
          .required(
              "surfaceCovers",
              NUMBER,
              "How often the field covers all directions over the box's surface.")
          .required("agrees", new FlagShape(), "Whether both are the same.")
          .build();

  private static final ObjectShape LINE =
      ObjectShape.named("FieldLine", "A line in the field's direction, column by column.")
          .open()
          .required("closed", new FlagShape(), "Whether it comes back to where it began.")
          .required("lengthMm", NUMBER, "Its length.")
          .required("x", NUMBERS, "Places [mm].")
          .required("y", NUMBERS, "Places [mm].")
          .required("z", NUMBERS, "Places [mm].")
          .required("strengthMillitesla", NUMBERS, "Strength of the part that the line follows.")
          .build();

  /** The field at a point. */
  static final ObjectShape POINT =
      ObjectShape.named("FieldAtPoint", "The field at a point.")
          .open()
          .required("layoutId", TEXT, "The layout.")
          .required("units", new MapShape(TEXT, 20, 40), "Units by quantity.")
          .required("place", VECTOR, "The point [mm].")
          .required("fieldMillitesla", VECTOR, "The flux density.")
          .required("magnitudeMillitesla", NUMBER, "Its size.")
          .required("sentence", TEXT, "The result in words.")
          .required("notes", new ListShape(TEXT, 0, 50), "What to know, in sentences.")
          .required("engineRevision", NUMBER, "Revision of the engine that computed it.")
          .required("links", new MapShape(TEXT, 50, 40), "Where to go from here.")
          .build();

  /** A map. */
  static final ObjectShape MAP =
      common("FieldMap", "How strong the field is.")
          .required("part", ChoiceShape.of("whole", "plane"), "Of what the strength is.")
          .required("side", NUMBER, "Points along a side; the outermost lie on the edges.")
          .optional("mostMillitesla", NUMBER, "Greatest strength.")
          .optional("leastMillitesla", NUMBER, "Least strength.")
          .optional("medianMillitesla", NUMBER, "Strength that half of the points are below.")
          .required("levelsMillitesla", NUMBERS, "Values of the picture's contours.")
          .required(
              "strengthsMillitesla",
              new ListShape(NUMBER, 0, 20_000_000),
              "Strength at each point, row by row from the lower left; null where the bob cannot"
                  + " hang.")
          .optional("weakSpots", SPOTS, "With spots=true: weak spots of what is shown.")
          .build();

  /** Lines. */
  static final ObjectShape LINES =
      common("FieldLines", "Lines along the field, evenly apart.")
          .required("cut", ChoiceShape.of("plan", "upright"), "In which plane they lie.")
          .optional("turnDeg", NUMBER, "Angle of an upright cut from the x axis.")
          .optional("outOfCut", NUMBER, "Greatest share of the field that leaves that cut.")
          .required("apartMm", NUMBER, "Their distance.")
          .required("lines", new ListShape(LINE, 0, MOST), "The lines.")
          .optional("weakSpots", SPOTS, "Weak spots that are marked.")
          .required("method", TEXT, "Source of the way they are laid.")
          .build();

  /** Filings. */
  static final ObjectShape FILINGS =
      common("FieldFilings", "What filings on paper show.")
          .required("count", NUMBER, "How many were strewn.")
          .required("seed", NUMBER, "Seed of their places.")
          .required("drawn", NUMBER, "How many lie along the field and are drawn.")
          .required("weakMillitesla", NUMBER, "Part in the paper at which half of them do.")
          .optional("weakSpots", SPOTS, "Weak spots that are marked.")
          .build();

  /** Weak spots. */
  static final ObjectShape WEAK_SPOTS =
      common("WeakSpots", "Where the field, and its part in the plane, are weak.")
          .required(
              "upright", new FlagShape(), "Whether the field has no part in the plane anywhere.")
          .required("inPlane", SPOTS, "Weak spots of the part in the plane.")
          .required("whole", SPOTS, "Weak spots of the whole field along the surface.")
          .required("count", COUNT, "Whether the zeros in the plane are all found, by count.")
          .required("space", SPACE, "Places in space without any field.")
          .build();

  private FieldShapes() {}

  private static ObjectShape.Builder common(String name, String text) {
    return ObjectShape.named(name, text)
        .open()
        .required("layoutId", TEXT, "The layout.")
        .required("units", new MapShape(TEXT, 20, 40), "Units by quantity.")
        .required("window", WINDOW, "What is shown of the plan.")
        .required("surface", SURFACE, "Over which the field is shown.")
        .required("sentence", TEXT, "The result in words.")
        .required("notes", new ListShape(TEXT, 0, 50), "What to know, in sentences.")
        .required("engineRevision", NUMBER, "Revision of the engine that computed it.")
        .required("links", new MapShape(TEXT, 50, 40), "Where to go from here.");
  }
}
