package lodeswing.web.basin;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import lodeswing.analysis.basin.BasinMap;
import lodeswing.core.window.PixelGrid;

/**
 * The binary form of a map, which is also the form it is stored in; all numbers little-endian.
 *
 * <pre>
 *  0  4 bytes   "LSWM"
 *  4  uint16    version, 1
 *  6  uint16    length of this header, 64
 *  8  uint32    columns
 * 12  uint32    rows
 * 16  uint16    rest points; indices from here on are special ends
 * 18  uint16    bytes of an index, 2
 * 20  uint32    1 where settling times follow, else 0
 * 24  float64   x of the left edge
 * 32  float64   y of the upper edge
 * 40  float64   side of a pixel
 * 48  float64   time at which shading is halfway
 * 56  float64   time of one unit of the sealing times, 1
 * 64  uint16    index of each pixel's end, row by row from the top
 *     float32   sealing time of each pixel, NaN where the end was never certain
 *     float32   settling time of each pixel where byte 20 says so, NaN where the bob never settled
 * </pre>
 *
 * Lengths are in the layout's unit, times in its unit of time.
 */
final class MapFile {

  private static final byte[] MAGIC = {'L', 'S', 'W', 'M'};
  private static final short VERSION = 1;
  private static final int HEADER = 64;
  private static final int BYTES_PER_PIXEL = 6;

  private MapFile() {}

  static byte[] written(BasinMap map, PixelGrid grid, double perUnit, double halfTime) {
    int count = map.width() * map.height();
    int perPixel = BYTES_PER_PIXEL + (map.settles() ? Float.BYTES : 0);
    ByteBuffer out = ByteBuffer.allocate(HEADER + perPixel * count).order(ByteOrder.LITTLE_ENDIAN);
    out.put(MAGIC).putShort(VERSION).putShort((short) HEADER);
    out.putInt(map.width()).putInt(map.height());
    out.putShort((short) map.restPoints()).putShort((short) 2).putInt(map.settles() ? 1 : 0);
    out.putDouble((grid.left() + grid.firstColumn() * grid.pixel()) * perUnit);
    out.putDouble((grid.top() - grid.firstRow() * grid.pixel()) * perUnit);
    out.putDouble(grid.pixel() * perUnit).putDouble(halfTime).putDouble(1);
    for (int row = 0; row < map.height(); row++) {
      for (int column = 0; column < map.width(); column++) {
        out.putShort((short) map.index(column, row));
      }
    }
    for (int row = 0; row < map.height(); row++) {
      for (int column = 0; column < map.width(); column++) {
        out.putFloat(map.sealedAt(column, row));
      }
    }
    for (int row = 0; map.settles() && row < map.height(); row++) {
      for (int column = 0; column < map.width(); column++) {
        out.putFloat(map.settledAt(column, row));
      }
    }
    return out.array();
  }

  /** The map in a file that {@link #written} made. */
  static BasinMap read(byte[] file) {
    ByteBuffer in = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    int width = in.getInt(8);
    int height = in.getInt(12);
    short[] index = new short[width * height];
    float[] sealedAt = new float[index.length];
    in.position(HEADER);
    in.asShortBuffer().get(index);
    in.position(HEADER + 2 * index.length);
    in.asFloatBuffer().get(sealedAt);
    BasinMap map = new BasinMap(width, height, in.getShort(16) & 0xffff, index, sealedAt);
    if (in.getInt(20) == 0) {
      return map;
    }
    float[] settledAt = new float[index.length];
    in.position(HEADER + BYTES_PER_PIXEL * index.length);
    in.asFloatBuffer().get(settledAt);
    return map.settling(settledAt);
  }

  /** The time at which shading is halfway. */
  static double halfTime(byte[] file) {
    return ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN).getDouble(48);
  }
}
