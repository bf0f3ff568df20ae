package lodeswing.core.integrate.simd;

import jdk.incubator.vector.DoubleVector;
import jdk.incubator.vector.LongVector;
import jdk.incubator.vector.VectorShape;
import jdk.incubator.vector.VectorSpecies;
import lodeswing.core.integrate.lane.LaneProvider;

/**
 * The width of the vectors, fixed when the class is loaded.
 *
 * <p>Species must be constants of a class for the compiler to see through them.
 */
final class Shape {

  static final VectorSpecies<Double> DOUBLES = doubles();
  static final VectorSpecies<Long> LONGS = DOUBLES.withLanes(long.class);

  /** Numbers in a vector. */
  static final int WIDTH = DOUBLES.length();

  private Shape() {}

  private static VectorSpecies<Double> doubles() {
    int bits = Integer.getInteger(LaneProvider.WIDTH_PROPERTY, 0);
    return bits == 0
        ? DoubleVector.SPECIES_PREFERRED
        : VectorSpecies.of(double.class, VectorShape.forBitSize(bits));
  }

  static DoubleVector all(double value) {
    return DoubleVector.broadcast(DOUBLES, value);
  }

  static LongVector all(long value) {
    return LongVector.broadcast(LONGS, value);
  }
}
