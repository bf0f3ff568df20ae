package lodeswing.render.gif;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The colours of an animation: those that its still picture has most of, 256 at most. */
final class ColourTable {

  private static final int MOST = 256;

  /** Bits of a colour's parts that tell like colours apart while they are counted. */
  private static final int MASK = 0xF8F8F8;

  private final int[] colours;
  private final Map<Integer, Integer> nearest = new HashMap<>();

  /**
   * The colours of a picture.
   *
   * @param picture what to show
   * @param needed colours that are always among them
   */
  ColourTable(BufferedImage picture, List<Integer> needed) {
    Map<Integer, Integer> counts = new HashMap<>();
    Map<Integer, Integer> ones = new HashMap<>();
    for (int y = 0; y < picture.getHeight(); y++) {
      for (int x = 0; x < picture.getWidth(); x++) {
        int colour = picture.getRGB(x, y) & 0xFFFFFF;
        counts.merge(colour & MASK, 1, Integer::sum);
        ones.putIfAbsent(colour & MASK, colour);
      }
    }
    Set<Integer> chosen = new LinkedHashSet<>(needed);
    counts.entrySet().stream()
        .sorted(
            Map.Entry.<Integer, Integer>comparingByValue(Comparator.reverseOrder())
                .thenComparing(Map.Entry.comparingByKey()))
        .map(entry -> ones.getOrDefault(entry.getKey(), entry.getKey()))
        .forEach(
            colour -> {
              if (chosen.size() < MOST) {
                chosen.add(colour);
              }
            });
    // A table of a file has a power of two of entries; those left over are black.
    colours = Arrays.copyOf(chosen.stream().mapToInt(Integer::intValue).toArray(), MOST);
  }

  /** The table as images have it. */
  IndexColorModel model() {
    byte[][] parts = new byte[3][colours.length];
    for (int i = 0; i < colours.length; i++) {
      parts[0][i] = (byte) (colours[i] >> 16);
      parts[1][i] = (byte) (colours[i] >> 8);
      parts[2][i] = (byte) colours[i];
    }
    return new IndexColorModel(8, colours.length, parts[0], parts[1], parts[2]);
  }

  /** Place in the table of the colour that is nearest. */
  int indexOf(int colour) {
    return nearest.computeIfAbsent(colour & 0xFFFFFF, this::search);
  }

  private int search(int colour) {
    int best = 0;
    int least = Integer.MAX_VALUE;
    for (int i = 0; i < colours.length; i++) {
      int red = (colours[i] >> 16) - (colour >> 16);
      int green = ((colours[i] >> 8) & 0xFF) - ((colour >> 8) & 0xFF);
      int blue = (colours[i] & 0xFF) - (colour & 0xFF);
      int distance = 2 * red * red + 4 * green * green + 3 * blue * blue;
      if (distance < least) {
        least = distance;
        best = i;
      }
    }
    return best;
  }
}
