package lodeswing.web.sweep;

import java.util.ArrayList;
import java.util.List;

/** The columns of a sweep: quantities, then measures, then the problem. */
final class SweepColumns {

  private static final String PROBLEM = "problem";

  private final boolean bench;
  private final List<SweepColumn> columns = new ArrayList<>();

  SweepColumns(SweepRequest request) {
    this.bench = request.bench();
    for (SweptQuantity quantity : request.vary()) {
      columns.add(
          new SweepColumn(
              quantity.name(),
              quantity.csvName(bench),
              quantity.words(),
              quantity.unit(bench),
              SweepColumn.Part.QUANTITY));
    }
    request.measures().forEach(this::add);
    columns.add(
        new SweepColumn(PROBLEM, PROBLEM, "why there is none", "", SweepColumn.Part.PROBLEM));
  }

  List<SweepColumn> all() {
    return List.copyOf(columns);
  }

  private void add(MeasuredFigure figure) {
    String second = bench ? "s" : "";
    String of = figure.label().map(label -> " of " + label).orElse("");
    switch (figure.measure()) {
      case OUTCOME -> word("outcome", "outcome");
      case SURE -> word("sure", "whether that is sure");
      case SEALED -> number("sealedAtS", "sealed_s", "time of sealing", second);
      case SETTLED -> number("settledAtS", "settled_s", "time of settling", second);
      case PERIODS_AT_RELEASE -> {
        number("periodXAtReleaseS", "period_x_at_release_s", "period along x at release", second);
        number("periodYAtReleaseS", "period_y_at_release_s", "period along y at release", second);
      }
      case CHANCE -> interval(figure.name(), "chance" + of);
      case REPEATABILITY -> interval(figure.name(), "chance that two tries agree");
      case SHARE -> interval(figure.name(), "share of the map" + of);
      case BASIN_ENTROPY -> interval(figure.name(), "basin entropy");
      case BOUNDARY_BASIN_ENTROPY -> interval(figure.name(), "boundary basin entropy");
      case BOX_DIMENSION -> interval(figure.name(), "box dimension of the border");
      case UNCERTAINTY_EXPONENT -> interval(figure.name(), "uncertainty exponent");
      case PERIODS -> {
        number("periodShortS", "period_short_s", "short period without magnets", second);
        number("periodLongS", "period_long_s", "long period without magnets", second);
      }
      case REST_POINTS -> number("restPoints", "rest_points", "rest points", "");
      case BARRIER -> {
        String name = bench ? "barrierJ" : "barrier";
        String end = figure.label().map(label -> "." + label).orElse("");
        String words = figure.label().isPresent() ? "barrier" + of : "lowest barrier";
        number(name + end, (bench ? "barrier_j" : "barrier") + end, words, bench ? "J" : "");
      }
      case CONTACT -> word("contact", "contact");
      case CLEARANCE -> number("clearanceMm", "clearance_mm", "clearance at rest", "mm");
    }
  }

  private void word(String name, String words) {
    columns.add(new SweepColumn(name, name, words, "", SweepColumn.Part.WORD));
  }

  private void number(String name, String csv, String words, String unit) {
    columns.add(new SweepColumn(name, csv, words, unit, SweepColumn.Part.FIGURE));
  }

  private void interval(String name, String words) {
    String csv = name.replaceAll("([a-z0-9])([A-Z])", "$1_$2").toLowerCase(java.util.Locale.ROOT);
    int dot = name.indexOf('.');
    String plain = dot < 0 ? csv : csv.substring(0, dot) + name.substring(dot);
    columns.add(new SweepColumn(name, plain, words, "", SweepColumn.Part.FIGURE));
    columns.add(
        new SweepColumn(name + ".low", plain + "_low", words + ", low", "", SweepColumn.Part.LOW));
    columns.add(
        new SweepColumn(
            name + ".high", plain + "_high", words + ", high", "", SweepColumn.Part.HIGH));
  }
}
