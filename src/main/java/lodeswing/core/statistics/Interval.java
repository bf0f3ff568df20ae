package lodeswing.core.statistics;

/**
 * A closed interval of plain numbers.
 *
 * @param low its lower end
 * @param high its upper end, no less than {@code low}
 */
public record Interval(double low, double high) {

  public Interval {
    if (!(low <= high)) {
      throw new IllegalArgumentException("no interval from " + low + " to " + high);
    }
  }

  /** Whether a number lies in it, ends included. */
  public boolean contains(double number) {
    return low <= number && number <= high;
  }

  /** Its length. */
  public double width() {
    return high - low;
  }

  /** The smallest interval that holds this one and another. */
  Interval hull(Interval other) {
    return new Interval(Math.min(low, other.low), Math.max(high, other.high));
  }

  /** The part of it between two numbers; an end beyond them moves to the nearer one. */
  Interval clamped(double least, double most) {
    return new Interval(
        Math.min(Math.max(low, least), most), Math.max(Math.min(high, most), least));
  }
}
