package lodeswing.render.svg;

import java.util.Locale;
import java.util.StringJoiner;
import java.util.function.IntToDoubleFunction;
import lodeswing.figure.BobMotion;
import lodeswing.figure.Drawing;
import lodeswing.figure.Points;
import lodeswing.figure.Tint;
import lodeswing.render.Palette;

/**
 * Writes a drawing of a path as an SVG file in which the bob moves along it, by declarative
 * animation (W3C, SVG Animations Level 2, {@code animate}) without a script; a bar below shows how
 * far the play is.
 *
 * <p>All that moves lies in one group, which is not shown to those who prefer reduced motion (Media
 * Queries Level 5, {@code prefers-reduced-motion}): they see the still picture of the whole path.
 */
public final class SvgAnimation {

  private static final double BOB = 7;
  private static final double BAR = 3;
  private static final double BAR_EDGE = 20;

  /** Opacity of a bob whose place is not to be trusted. */
  private static final double DOUBTED = 0.3;

  private final Drawing drawing;
  private final BobMotion motion;
  private final int holds;
  private final StringBuilder out = new StringBuilder(1 << 16);

  private SvgAnimation(Drawing drawing, BobMotion motion) {
    this.drawing = drawing;
    this.motion = motion;
    this.holds = (int) Math.round(motion.hold() / motion.frame());
  }

  /** The text of an SVG file; to be sent as UTF-8. */
  public static String write(Drawing drawing, BobMotion motion) {
    String still = SvgWriter.write(drawing);
    String moving = new SvgAnimation(drawing, motion).moving();
    int end = still.lastIndexOf("</svg>");
    return still.substring(0, end) + moving + still.substring(end);
  }

  private String moving() {
    out.append("<style>@media (prefers-reduced-motion:reduce){.moving{display:none}}</style>\n");
    out.append("<g class=\"moving\" aria-hidden=\"true\">\n");
    bar();
    bob();
    return out.append("</g>\n").toString();
  }

  private void bob() {
    Points places = motion.places();
    number("<circle cx=\"", drawing.pixelX(places.x(0)));
    number("\" cy=\"", drawing.pixelY(places.y(0)));
    number("\" r=\"", BOB);
    out.append("\" fill=\"").append(Palette.colour(Tint.Role.INK).hex());
    out.append("\" stroke=\"").append(Palette.colour(Tint.Role.PAPER).hex());
    out.append("\" stroke-width=\"2\">\n");
    animate("cx", values(i -> drawing.pixelX(places.x(i))), "");
    animate("cy", values(i -> drawing.pixelY(places.y(i))), "");
    if (motion.trusted() < motion.count()) {
      double at = (double) motion.trusted() / (motion.count() - 1 + holds);
      String times = String.format(Locale.ROOT, "\" keyTimes=\"0;%.5f", at);
      animate("fill-opacity", "1;" + DOUBTED, times + "\" calcMode=\"discrete");
    }
    out.append("</circle>\n");
  }

  private void bar() {
    double width = drawing.nominalWidth() - 2 * BAR_EDGE;
    double y = drawing.nominalHeight() - 2 * BAR;
    rectangle(y, width, Palette.colour(Tint.Role.PLATE).hex());
    out.append("/>\n");
    rectangle(y, width, Palette.colour(Tint.Role.PLATE_EDGE).hex());
    out.append(">\n");
    double share = (motion.count() - 1.0) / (motion.count() - 1 + holds);
    String times = String.format(Locale.ROOT, "\" keyTimes=\"0;%.5f;1", share);
    animate("width", "0;" + rounded(width) + ";" + rounded(width), times);
    out.append("</rect>\n");
  }

  private void rectangle(double y, double width, String colour) {
    number("<rect x=\"", BAR_EDGE);
    number("\" y=\"", y);
    number("\" width=\"", width);
    number("\" height=\"", BAR);
    out.append("\" fill=\"").append(colour).append('"');
  }

  /** Frames evenly spaced in time, the last one held. */
  private String values(IntToDoubleFunction pixel) {
    var all = new StringJoiner(";");
    for (int i = 0; i < motion.count() + holds; i++) {
      all.add(rounded(pixel.applyAsDouble(Math.min(i, motion.count() - 1))));
    }
    return all.toString();
  }

  private void animate(String attribute, String values, String times) {
    double lasting = motion.frame() * (motion.count() - 1 + holds);
    out.append("<animate attributeName=\"").append(attribute);
    out.append(String.format(Locale.ROOT, "\" dur=\"%.3fs\"", lasting));
    out.append(" repeatCount=\"indefinite\" values=\"").append(values).append(times);
    out.append("\"/>\n");
  }

  private void number(String before, double value) {
    out.append(before);
    SvgText.number(out, value);
  }

  private static String rounded(double value) {
    var text = new StringBuilder();
    SvgText.number(text, value);
    return text.toString();
  }
}
