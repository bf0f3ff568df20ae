package lodeswing.figure;

import java.util.Comparator;
import java.util.Optional;

/** A long exposure in words. */
final class GlowWords {

  private static final int LONGEST_NAME = 60;

  private final GlowPicture picture;
  private final PathWords words;

  private GlowWords(GlowPicture picture) {
    this.picture = picture;
    this.words = new PathWords(picture.measure());
  }

  static AlternativeText alternative(GlowPicture picture) {
    GlowWords own = new GlowWords(picture);
    String text = String.join(" ", own.scale(), own.light(), own.result(), own.fading()).strip();
    String title = picture.title().isEmpty() ? "Glow of the bob's light" : picture.title();
    return new AlternativeText("en", title, text);
  }

  private String scale() {
    ViewBox paper = picture.paper();
    return "Long exposure of the bob's light on paper that glows in the dark, seen from above in"
        + " true scale: a pixel is "
        + words.length(picture.pixel())
        + ", the whole "
        + words.length(paper.width())
        + " by "
        + words.length(paper.height())
        + ", the origin "
        + words.length(-paper.left())
        + " from the left and "
        + words.length(paper.top())
        + " from the upper edge.";
  }

  private String light() {
    GlowPicture.Light light = picture.light();
    String spot =
        "A spot of light "
            + words.length(light.spot())
            + " wide at half its brightness goes with the bob, released at "
            + words.place(picture.start().x(), picture.start().y())
            + ". ";
    return spot
        + (light.leftOut().isEmpty()
            ? "It shines for " + words.time(light.exposure()) + ", all of which is shown."
            : "It shines for "
                + words.time(light.exposure())
                + ", of which only the first "
                + words.time(light.shown())
                + " are shown: the rest is left out because "
                + light.leftOut()
                + ".");
  }

  private String result() {
    GlowPicture.Result result = picture.result();
    String nearest =
        nearest(result.brightestX(), result.brightestY())
            .map(magnet -> ", " + beside(magnet, result))
            .orElse("");
    String end = result.end().isEmpty() ? "" : " " + result.end();
    return "The brightest place is at "
        + words.place(result.brightestX(), result.brightestY())
        + nearest
        + "; "
        + percent(result.near())
        + " of the glow lies within "
        + words.length(picture.light().spot())
        + " of it."
        + end;
  }

  private Optional<PlateMagnet> nearest(double x, double y) {
    return picture.magnets().stream()
        .min(Comparator.comparingDouble(magnet -> Math.hypot(magnet.x() - x, magnet.y() - y)));
  }

  private String beside(PlateMagnet magnet, GlowPicture.Result result) {
    String name = PlainText.shortened(magnet.label(), LONGEST_NAME);
    double distance =
        Math.hypot(magnet.x() - result.brightestX(), magnet.y() - result.brightestY());
    return words.length(distance)
        + " from the middle of "
        + (name.isEmpty() ? "magnet " + magnet.number() : name);
  }

  private String fading() {
    GlowPicture.Result result = picture.result();
    GlowPicture.Light light = picture.light();
    return "It is seen "
        + (light.lookedAfter() > 0 ? words.time(light.lookedAfter()) + " after" : "as")
        + " the light goes out. A place fades as 1/(1 + t/"
        + words.time(result.fading())
        + ") to the power "
        + PathWords.figure(result.exponent())
        + ": the place of the release has "
        + percent(result.oldest())
        + " of its glow left, the last place shown "
        + percent(result.newest())
        + ". Shades are relative: half of the path's length is brighter than the middle shade.";
  }

  private static String percent(double share) {
    return PathWords.figure(100 * share) + "\u00a0%";
  }
}
