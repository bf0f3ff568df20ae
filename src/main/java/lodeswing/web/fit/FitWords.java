package lodeswing.web.fit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lodeswing.analysis.fit.FitResult;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.FigureUnits;

/** A fit in words. */
final class FitWords {

  /** Neighbouring residuals that hang together more than this are told of. */
  private static final double RUNS_ON = 0.3;

  private final FitRequest request;
  private final StoredFit stored;
  private final FoundQuantities found;

  FitWords(FitRequest request, StoredFit stored, FoundQuantities found) {
    this.request = request;
    this.stored = stored;
    this.found = found;
  }

  /** The result in words. */
  String sentence() {
    StringBuilder words = new StringBuilder();
    List<String> told = found.sought().stream().filter(this::isFigureOrFrame).limit(4).toList();
    for (String name : told) {
      words.append(words.isEmpty() ? "" : ", ").append(FigureUnits.words(name)).append(' ');
      words.append(found.determined(name) ? figure(name) : "not told by this recording");
    }
    if (words.isEmpty()) {
      words.append("release at ").append(figure("x")).append(", ").append(figure("y"));
    }
    words.append("; ").append(stored.used()).append(" of ").append(request.recording().count());
    words
        .append(" places followed, ")
        .append(short3(stored.until(request.recording())))
        .append(timeUnit());
    words
        .append(", residuals ")
        .append(short3(stored.residual() * request.layout().shownPerUnit()))
        .append(lengthUnit());
    words.append("; ").append(endWords()).append('.');
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private boolean isFigureOrFrame(String name) {
    return !FitQuantities.OF_RELEASE.contains(name);
  }

  private String figure(String name) {
    String unit = found.unit(name);
    return short3(found.value(name), found.half(name))
        + " ± "
        + short2(found.half(name))
        + (unit.isEmpty() ? "" : " " + unit);
  }

  private String endWords() {
    return switch (FitResult.End.valueOf(stored.found().text("end").toUpperCase(Locale.ROOT))) {
      case WHOLE -> "the whole recording is followed";
      case HORIZON ->
          "beyond, the fitted path is too uncertain to be told from others, as chaotic paths are";
      case DISAGREES ->
          stored.used() < request.recording().count()
              ? "beyond, no such rig follows what was recorded"
              : "but no such rig comes as close as a recording of it would";
      case WORK -> "ended there since as much was computed as may be";
    };
  }

  /** What to know beside the numbers. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    List<String> untold = found.sought().stream().filter(name -> !found.determined(name)).toList();
    if (!untold.isEmpty()) {
      notes.add(
          "The recording does not tell "
              + String.join(", ", untold)
              + ": another value gives the same path.");
    }
    if (stored.found().number("neighbours") > RUNS_ON) {
      notes.add(
          "The residuals run on from place to place: something of the rig or the recording is"
              + " missing from the model, and the intervals are too narrow.");
    }
    if (stored.found().text("end").equals("disagrees")) {
      notes.add(
          "Seek more (the gap, the magnets' remanence, the frame), or look whether a magnet or the"
              + " support was moved, the bob touched, or the camera turned.");
    }
    if (stored.frame().mirrored()) {
      notes.add("The recording is mirrored: its y axis points the other way than the plate's.");
    }
    notes.add(
        "Intervals are of 95 %, for noise without memory and a rig that the model describes.");
    if (request.layout().layout().magnetCount() > 0) {
      notes.add(
          "Among magnets some come out too narrow: of 20 recordings of a trial's, 150 of 180 held"
              + " the truth.");
    }
    return notes;
  }

  private String lengthUnit() {
    return request.layout().model().equals("bench") ? " mm" : "";
  }

  private String timeUnit() {
    return request.layout().model().equals("bench") ? " s" : "";
  }

  /** A value to the digits that its error leaves. */
  private static String short3(double value, double half) {
    if (!(half > 0)) {
      return short3(value);
    }
    int digits = (int) Math.max(0, 1 - Math.floor(Math.log10(half)));
    return BigDecimal.valueOf(value)
        .setScale(Math.min(digits, 12), RoundingMode.HALF_EVEN)
        .toPlainString();
  }

  private static String short3(double value) {
    return Numbers.plain(Numbers.toDigits(value, 3));
  }

  private static String short2(double value) {
    return Numbers.plain(Numbers.toDigits(value, 2));
  }
}
