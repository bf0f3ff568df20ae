package lodeswing.core.integrate.lane;

import java.lang.management.CompilationMXBean;
import java.lang.management.ManagementFactory;
import java.lang.reflect.Constructor;
import java.util.List;
import java.util.Optional;

/**
 * Chooses what lanes compute with, once, and says why.
 *
 * <p>Vectors are used where the module {@code jdk.incubator.vector} is in the boot layer, the
 * second compiler is at work (without it vector code is far slower than scalar code), and the
 * machine has vectors of at least four doubles: with two, masks are not compiled to registers, and
 * a release took 22 microseconds against 16 of single numbers (21 on Java 25). The class is loaded
 * by name, so that nothing here depends on the module. Immutable, safe for several threads.
 */
public final class LaneProvider {

  /** System property that forbids vectors by the value {@code scalar}. */
  public static final String PROPERTY = "lodeswing.lanes";

  /** System property that asks for a width: 128, 256 or 512 bits; the machine's own if left out. */
  public static final String WIDTH_PROPERTY = "lodeswing.lane-bits";

  private static final String MODULE = "jdk.incubator.vector";
  private static final String VECTORS = "lodeswing.core.integrate.simd.VectorLanes";
  private static final int LEAST_BITS = 256;

  private final Optional<Constructor<?>> vectors;
  private final String reason;
  private final int bits;

  private LaneProvider(Optional<Constructor<?>> vectors, String reason, int bits) {
    this.vectors = vectors;
    this.reason = reason;
    this.bits = bits;
  }

  /** The best way of this process. */
  public static LaneProvider choose() {
    Optional<String> obstacle = obstacle();
    if (obstacle.isPresent()) {
      return scalar(obstacle.get());
    }
    try {
      Class<?> type = Class.forName(VECTORS);
      int bits = (int) type.getMethod("bits").invoke(null);
      if (bits < LEAST_BITS && Integer.getInteger(WIDTH_PROPERTY) == null) {
        return scalar("vectors of " + bits + " bits are slower than single numbers");
      }
      return new LaneProvider(
          Optional.of(type.getConstructor(int.class)),
          "the vector module is there, with vectors of " + bits + " bits",
          bits);
    } catch (ReflectiveOperationException | LinkageError e) {
      return scalar("the vector code cannot be loaded: " + e);
    }
  }

  /** Lanes one after the other, for a stated reason. */
  public static LaneProvider scalar(String reason) {
    return new LaneProvider(Optional.empty(), reason, Double.SIZE);
  }

  private static Optional<String> obstacle() {
    if ("scalar".equals(System.getProperty(PROPERTY))) {
      return Optional.of("the system property " + PROPERTY + " says so");
    }
    if (ModuleLayer.boot().findModule(MODULE).isEmpty()) {
      return Optional.of("the module " + MODULE + " is not in use: start with --add-modules");
    }
    return compilerObstacle();
  }

  private static Optional<String> compilerObstacle() {
    CompilationMXBean compiler = ManagementFactory.getCompilationMXBean();
    if (compiler == null) {
      return Optional.of("the process only interprets");
    }
    List<String> arguments = ManagementFactory.getRuntimeMXBean().getInputArguments();
    for (String argument : arguments) {
      if (argument.startsWith("-XX:TieredStopAtLevel=") && !argument.endsWith("=4")) {
        return Optional.of("the second compiler is off");
      }
      if (argument.equals("-XX:+UseJVMCICompiler")) {
        return Optional.of("another compiler is in use");
      }
    }
    return Optional.empty();
  }

  /** Whether lanes are computed on vectors. */
  public boolean onVectors() {
    return vectors.isPresent();
  }

  /** Width of what lanes are computed with [bit]: 64 for one number at a time. */
  public int bits() {
    return bits;
  }

  /** Why, in words. */
  public String reason() {
    return reason;
  }

  /**
   * A new object of the vector code; nothing where lanes are single numbers.
   *
   * @param type what it does
   * @param implementation its class, by name, so that the caller does not depend on the module
   */
  public <T> Optional<T> onVectors(Class<T> type, String implementation) {
    if (vectors.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(type.cast(Class.forName(implementation).getConstructor().newInstance()));
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("vector lanes were there at start", e);
    }
  }

  /**
   * Arithmetic on a new block.
   *
   * @param slots numbers in the block
   */
  public LaneArithmetic arithmetic(int slots) {
    if (vectors.isEmpty()) {
      return new ScalarLanes(slots);
    }
    try {
      return (LaneArithmetic) vectors.get().newInstance(slots);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("vector lanes were there at start", e);
    }
  }
}
