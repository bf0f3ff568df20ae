package lodeswing.web.field;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import lodeswing.analysis.field.SpaceNull;
import lodeswing.analysis.field.SpaceNulls;
import lodeswing.analysis.field.SpotKind;
import lodeswing.analysis.field.WeakSpot;
import lodeswing.analysis.field.WeakSpotSearch;
import lodeswing.web.body.Numbers;

/** What pictures of the field say in sentences. */
final class FieldWords {

  static final double MILLI = 1e3;

  /** Without commas and semicolons, which a cell would lose. */
  static final String BOB_LEFT_OUT =
      "The field is that of the plate's magnets alone and not of the magnet on the bob.";

  static final String MODEL =
      "Magnets are uniformly magnetised and do not weaken each other; steel counts as a half space"
          + " of infinite permeability.";

  static final String FILINGS_CAUTION =
      "Common practice with filings: keep them in a closed tray or under film and off bare magnets,"
          + " wear eye protection, do not breathe them in or swallow them, wash hands afterwards."
          + " Local rules and trained staff decide.";

  static final String LINES_SOURCE =
      "B. Jobard and W. Lefer, Creating evenly-spaced streamlines of arbitrary density,"
          + " Visualization in Scientific Computing '97 (1997) 43";

  private static final int MOST_TOLD = 6;

  private final FieldRequest request;
  private final Neighbours neighbours;

  FieldWords(FieldRequest request) {
    this.request = request;
    this.neighbours = new Neighbours(request);
  }

  /** The magnets about a place. */
  Neighbours neighbours() {
    return neighbours;
  }

  /** Where the field is looked at. */
  String where() {
    FieldView view = request.view();
    return view.zMm()
        .map(z -> "at the height " + Numbers.plain(z) + " mm over the plate")
        .orElse("along the bob magnet's path");
  }

  private boolean bare() {
    return request.bench().magnets().isEmpty();
  }

  /** A map in a few sentences. */
  String map(MapFigures figures) {
    if (bare()) {
      return "There is no field: the plate has no magnets.";
    }
    boolean inPlane = ((FieldSubject.Strength) request.subject()).inPlane();
    String what = inPlane ? "The field's part in the plane " : "The field's strength ";
    if (figures.isEmpty()) {
      return "The bob cannot hang anywhere in this window.";
    }
    return what
        + where()
        + " goes from "
        + tesla(figures.least())
        + " to "
        + tesla(figures.most())
        + " in this window. It is strongest "
        + neighbours.words(figures.mostX(), figures.mostY())
        + " at "
        + place(figures.mostX(), figures.mostY())
        + " and below "
        + tesla(figures.median())
        + " in half of the window.";
  }

  /** Lines in a few sentences. */
  String lines(int count, double outOfCut) {
    if (bare()) {
      return "There are no lines: the plate has no magnets.";
    }
    FieldSubject.Lines lines = (FieldSubject.Lines) request.subject();
    String apart = Numbers.plain(lines.apartMm()) + " mm apart";
    if (lines.turnDeg().isEmpty()) {
      return count == 0
          ? "There are no lines: the field " + where() + " has no part in the plane here."
          : count
              + " lines along the field's part in the plane "
              + where()
              + " and "
              + apart
              + ". "
              + between();
    }
    return count
        + " lines along the field in an upright cut through "
        + place(request.view().x() / MILLI, request.view().y() / MILLI)
        + " at "
        + Numbers.plain(lines.turnDeg().get())
        + " degrees to the x axis and "
        + apart
        + ". "
        + (outOfCut < 1e-6
            ? "The field stays in this cut: these are lines of the field itself. "
            : "The field leaves this cut by up to "
                + percent(outOfCut)
                + " of its strength: lines show its part in the cut. ")
        + between();
  }

  /** Whether neighbouring magnets are like or unlike. */
  private String between() {
    long north = request.bench().magnets().stream().filter(m -> m.poleUp().sign() > 0).count();
    long south = request.bench().magnets().size() - north;
    if (north == 0 || south == 0) {
      return request.bench().magnets().size() == 1
          ? "One magnet with its " + (north > 0 ? "north" : "south") + " pole up."
          : "All poles up are alike ("
              + (north > 0 ? "north" : "south")
              + "): lines from one turn away from those of the next.";
    }
    return north
        + " north and "
        + south
        + " south poles are up: lines run from the north to the south ones.";
  }

  /** Filings in a few sentences. */
  String filings(int drawn, double weak) {
    if (bare()) {
      return "There are no filings in line: the plate has no magnets.";
    }
    FieldSubject.Strewn strewn = (FieldSubject.Strewn) request.subject();
    return drawn
        + " of "
        + strewn.count()
        + " filings (seed "
        + strewn.seed()
        + ") lie along the field on a paper "
        + where()
        + ". Half of them do where the part in the paper is "
        + tesla(weak)
        + " and gaps show where it is weaker. "
        + between();
  }

  /** Weak spots in a few sentences. */
  String spots(WeakSpotSearch.Found found) {
    if (bare()) {
      return "There is no field: the plate has no magnets.";
    }
    if (found.level()) {
      return "The field "
          + where()
          + " has no part in the plane anywhere: it stands upright all over.";
    }
    long saddles = count(found.inPlane(), SpotKind.SADDLE);
    long poles = count(found.inPlane(), SpotKind.SOURCE) + count(found.inPlane(), SpotKind.SINK);
    long zeros = found.inPlane().stream().filter(s -> s.kind() != SpotKind.MINIMUM).count();
    String whole =
        found.whole().stream()
            .min(Comparator.comparingDouble(WeakSpot::strength))
            .map(
                spot ->
                    " The whole field has a weakest place of its own "
                        + neighbours.words(spot.x(), spot.y())
                        + " at "
                        + place(spot.x(), spot.y())
                        + " with "
                        + tesla(spot.strength())
                        + ".")
            .orElse(" The whole field has no weakest place inside this window.");
    return "The field's part in the plane "
        + where()
        + " vanishes at "
        + zeros
        + (zeros == 1 ? " place: " : " places: ")
        + saddles
        + (saddles == 1 ? " saddle and " : " saddles and ")
        + poles
        + " where it"
        + " stands upright."
        + whole
        + " "
        + count(found);
  }

  /** Whether the count of Poincare and Hopf holds. */
  String count(WeakSpotSearch.Found found) {
    String sum = "The indices sum up to " + found.indexSum();
    if (found.edgeTurns().isEmpty()) {
      return sum + " but the field along the window's edge cannot be counted.";
    }
    return found.agrees()
        ? sum + " as often as the field turns along the window's edge: none is missing by count."
        : sum
            + " but the field turns "
            + found.edgeTurns().getAsInt()
            + " times along the window's edge: some were not found.";
  }

  private static long count(List<WeakSpot> spots, SpotKind kind) {
    return spots.stream().filter(spot -> spot.kind() == kind).count();
  }

  /** One weak spot in a sentence. */
  String spot(WeakSpot spot, boolean inPlane) {
    String at = neighbours.words(spot.x(), spot.y()) + " at " + place(spot.x(), spot.y());
    String kind =
        switch (spot.kind()) {
          case SADDLE -> "Saddle " + at + ": the field comes in from two sides and leaves to two.";
          case SOURCE -> "Pole " + at + ": the field stands upright and runs away on all sides.";
          case SINK -> "Pole " + at + ": the field stands upright and runs in from all sides.";
          case SPIRAL -> "Spiral " + at + ": the field winds about it.";
          case CENTRE -> "Centre " + at + ": the field goes round it.";
          case LINE ->
              "One place " + at + " of a line on which the field has no part in the plane.";
          case MINIMUM ->
              "Least "
                  + (inPlane ? "part in the plane " : "strength ")
                  + at
                  + ": "
                  + tesla(spot.strength())
                  + ".";
        };
    String upright = inPlane ? " Upright there: " + tesla(spot.vertical()) + "." : "";
    return kind + upright + spot.zone().map(this::zone).orElse("");
  }

  private String zone(WeakSpot.Zone zone) {
    return String.format(
        Locale.ROOT,
        " Below %s within %.3g mm2 (%.3g mm across); the lowest way %s passes %s with %s.",
        tesla(zone.level()),
        zone.area() * MILLI * MILLI,
        zone.across() * MILLI,
        zone.outwards() ? "out of the window" : "to another weak spot",
        place(zone.passX(), zone.passY()),
        tesla(zone.pass()));
  }

  /** A place in space without any field in a sentence. */
  String space(SpaceNull one) {
    return String.format(
        Locale.ROOT,
        "No field at all %s at %s and %.2f mm over the plate: round it the field %s along the spine"
            + " and %s all sides across it.",
        neighbours.words(one.x(), one.y()),
        place(one.x(), one.y()),
        one.z() * MILLI,
        one.index() > 0 ? "leaves" : "comes in",
        one.index() > 0 ? "comes in from" : "leaves to");
  }

  /** Whether the count in space holds. */
  String spaceCount(SpaceNulls.Found nulls) {
    return nulls.agrees()
        ? "the indices of places without any field sum up to "
            + nulls.indexSum()
            + " as often as the field covers all directions over the box's surface."
        : "the indices of places without any field sum up to "
            + nulls.indexSum()
            + " but the field covers all directions "
            + nulls.covers()
            + " times over the box's surface: some were not found.";
  }

  /** The weak spots that a picture marks, in a few sentences. */
  String marked(List<ShownSpot> shown, boolean looked) {
    if (!looked || bare()) {
      return "";
    }
    if (shown.isEmpty()) {
      return "No weak spot lies in this window.";
    }
    List<WeakSpot> list = shown.stream().map(ShownSpot::spot).toList();
    List<WeakSpot> free =
        list.stream().filter(s -> neighbours.over(s.x(), s.y()).isEmpty()).toList();
    List<String> told = new ArrayList<>();
    for (WeakSpot spot : free.subList(0, Math.min(MOST_TOLD, free.size()))) {
      told.add(neighbours.words(spot.x(), spot.y()) + " at " + place(spot.x(), spot.y()));
    }
    String rest = free.size() > MOST_TOLD ? " and " + (free.size() - MOST_TOLD) + " more" : "";
    return list.size()
        + (list.size() == 1 ? " weak spot is" : " weak spots are")
        + " marked"
        + (list.size() > free.size() ? "; " + (list.size() - free.size()) + " over magnets" : "")
        + (told.isEmpty() ? "." : "; off the magnets " + String.join("; ", told) + rest + ".");
  }

  /** A place of the plan. */
  static String place(double x, double y) {
    return String.format(Locale.ROOT, "(%s | %s) mm", tenths(x), tenths(y));
  }

  private static String tenths(double metres) {
    String digits = String.format(Locale.ROOT, "%.1f", metres * MILLI);
    return digits.equals("-0.0") ? "0.0" : digits.replace('-', '\u2212');
  }

  /** A strength with its unit. */
  static String tesla(double strength) {
    double shown = strength * MILLI;
    return (Math.abs(shown) < 1e-6 && shown != 0
            ? "less than 0.000001"
            : Numbers.shortest(Double.parseDouble(String.format(Locale.ROOT, "%.3g", shown))))
        + " mT";
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.1f %%", 100 * share);
  }
}
