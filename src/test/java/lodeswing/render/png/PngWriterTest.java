package lodeswing.render.png;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import lodeswing.figure.Drawing;
import lodeswing.figure.PathFigure;
import lodeswing.figure.PictureScenes;
import lodeswing.figure.Shape;
import lodeswing.figure.Tint;
import lodeswing.render.Palette;
import org.junit.jupiter.api.Test;

class PngWriterTest {
  private final Drawing drawing =
      PathFigure.draw(PictureScenes.threeStations("Tide", "</text>", "Риф"));

  @Test
  void pictureHasTheWantedWidthAndTheDrawingsShape() throws Exception {
    for (int width : new int[] {64, 800, 1201}) {
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(PngWriter.write(drawing, width)));
      assertEquals(width, image.getWidth());
      assertEquals(drawing.nominalHeight() * width / 800, image.getHeight(), 0.5);
    }
  }

  @Test
  void pathIsPaintedWhereTheDrawingHasIt() throws Exception {
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(PngWriter.write(drawing, 1600)));
    Shape.Group path = group("path");
    int hits = 0;
    int tried = 0;
    for (Shape shape : path.shapes()) {
      Shape.Curve line = (Shape.Curve) shape;
      if (line.stroke().width() < 2) {
        continue;
      }
      for (int k = 0; k + 3 < line.controls().count(); k += 3) {
        for (double s = 0.1; s < 1; s += 0.2) {
          int x = (int) (2 * drawing.pixelX(bezier(line.controls()::x, k, s)));
          int y = (int) (2 * drawing.pixelY(bezier(line.controls()::y, k, s)));
          int wanted = Palette.colour(line.stroke().tint()).packed();
          tried++;
          hits += near(image.getRGB(x, y) & 0xFFFFFF, wanted) ? 1 : 0;
        }
      }
    }
    // The rest lies below later parts, marks and labels.
    assertTrue(tried > 100 && hits > 0.8 * tried, hits + " of " + tried);
    assertEquals(Palette.colour(Tint.Role.PAPER).packed(), image.getRGB(1, 1) & 0xFFFFFF);
  }

  private static double bezier(IntToDoubleFunction p, int k, double s) {
    double r = 1 - s;
    return r * r * (r * p.applyAsDouble(k) + 3 * s * p.applyAsDouble(k + 1))
        + s * s * (3 * r * p.applyAsDouble(k + 2) + s * p.applyAsDouble(k + 3));
  }

  @Test
  void manyColoursArePresentSoThePictureIsNotBlank() throws Exception {
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(PngWriter.write(drawing, 800)));
    Set<Integer> colours = new HashSet<>();
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        colours.add(image.getRGB(x, y));
      }
    }
    assertTrue(colours.size() > 500);
  }

  @Test
  void theSameDrawingGivesTheSameBytes() {
    assertArrayEquals(PngWriter.write(drawing, 640), PngWriter.write(drawing, 640));
  }

  @Test
  void alternativeTextIsInsideAndNoTime() {
    Map<String, String> chunks = chunks(PngWriter.write(drawing, 100));
    assertTrue(chunks.getOrDefault("iTXt Title", "").endsWith("Which station first?"));
    assertTrue(
        chunks.getOrDefault("iTXt Description", "").endsWith(drawing.alternative().description()));
    assertTrue(!chunks.containsKey("tIME"));
  }

  @Test
  void sizesOutsideTheLimitsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> PngWriter.write(drawing, 63));
    assertThrows(IllegalArgumentException.class, () -> PngWriter.write(drawing, 4097));
  }

  private Shape.Group group(String role) {
    return drawing.shapes().stream()
        .filter(Shape.Group.class::isInstance)
        .map(Shape.Group.class::cast)
        .filter(group -> group.role().equals(role))
        .findFirst()
        .orElseThrow();
  }

  private static boolean near(int one, int two) {
    int red = Math.abs((one >> 16) - (two >> 16));
    int green = Math.abs(((one >> 8) & 0xFF) - ((two >> 8) & 0xFF));
    int blue = Math.abs((one & 0xFF) - (two & 0xFF));
    return red + green + blue < 60;
  }

  private static Map<String, String> chunks(byte[] png) {
    Map<String, String> chunks = new LinkedHashMap<>();
    ByteBuffer bytes = ByteBuffer.wrap(png);
    bytes.position(8);
    while (bytes.hasRemaining()) {
      byte[] body = new byte[bytes.getInt() + 4];
      bytes.get(body);
      CRC32 sum = new CRC32();
      sum.update(body);
      assertEquals((int) sum.getValue(), bytes.getInt());
      String type = new String(body, 0, 4, StandardCharsets.US_ASCII);
      String data = new String(body, 4, body.length - 4, StandardCharsets.UTF_8);
      String name = type.equals("iTXt") ? type + " " + data.substring(0, data.indexOf('\0')) : type;
      chunks.put(name, data);
    }
    return chunks;
  }
}
