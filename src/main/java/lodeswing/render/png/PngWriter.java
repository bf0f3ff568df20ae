package lodeswing.render.png;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import lodeswing.figure.Drawing;
import lodeswing.figure.Shape;

/**
 * Writes a drawing as a PNG file of a wanted width, with smoothed edges and the alternative text
 * inside (W3C, Portable Network Graphics, third edition, 11.3.3.4, keywords {@code Title} and
 * {@code Description}).
 *
 * <p>Holds no time and asks for no system font: the same drawing and width give the same bytes on
 * the same Java version.
 */
public final class PngWriter {
  /** Least width [px]. */
  public static final int LEAST_WIDTH = 64;

  /** Greatest width [px]. */
  public static final int GREATEST_WIDTH = 4096;

  /** Most pixels of a picture: four bytes each while it is drawn. */
  public static final long MOST_PIXELS = 24_000_000L;

  private PngWriter() {}

  /**
   * The drawing as the bytes of a PNG file.
   *
   * @param width [px], {@link #LEAST_WIDTH} to {@link #GREATEST_WIDTH}
   * @throws IllegalArgumentException where the width lies outside, or the picture would pass {@link
   *     #MOST_PIXELS}
   */
  public static byte[] write(Drawing drawing, int width) {
    return PngText.added(encoded(picture(drawing, width)), drawing.alternative());
  }

  /**
   * The drawing as pixels, for other formats.
   *
   * @param width [px], {@link #LEAST_WIDTH} to {@link #GREATEST_WIDTH}
   * @throws IllegalArgumentException as {@link #write} does
   */
  public static BufferedImage picture(Drawing drawing, int width) {
    if (width < LEAST_WIDTH || width > GREATEST_WIDTH) {
      throw new IllegalArgumentException(
          "A picture is " + LEAST_WIDTH + " to " + GREATEST_WIDTH + " pixels wide.");
    }
    double zoom = width / drawing.nominalWidth();
    long height = Math.max(1, Math.round(drawing.nominalHeight() * zoom));
    if (width * height > MOST_PIXELS) {
      throw new IllegalArgumentException("A picture has " + MOST_PIXELS + " pixels at most.");
    }
    return image(drawing, width, (int) height, zoom);
  }

  private static BufferedImage image(Drawing drawing, int width, int height, double zoom) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    try {
      graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      graphics.setRenderingHint(
          RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      graphics.scale(zoom, zoom);
      ShapePainter painter = new ShapePainter(drawing, graphics);
      painter.paper();
      for (Shape shape : drawing.shapes()) {
        painter.paint(shape);
      }
    } finally {
      graphics.dispose();
    }
    return image;
  }

  private static byte[] encoded(BufferedImage image) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
    // A memory stream of our own: the global cache of ImageIO would write to the disk.
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      if (!ImageIO.write(image, "png", out)) {
        throw new IllegalStateException("This Java has no writer for PNG.");
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }
}
