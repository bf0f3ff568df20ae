package lodeswing.web.gauging;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lodeswing.analysis.gauging.MagnetSize;
import lodeswing.analysis.gauging.RemanenceEstimate;
import lodeswing.analysis.gauging.RemanenceRange;
import lodeswing.core.magnet.Grade;
import lodeswing.job.ComputationKey;
import lodeswing.render.csv.CsvDialect;
import lodeswing.render.csv.CsvWriter;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;

/** An estimate as document, table and single values. */
final class EstimateAnswers {

  static final String CAUTION =
      "Strong magnets leap together, pinch and splinter, are dangerous if swallowed and disturb"
          + " cardiac devices: follow the local rules and leave such measurements to trained staff.";

  private static final String NONE = "none";
  private static final double MM = 1000;

  /** Above the remanence of every material on sale [T]: the trade's highest grade ends at 1.52. */
  private static final double BEYOND_ALL = 1.55;

  /** No magnet that is sold has more [T]: common practice. */
  private static final double STRONGEST = 1.6;

  private final EstimateQuery asked;
  private final Optional<RemanenceEstimate> estimate;

  private EstimateAnswers(EstimateQuery asked, Optional<RemanenceEstimate> estimate) {
    this.asked = asked;
    this.estimate = estimate;
  }

  /** The answer to what was asked. */
  static EstimateAnswers of(EstimateQuery asked) {
    return new EstimateAnswers(
        asked,
        asked.size().map(size -> RemanenceEstimate.of(size, asked.sizeOff(), asked.readings())));
  }

  /** The answer in a form. */
  Reply in(Representation form, QueryParameters query) {
    return switch (form) {
      case CSV -> Reply.of(form, csv(TableDialect.of(query)));
      case TEXT -> cell(query);
      default -> Reply.ofJson(form, json());
    };
  }

  private Reply cell(QueryParameters query) {
    return switch (query.find(EstimateController.VALUE).orElse(EstimateValue.SENTENCE)) {
      case SENTENCE -> Reply.ofWords(sentence());
      case REMANENCE -> figure(result().map(RemanenceRange::value), query);
      case REMANENCE_LOW -> figure(result().map(RemanenceRange::low), query);
      case REMANENCE_HIGH -> figure(result().map(RemanenceRange::high), query);
      case MOMENT -> figure(moment(), query);
      case GRADE -> Reply.ofWords(grades().stream().findFirst().map(Grade::code).orElse(NONE));
      case POLE -> Reply.ofWords(asked.compass().map(Compass::faceWord).orElse(NONE));
    };
  }

  private static Reply figure(Optional<Double> figure, QueryParameters query) {
    return figure
        .map(value -> Reply.ofFigure(Numbers.shortest(Numbers.rounded(value)), query))
        .orElseGet(() -> Reply.ofWords(NONE));
  }

  private Optional<RemanenceRange> result() {
    return estimate.map(RemanenceEstimate::result);
  }

  private Optional<Double> moment() {
    return result()
        .flatMap(
            range -> asked.size().map(size -> size.unit().strengthened(range.value()).moment()));
  }

  /** Grades whose range meets the result's, the nearest to its middle first. */
  private List<Grade> grades() {
    return estimate.map(found -> grades(found.result(), found.leastOnly())).orElse(List.of());
  }

  /** A range that is the least only has no upper end. */
  private List<Grade> grades(RemanenceRange range, boolean least) {
    double middle = (range.low() + range.high()) / 2;
    double high = least ? Double.POSITIVE_INFINITY : range.high();
    return Grade.all().stream()
        .filter(grade -> asked.material().map(grade.material()::equals).orElse(true))
        .filter(grade -> grade.remanenceHigh() >= range.low() && grade.remanenceLow() <= high)
        .sorted(Comparator.comparingDouble(grade -> Math.abs(grade.remanence() - middle)))
        .toList();
  }

  private String sentence() {
    List<String> parts = new ArrayList<>();
    estimate.ifPresent(found -> parts.add(sentence(found)));
    asked.compass().ifPresent(compass -> parts.add(compass.sentence()));
    return String.join(" ", parts);
  }

  private String sentence(RemanenceEstimate found) {
    RemanenceRange range = found.result();
    List<Grade> fitting = grades();
    String fits =
        fitting.isEmpty()
            ? range.low() > STRONGEST
                ? "no magnet is that strong: look at the readings and their units"
                : "no grade that is known here fits"
            : found.leastOnly()
                ? "every stronger grade may fit too, the nearest is " + fitting.get(0).code()
                : "the nearest grade is " + fitting.get(0).code();
    return "The remanence is "
        + (found.leastOnly() ? "at least about " : "")
        + tesla(range.value())
        + " (range "
        + tesla(range.low())
        + " to "
        + tesla(range.high())
        + "); "
        + fits
        + ".";
  }

  private static String tesla(double value) {
    return Numbers.shortest(Math.rint(value * 1000) / 1000) + " T";
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    if (asked.kinds().contains("contact-pull")) {
      notes.add(
          "At contact every hidden gap, plating, paint, thin or saturated steel and a crooked pull"
              + " make the pull weaker, so the remanence is at least what it tells; the range's"
              + " upper end allows for a hidden gap alone. A spacer of a millimetre or more tells"
              + " more.");
    }
    if (asked.kinds().contains("spaced-pull")) {
      notes.add(
          "Steel thinner than about half the magnet's width, or saturated, pulls less than reckoned"
              + " here; the true remanence is then higher.");
    }
    if (asked.kinds().contains("field")) {
      notes.add(
          "A phone's sensor sits somewhere inside it and overflows near a strong magnet; move the"
              + " phone until the reading is greatest, stay beyond that overflow and state the"
              + " distance to the sensor itself. A single reading has the earth's field of up to "
              + Numbers.plain(EstimateQuery.EARTH)
              + " microtesla in it; the difference of readings with and without the magnet has not.");
    }
    if (asked.kinds().contains("pair-pull") || asked.kinds().contains("lift")) {
      notes.add(
          "Both magnets are taken as equal, on one axis and with unlike poles facing, far from other"
              + " steel.");
    }
    estimate.ifPresent(found -> judge(found, notes));
    if (asked.compass().isPresent()) {
      notes.add(
          "Bring the face near the needle slowly and from some way off, where the needle only turns:"
              + " a strong magnet too near can turn the needle's own poles round.");
    }
    return notes;
  }

  private static void judge(RemanenceEstimate found, List<String> notes) {
    if (!found.agree()) {
      notes.add(
          "The readings do not agree within their uncertainties; the range was widened where their"
              + " scatter asks for it. Measure again, first the one that stands apart.");
    }
    if (found.result().low() > BEYOND_ALL) {
      notes.add(
          "No magnet material has a remanence so high: look for a wrong unit, size or distance.");
    }
    notes.add(
        "Each uncertainty is taken as half of a 95 % interval, and the range is one of 95 % as far"
            + " as they are true. Taken for granted is uniform magnetisation along the height.");
  }

  private byte[] csv(CsvDialect dialect) {
    var out = new StringBuilder();
    try {
      var csv =
          new CsvWriter(
              out,
              dialect,
              "reading",
              "remanence_t",
              "remanence_low_t",
              "remanence_high_t",
              "at_least",
              "grades");
      if (estimate.isPresent()) {
        RemanenceEstimate found = estimate.get();
        for (int i = 0; i < asked.kinds().size(); i++) {
          row(csv, asked.kinds().get(i), found.readings().get(i), least(i));
        }
        row(csv, "all", found.result(), found.leastOnly());
      }
      if (asked.compass().isPresent()) {
        csv.text("compass: " + asked.compass().get().faceWord() + " pole").empty().empty().empty();
        csv.empty().empty().endRow();
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private void row(CsvWriter csv, String kind, RemanenceRange range, boolean least)
      throws IOException {
    csv.text(kind);
    csv.number(Numbers.rounded(range.value()));
    csv.number(Numbers.rounded(range.low()));
    csv.number(Numbers.rounded(range.high()));
    csv.text(Boolean.toString(least));
    csv.text(grades(range, least).stream().map(Grade::code).collect(Collectors.joining(" ")))
        .endRow();
  }

  private boolean least(int reading) {
    return asked.readings().get(reading).leastOnly();
  }

  private byte[] json() {
    Map<String, Object> members = new LinkedHashMap<>();
    asked.size().ifPresent(size -> members.put("magnet", magnet(size)));
    estimate.ifPresent(found -> tell(found, members));
    asked
        .compass()
        .ifPresent(
            compass -> {
              Map<String, Object> pole = new LinkedHashMap<>();
              pole.put("compass", compass.word());
              pole.put("face", compass.faceWord());
              members.put("pole", Body.of(pole));
            });
    members.put("sentence", sentence());
    members.put("notes", notes());
    members.put("caution", CAUTION);
    members.put("engineRevision", (double) ComputationKey.ENGINE_REVISION);
    Map<String, Object> links = new LinkedHashMap<>();
    links.put("self", asked.self());
    links.put("csv", asked.self() + "&format=csv");
    members.put("links", Body.of(links));
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }

  private void tell(RemanenceEstimate found, Map<String, Object> members) {
    put(members, found.result());
    members.put("atLeast", found.leastOnly());
    members.put("momentAm2", Numbers.rounded(moment().orElseThrow()));
    members.put("agree", found.agree());
    List<Body> grades = new ArrayList<>();
    for (Grade grade : grades()) {
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("code", grade.code());
      one.put("material", EstimateQuery.word(grade.material()));
      one.put("lowT", Numbers.rounded(grade.remanenceLow()));
      one.put("highT", Numbers.rounded(grade.remanenceHigh()));
      one.put(
          "source",
          grade.source() == Grade.Source.MMPA_0100_00
              ? "MMPA Standard 0100-00, nominal value with 3 % either side"
              : "common practice");
      grades.add(Body.of(one));
    }
    members.put("grades", grades);
    List<Body> readings = new ArrayList<>();
    for (int i = 0; i < asked.kinds().size(); i++) {
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("kind", asked.kinds().get(i));
      put(one, found.readings().get(i));
      one.put("atLeast", least(i));
      one.put("counted", !least(i) || found.leastOnly());
      readings.add(Body.of(one));
    }
    members.put("readings", readings);
  }

  private static void put(Map<String, Object> members, RemanenceRange range) {
    members.put("remanenceT", Numbers.rounded(range.value()));
    members.put("remanenceLowT", Numbers.rounded(range.low()));
    members.put("remanenceHighT", Numbers.rounded(range.high()));
  }

  private static Body magnet(MagnetSize size) {
    Map<String, Object> members = new LinkedHashMap<>();
    List<Double> lengths = size.lengths();
    switch (size.form()) {
      case DISC -> {
        members.put("shape", "disc");
        members.put("diameterMm", millimetres(lengths.get(1)));
      }
      case RING -> {
        members.put("shape", "ring");
        members.put("diameterMm", millimetres(lengths.get(1)));
        members.put("innerDiameterMm", millimetres(lengths.get(2)));
      }
      case BLOCK -> {
        members.put("shape", "block");
        members.put("lengthMm", millimetres(lengths.get(1)));
        members.put("widthMm", millimetres(lengths.get(2)));
      }
    }
    members.put("heightMm", millimetres(lengths.get(0)));
    return Body.of(members);
  }

  private static double millimetres(double metres) {
    return Numbers.rounded(metres * MM);
  }
}
