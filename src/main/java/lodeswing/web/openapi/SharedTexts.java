package lodeswing.web.openapi;

import java.util.Arrays;
import java.util.function.Function;
import lodeswing.render.png.PngWriter;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.TextShape;
import lodeswing.web.openapi.OperationDescription.ParameterText;

/** What parameters that many operations share say about themselves. */
public final class SharedTexts {

  private static final int LONGEST_ID = 60;

  private SharedTexts() {}

  /** Tells the cost of a post alone. */
  public static ParameterText dryRun() {
    return ParameterText.optional(
        "dry-run",
        new FlagShape(),
        "true: tell the cost (costReleases), compute and store nothing.",
        "false");
  }

  /** The layout in a path. */
  public static ParameterText layoutId(String example) {
    return id("layoutId", "The layout's id.", example);
  }

  /** An id in a path. */
  public static ParameterText id(String name, String text, String example) {
    return new ParameterText(name, true, new TextShape(LONGEST_ID), text, example);
  }

  /** The width of a PNG. */
  public static ParameterText pixels(int usual) {
    return ParameterText.optional(
        "pixels",
        NumberShape.count(PngWriter.LEAST_WIDTH, PngWriter.GREATEST_WIDTH),
        "Width of a PNG in pixels.",
        Integer.toString(usual));
  }

  /** One of the words of an enumeration. */
  public static <E> ParameterText word(
      String name, E[] values, Function<E, String> word, String text, String example) {
    return ParameterText.optional(
        name,
        ChoiceShape.of(Arrays.stream(values).map(word).toArray(String[]::new)),
        text,
        example);
  }
}
