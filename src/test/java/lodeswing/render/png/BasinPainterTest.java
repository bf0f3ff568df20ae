package lodeswing.render.png;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import javax.imageio.ImageIO;
import lodeswing.analysis.basin.BasinMap;
import lodeswing.core.window.BasinWindow;
import lodeswing.core.window.PixelGrid;
import lodeswing.figure.Pattern;
import lodeswing.render.Palette;
import lodeswing.render.Rgb;
import org.junit.jupiter.api.Test;

/** Maps as pictures, read back by the JDK's own reader. */
class BasinPainterTest {

  private static final BasinWindow WINDOW = new BasinWindow(0, 0, 1);

  private static int[] read(byte[] png) throws IOException {
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
    int[] pixels =
        image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    return Arrays.stream(pixels).map(p -> p & 0xFFFFFF).toArray();
  }

  private static BasinMap uniform(int side, int restPoints, int index) {
    short[] indices = new short[side * side];
    float[] times = new float[side * side];
    Arrays.fill(indices, (short) index);
    Arrays.fill(times, 3);
    return new BasinMap(side, side, restPoints, indices, times);
  }

  @Test
  void picturesOfFewAndOfManyColoursReadBackAsTheyWere() throws IOException {
    Random random = new Random(5);
    for (int colours : new int[] {1, 2, 256, 257, 5_000}) {
      int[] table = random.ints(colours, 0, 1 << 24).toArray();
      int[] pixels = new int[97 * 61];
      for (int i = 0; i < pixels.length; i++) {
        pixels[i] = table[i < colours ? i : random.nextInt(colours)];
      }
      assertArrayEquals(pixels, read(RasterWriter.write(pixels, 97, 61)));
    }
  }

  @Test
  void laterIsDarkerStepByStep() throws IOException {
    int side = 32;
    for (int index = 0; index < 12; index++) {
      short[] indices = new short[side];
      float[] times = new float[side];
      Arrays.fill(indices, (short) index);
      for (int i = 0; i < side; i++) {
        times[i] = i * 0.5f;
      }
      BasinMap map = new BasinMap(side, 1, 12, indices, times);
      PixelGrid grid = PixelGrid.whole(WINDOW, side, 1);
      int[] pixels = read(new BasinPainter(map, 4, false).png(grid));
      for (int i = 1; i < side; i++) {
        assertTrue(Rgb.of(pixels[i]).luminance() <= Rgb.of(pixels[i - 1]).luminance());
      }
      assertTrue(Rgb.of(pixels[0]).contrast(Rgb.of(pixels[side - 1])) > 1.2);
    }
  }

  @Test
  void patternsRunOnAcrossTheSeamsOfTiles() throws IOException {
    for (int index = 0; index < 12; index++) {
      BasinMap tile = uniform(40, 12, index);
      PixelGrid whole = PixelGrid.whole(WINDOW, 80, 80);
      int[] one = read(new BasinPainter(uniform(80, 12, index), 4, true).png(whole));
      for (int t = 0; t < 4; t++) {
        PixelGrid grid = PixelGrid.tile(WINDOW, 1, t % 2, t / 2, 40);
        int[] part = read(new BasinPainter(tile, 4, true).png(grid));
        for (int i = 0; i < part.length; i++) {
          int column = 40 * (t % 2) + i % 40;
          int row = 40 * (t / 2) + i / 40;
          assertEquals(one[80 * row + column], part[i]);
        }
      }
    }
  }

  @Test
  void everyPatternRepeatsAfterItsPeriodAndDiffersFromTheOthers() {
    Set<String> seen = new HashSet<>();
    for (Pattern pattern : Pattern.values()) {
      var cells = new StringBuilder();
      int inked = 0;
      for (int y = 0; y < Pattern.PERIOD; y++) {
        for (int x = 0; x < Pattern.PERIOD; x++) {
          boolean ink = pattern.inked(x, y);
          assertEquals(ink, pattern.inked(x - Pattern.PERIOD, y + Pattern.PERIOD));
          cells.append(ink);
          inked += ink ? 1 : 0;
        }
      }
      assertTrue(seen.add(cells.toString()), pattern.word());
      assertTrue(pattern == Pattern.PLAIN || (inked > 25 && inked < 100), pattern + " " + inked);
    }
  }

  @Test
  void withoutPatternsOnlyEndsThatShareAColourAreHatched() throws IOException {
    PixelGrid grid = PixelGrid.whole(WINDOW, 48, 48);
    assertEquals(1, colours(new BasinPainter(uniform(48, 20, 3), 4, false).png(grid)));
    assertEquals(2, colours(new BasinPainter(uniform(48, 20, 3), 4, true).png(grid)));
    assertEquals(2, colours(new BasinPainter(uniform(48, 20, 15), 4, false).png(grid)));
    assertNotEquals(Palette.pattern(15), Palette.pattern(3));
  }

  @Test
  void specialEndsAreGrey() throws IOException {
    PixelGrid grid = PixelGrid.whole(WINDOW, 32, 32);
    for (int special = 0; special < 7; special++) {
      for (int pixel : read(new BasinPainter(uniform(32, 3, 3 + special), 4, false).png(grid))) {
        Rgb colour = Rgb.of(pixel);
        assertTrue(Math.abs(colour.red() - colour.blue()) <= 2, colour.hex());
        assertTrue(Math.abs(colour.red() - colour.green()) <= 2, colour.hex());
      }
    }
  }

  private static long colours(byte[] png) throws IOException {
    return Arrays.stream(read(png)).distinct().count();
  }
}
