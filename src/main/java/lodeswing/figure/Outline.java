package lodeswing.figure;

/** Plan outline of a plate or a magnet, about its own centre; sizes in model units. */
public sealed interface Outline {

  /** Radius of the smallest circle about the centre that holds it; 0 for a point. */
  double reach();

  /** A full circle. */
  record Round(double radius) implements Outline {
    /**
     * @throws IllegalArgumentException where the radius is not positive
     */
    public Round {
      requirePositive(radius);
    }

    @Override
    public double reach() {
      return radius;
    }
  }

  /** A circle with a hole. */
  record Annulus(double inner, double outer) implements Outline {
    /**
     * @throws IllegalArgumentException where a radius is not positive or the hole not smaller
     */
    public Annulus {
      requirePositive(inner);
      requirePositive(outer - inner);
    }

    @Override
    public double reach() {
      return outer;
    }
  }

  /** A rectangle, its first side turned by an angle [rad] anticlockwise from the x axis. */
  record Oblong(double width, double height, double turn) implements Outline {
    /**
     * @throws IllegalArgumentException where a side is not positive or the turn not finite
     */
    public Oblong {
      requirePositive(width);
      requirePositive(height);
      if (!Double.isFinite(turn)) {
        throw new IllegalArgumentException("A turn is finite.");
      }
    }

    @Override
    public double reach() {
      return Math.hypot(width, height) / 2;
    }
  }

  /** No extent. */
  record Spot() implements Outline {
    @Override
    public double reach() {
      return 0;
    }
  }

  private static void requirePositive(double size) {
    if (!(size > 0) || Double.isInfinite(size)) {
      throw new IllegalArgumentException("A size is positive and finite.");
    }
  }
}
