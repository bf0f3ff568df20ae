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
public final class Shape {

  /** Vectors of doubles. */
  public static final VectorSpecies<Double> DOUBLES = doubles();

  /** Vectors of whole numbers, as many as doubles. */
  public static final VectorSpecies<Long> LONGS = DOUBLES.withLanes(long.class);

  /** Numbers in a vector. */
  public static final int WIDTH = DOUBLES.length();

  private Shape() {}

  private static VectorSpecies<Double> doubles() {
    int bits = Integer.getInteger(LaneProvider.WIDTH_PROPERTY, 0);
    return bits == 0
        ? DoubleVector.SPECIES_PREFERRED
        : VectorSpecies.of(double.class, VectorShape.forBitSize(bits));
  }

  /** The same number in every place. */
  public static DoubleVector all(double value) {
    return DoubleVector.broadcast(DOUBLES, value);
  }

  /** The same number in every place. */
  public static LongVector all(long value) {
    return LongVector.broadcast(LONGS, value);
  }
}
