package lodeswing.web.basin;

import java.util.List;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/**
 * Which tile of a map.
 *
 * @param zoom 0 shows the window in one tile
 * @param x tiles to the left of it
 * @param y tiles above it
 */
record TilePlace(int zoom, long x, long y) {

  /** Beyond any map's deepest zoom, so that counts of tiles stay whole numbers. */
  private static final int MOST_ZOOM = 60;

  private static final String WHOLE_NUMBER = "\\d{1,18}";

  /**
   * Reads a place as it stands in an address.
   *
   * @throws ProblemException {@code not-found} where no map can have such a tile
   */
  static TilePlace read(String zoom, String x, String y) {
    if (!zoom.matches("\\d{1,2}") || Integer.parseInt(zoom) > MOST_ZOOM) {
      throw nowhere("A zoom is a whole number from 0 to the map's zoom.max.");
    }
    int z = Integer.parseInt(zoom);
    long most = (1L << z) - 1;
    if (!x.matches(WHOLE_NUMBER)
        || !y.matches(WHOLE_NUMBER)
        || Long.parseLong(x) > most
        || Long.parseLong(y) > most) {
      throw nowhere("At zoom " + z + " tiles are counted from 0 to " + most + ".");
    }
    return new TilePlace(z, Long.parseLong(x), Long.parseLong(y));
  }

  /** The tile that shows this one's mirror image in a window about the mirrors. */
  TilePlace mirrored(boolean acrossX, boolean acrossY) {
    long last = (1L << zoom) - 1;
    return new TilePlace(zoom, acrossX ? last - x : x, acrossY ? last - y : y);
  }

  /** Whether it lies in the left half of the window, the middle one of zoom 0 apart. */
  boolean left() {
    return zoom > 0 && x < 1L << (zoom - 1);
  }

  /** Whether it lies in the lower half of the window, the middle one of zoom 0 apart. */
  boolean lower() {
    return zoom > 0 && y >= 1L << (zoom - 1);
  }

  static ProblemException nowhere(String detail) {
    return new ProblemException(ProblemCode.NOT_FOUND, detail, List.of());
  }

  /** As it stands in an address. */
  String path() {
    return zoom + "/" + x + "/" + y;
  }
}
