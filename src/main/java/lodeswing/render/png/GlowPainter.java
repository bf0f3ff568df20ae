package lodeswing.render.png;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import lodeswing.analysis.glow.GlowField;
import lodeswing.figure.Drawing;
import lodeswing.figure.Shape;
import lodeswing.render.Palette;

/**
 * Paints a long exposure, pixel for pixel.
 *
 * <p>The shade of a brightness b is b/(b + h), h being what half of the path's length passes: faint
 * lines are seen beside a place of rest a thousand times as bright, and nothing is cut off.
 */
public final class GlowPainter {

  private static final int LEVELS = 240;

  private GlowPainter() {}

  /**
   * The exposure as a PNG file with its text in it.
   *
   * @param field the light
   * @param gain how many times as bright it is shown, positive
   * @param over lines over it, its nominal width that of the field [pixel]
   */
  public static byte[] png(GlowField field, double gain, Drawing over) {
    int width = field.paper().columns();
    int height = field.paper().rows();
    int[] levels = new int[LEVELS];
    for (int i = 0; i < LEVELS; i++) {
      levels[i] = Palette.glow((double) i / (LEVELS - 1)).packed();
    }
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    double half = field.typical() / gain;
    for (int row = 0; row < height; row++) {
      for (int column = 0; column < width; column++) {
        image.setRGB(column, row, levels[level(field.at(column, row), half)]);
      }
    }
    draw(image, over);
    int[] pixels = image.getRGB(0, 0, width, height, new int[width * height], 0, width);
    for (int i = 0; i < pixels.length; i++) {
      pixels[i] &= 0xFFFFFF;
    }
    return PngText.added(RasterWriter.write(pixels, width, height), over.alternative());
  }

  /** The same as it prints in true scale, where the model's unit of length is the metre. */
  public static byte[] trueScale(GlowField field, double gain, Drawing over) {
    return PngText.sized(png(field, gain, over), field.paper().pixel());
  }

  private static int level(double brightness, double half) {
    return brightness > 0 ? (int) (brightness / (brightness + half) * (LEVELS - 1) + 0.5) : 0;
  }

  private static void draw(BufferedImage image, Drawing over) {
    Graphics2D graphics = image.createGraphics();
    try {
      graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      graphics.setRenderingHint(
          RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      ShapePainter painter = new ShapePainter(over, graphics);
      for (Shape shape : over.shapes()) {
        painter.paint(shape);
      }
    } finally {
      graphics.dispose();
    }
  }
}
