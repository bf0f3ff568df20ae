package lodeswing.core.recording;

/**
 * How a recording's axes lie on the plate: plan = origin + scale R(turn) (x, y), with y reversed
 * where the recording is mirrored.
 *
 * @param originX plan place of the recording's origin [m]
 * @param originY plan place of the recording's origin [m]
 * @param turn from the plate's x axis to the recording's, anticlockwise [rad]
 * @param scale metres on the plate for a metre of the recording, above 0
 * @param mirrored whether its y axis points the other way
 */
public record RecordingFrame(
    double originX, double originY, double turn, double scale, boolean mirrored) {

  /** A recording in the plate's own frame. */
  public static final RecordingFrame PLATE = new RecordingFrame(0, 0, 0, 1, false);

  /** Writes the plan place of a recorded one. */
  public void toPlan(double x, double y, double[] out) {
    turned(x, mirrored ? -y : y, out);
    out[0] += originX;
    out[1] += originY;
  }

  /** Writes the plan velocity of a recorded one. */
  public void velocityToPlan(double vx, double vy, double[] out) {
    turned(vx, mirrored ? -vy : vy, out);
  }

  private void turned(double x, double y, double[] out) {
    double cosine = scale * StrictMath.cos(turn);
    double sine = scale * StrictMath.sin(turn);
    out[0] = cosine * x - sine * y;
    out[1] = sine * x + cosine * y;
  }

  /** Writes how a plan place would have been recorded. */
  public void toRecording(double planX, double planY, double[] out, int at) {
    double cosine = StrictMath.cos(turn) / scale;
    double sine = StrictMath.sin(turn) / scale;
    double fromX = planX - originX;
    double fromY = planY - originY;
    out[at] = cosine * fromX + sine * fromY;
    double y = cosine * fromY - sine * fromX;
    out[at + 1] = mirrored ? -y : y;
  }
}
