package lodeswing.web.trace;

import java.nio.charset.StandardCharsets;
import lodeswing.analysis.trace.TraceResult;
import lodeswing.core.geometry.PathCurve;
import lodeswing.figure.BobMotion;
import lodeswing.figure.Drawing;
import lodeswing.figure.Points;
import lodeswing.render.gif.GifWriter;
import lodeswing.render.svg.SvgAnimation;
import lodeswing.web.limits.Limits;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;

/** A trace as an animation: its picture, over which the bob moves. */
final class TraceAnimation {

  /** Places a second in an SVG, between which viewers draw on. */
  private static final double SVG_FRAMES = 30;

  /** Shortest frame of a GIF [s]: viewers show shorter ones slower (common practice). */
  private static final double GIF_FRAME = 0.05;

  private static final double HOLD = 1;

  private final TraceAnswers answers;
  private final TraceRequest request;
  private final TraceResult path;
  private final AnimationSettings settings;

  TraceAnimation(TraceRequest request, byte[] result, AnimationSettings settings) {
    this.request = request;
    this.answers = new TraceAnswers(request, result);
    this.path = answers.stored().path();
    this.settings = settings;
  }

  /** The animation in a form. */
  Reply reply(Representation form, Limits limits) {
    Drawing drawing = new TracePicture(request, answers).played(caption());
    if (form == Representation.GIF) {
      // Hundredths of a second are what a GIF counts in.
      double least = Math.ceil(100 * play() / (limits.gifFrames() - 1) - 1e-9) / 100;
      BobMotion motion = motion(Math.max(GIF_FRAME, least));
      return Reply.of(form, GifWriter.write(drawing, motion, settings.width()));
    }
    return Reply.of(
        form, SvgAnimation.write(drawing, motion(1 / SVG_FRAMES)).getBytes(StandardCharsets.UTF_8));
  }

  private double play() {
    return path.curve().ends() / settings.speed();
  }

  private String caption() {
    return "The bob moves "
        + settings.words()
        + (path.trustedUntil().isPresent()
                && path.trustedUntil().getAsDouble() < path.curve().ends()
            ? "; it is hollow where the computed path is not to be trusted."
            : ".");
  }

  /** The bob frame by frame; the last frame is the path's end. */
  private BobMotion motion(double frame) {
    PathCurve curve = path.curve();
    double step = frame * settings.speed();
    int count = Math.max(2, 1 + (int) Math.ceil(curve.ends() / step - 1e-9));
    double[] x = new double[count];
    double[] y = new double[count];
    double[] at = new double[4];
    double trusted = path.trustedUntil().orElse(Double.POSITIVE_INFINITY);
    int sure = 0;
    for (int i = 0; i < count; i++) {
      curve.at(i * step, at);
      x[i] = at[0];
      y[i] = at[1];
      sure += i * step <= trusted ? 1 : 0;
    }
    return new BobMotion(new Points(x, y), sure, frame, HOLD);
  }
}
