package lodeswing.web.recording;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.web.body.Body;
import lodeswing.web.body.ColumnTable;
import lodeswing.web.body.FaultList;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/**
 * A recording as it was sent, in seconds and the layout's unit of length.
 *
 * @param recording as {@link RecordingShapes#STORED} has it
 * @param frame as {@link RecordingShapes#STORED_FRAME} has it
 */
public record SentRecording(Body recording, Body frame) {

  private static final List<String> COLUMNS = List.of("t", "x", "y");
  private static final int MOST_TOLD = 5;

  /**
   * Reads a request's {@code recording} and {@code frame}.
   *
   * @param fewest places that it must have
   * @throws ProblemException with every fault, or {@code too-costly}
   */
  public static SentRecording read(Body request, LayoutDocument layout, int fewest, Limits limits) {
    Body sent = request.object("recording");
    Body frame = request.findObject("frame").orElseGet(() -> Body.of(Map.of()));
    ColumnTable.Read read =
        sent.findText("csv").isPresent() ? table(sent, limits) : columns(sent, limits);
    var faults = new FaultList();
    boolean bench = layout.model().equals("bench");
    if (bench) {
      knownUnits(frame, read.units(), faults);
    }
    double length = length(frame, read.units().getOrDefault("x", ""), bench, faults);
    double time = time(frame, read.units().getOrDefault("t", ""), faults);
    faults.refuseIfAny(ProblemCode.INVALID_REQUEST, "The recording");
    Map<String, Object> members = new LinkedHashMap<>();
    for (String name : COLUMNS) {
      double factor = name.equals("t") ? time : length;
      members.put(
          name,
          read.columns().getOrDefault(name, List.of()).stream()
              .map(value -> plain(value * factor))
              .toList());
    }
    members.put("gaps", (double) read.gaps());
    Body recording = Body.of(members);
    rising(recording, sent.has("csv") ? "/recording/csv/row/" : "/recording/t/", faults);
    int count = recording.numbers("t").size();
    if (count >= fewest && stands(recording, "x") && stands(recording, "y")) {
      faults.add("/recording/x", "never changes, nor does y: a bob that stands tells nothing");
    }
    if (count < fewest) {
      faults.add(
          "/recording",
          "has "
              + count
              + " places; what is sought needs at least "
              + fewest
              + ", spread over a swing or more");
    }
    faults.refuseIfAny(ProblemCode.INVALID_REQUEST, "The recording");
    return new SentRecording(recording, stored(frame));
  }

  private static Body stored(Body frame) {
    Map<String, Object> members = new LinkedHashMap<>();
    for (String name : List.of("originX", "originY", "turnDeg")) {
      members.put(name, frame.findNumber(name).orElse(0));
    }
    members.put("mirrored", frame.findText("mirrored").orElse("no"));
    return Body.of(members);
  }

  /** Twelve digits: a change of units leaves no trace. */
  private static double plain(double value) {
    return Numbers.toDigits(value, 12);
  }

  private static ColumnTable.Read table(Body sent, Limits limits) {
    for (String name : COLUMNS) {
      if (sent.has(name)) {
        throw invalid("/recording/" + name, "stands beside csv; give one of them");
      }
    }
    Map<String, NumberShape> shapes = new LinkedHashMap<>();
    COLUMNS.forEach(name -> shapes.put(name, RecordingShapes.NUMBER));
    return ColumnTable.read(
        sent.text("csv"),
        new ColumnTable.Form(
            "places", shapes, Map.of(), limits.recordingPlaces(), true, "/recording/csv"));
  }

  private static ColumnTable.Read columns(Body sent, Limits limits) {
    Map<String, List<Double>> columns = new LinkedHashMap<>();
    List<Fault> faults = new ArrayList<>();
    for (String name : COLUMNS) {
      if (sent.has(name)) {
        columns.put(name, sent.numbers(name));
      } else {
        faults.add(
            new Fault("/recording/" + name, "is missing; give t, x and y, or a table in csv"));
      }
    }
    if (faults.isEmpty()) {
      int count = sent.numbers("t").size();
      columns.forEach(
          (name, column) -> {
            if (column.size() != count) {
              faults.add(
                  new Fault(
                      "/recording/" + name,
                      "has " + column.size() + " entries; must have as many as t, " + count));
            }
          });
      if (count > limits.recordingPlaces()) {
        throw new ProblemException(
            ProblemCode.TOO_COSTLY,
            "The recording is too long.",
            List.of(
                new Fault(
                    "/recording/t",
                    "has " + count + " places; lower them to " + limits.recordingPlaces())));
      }
    }
    if (!faults.isEmpty()) {
      throw new ProblemException(
          ProblemCode.INVALID_REQUEST, "The recording cannot be read.", faults);
    }
    return new ColumnTable.Read(columns, Map.of(), 0);
  }

  private static boolean stands(Body recording, String name) {
    return recording.numbers(name).stream().distinct().count() == 1;
  }

  /** A header's unit that is passed over would give numbers that look right and are not. */
  private static void knownUnits(Body frame, Map<String, String> units, FaultList faults) {
    units.forEach(
        (name, unit) -> {
          boolean isTime = name.equals("t");
          String member = isTime ? "timeUnit" : "lengthUnit";
          List<String> words =
              (isTime ? RecordingShapes.TIME_UNIT : RecordingShapes.LENGTH_UNIT).words();
          if (!frame.has(member) && !words.contains(unit)) {
            faults.add(
                "/recording/csv/line/1/" + name,
                "has the unit "
                    + unit
                    + ", which is none of "
                    + String.join(", ", words)
                    + "; convert the column, or give frame."
                    + member);
          }
        });
    String x = units.getOrDefault("x", "");
    String y = units.getOrDefault("y", x);
    if (!frame.has("lengthUnit") && !x.equals(y)) {
      faults.add("/recording/csv/line/1/y", "must have the same unit as x");
    }
  }

  private static double length(Body frame, String header, boolean bench, FaultList faults) {
    Optional<String> unit = frame.findText("lengthUnit");
    if (!bench) {
      unit.ifPresent(
          word -> faults.add("/frame/lengthUnit", "is no unit of a textbook layout; leave it out"));
      return 1;
    }
    String word = unit.orElse(RecordingShapes.LENGTH_UNIT.words().contains(header) ? header : "mm");
    if (!word.equals("px")) {
      return word.equals("cm") ? 10 : word.equals("m") ? 1_000 : 1;
    }
    if (!frame.has("mmPerPixel")) {
      faults.add("/frame/mmPerPixel", "is missing: pixels need the millimetres of one");
      return 1;
    }
    return frame.number("mmPerPixel");
  }

  private static double time(Body frame, String header, FaultList faults) {
    String word =
        frame
            .findText("timeUnit")
            .orElse(RecordingShapes.TIME_UNIT.words().contains(header) ? header : "s");
    if (!word.equals("frames")) {
      return word.equals("ms") ? 1e-3 : 1;
    }
    if (!frame.has("framesPerS")) {
      faults.add("/frame/framesPerS", "is missing: frames need how many go by in a second");
      return 1;
    }
    return 1 / frame.number("framesPerS");
  }

  private static void rising(Body recording, String pointer, FaultList faults) {
    List<Double> t = recording.numbers("t");
    int told = 0;
    for (int i = 1; i < t.size() && told < MOST_TOLD; i++) {
      if (!(t.get(i) > t.get(i - 1))) {
        faults.add(
            pointer + i,
            "is "
                + Numbers.shortest(t.get(i))
                + " s, not later than the "
                + Numbers.shortest(t.get(i - 1))
                + " s before it; sort the rows by time and drop those that are there twice");
        told++;
      }
    }
  }

  private static ProblemException invalid(String pointer, String detail) {
    return new ProblemException(
        ProblemCode.INVALID_REQUEST,
        "The recording cannot be read.",
        List.of(new Fault(pointer, detail)));
  }
}
