package lodeswing.web.recording;

import java.util.LinkedHashMap;
import java.util.Map;
import lodeswing.core.recording.Recording;
import lodeswing.core.recording.RecordingFrame;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.LayoutDocument;

/**
 * A recording as a stored request has it.
 *
 * @param recording as {@link RecordingShapes#STORED} has it
 * @param frame as {@link RecordingShapes#STORED_FRAME} has it
 * @param layout whose unit of length it is in
 */
public record KeptRecording(Body recording, Body frame, LayoutDocument layout) {

  private static final double DEGREE = Math.PI / 180;

  /** The one of a stored request's {@code recording} and {@code frame}. */
  public static KeptRecording of(Body stored, LayoutDocument layout) {
    return new KeptRecording(stored.object("recording"), stored.object("frame"), layout);
  }

  /** Its places in SI; in a textbook layout in the model's own units. */
  public Recording inSi() {
    double unit = 1 / layout.shownPerUnit();
    return new Recording(column("t", 1), column("x", unit), column("y", unit));
  }

  private double[] column(String name, double unit) {
    return recording.numbers(name).stream().mapToDouble(value -> value * unit).toArray();
  }

  /** Its axes in SI; not reversed where that is unknown. */
  public RecordingFrame frameInSi() {
    return new RecordingFrame(
        frame.number("originX") / layout.shownPerUnit(),
        frame.number("originY") / layout.shownPerUnit(),
        frame.number("turnDeg") * DEGREE,
        1,
        mirrored().equals("yes"));
  }

  /** Whether its y axis is reversed: a word of {@link RecordingShapes#MIRRORED}. */
  public String mirrored() {
    return frame.text("mirrored");
  }

  /** Rows that were passed over. */
  public int gaps() {
    return (int) recording.number("gaps");
  }

  /**
   * How it was read, as {@link RecordingShapes#READING} has it.
   *
   * @param reversed whether its y axis was taken as reversed
   */
  public Body reading(boolean reversed) {
    Recording places = inSi();
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("places", (double) places.count());
    members.put("gaps", (double) gaps());
    members.put("durationS", Numbers.rounded(places.since(places.count() - 1)));
    members.put("usualIntervalS", Numbers.rounded(places.usualInterval()));
    members.put("longestIntervalS", Numbers.rounded(places.longestInterval()));
    members.put("mirrored", reversed);
    members.put("noise", Numbers.rounded(places.noise() * layout.shownPerUnit()));
    return Body.of(members);
  }
}
