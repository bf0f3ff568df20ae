package lodeswing.core.integrate;

/**
 * A kind of event to look out for.
 *
 * @param function its roots are the events
 * @param direction which passages through zero count
 * @param terminal whether the first one ends the integration
 * @param onEvent told of each
 */
public record Event(
    EventFunction function, Direction direction, boolean terminal, Listener onEvent) {

  /** Passages through zero. */
  public enum Direction {
    /** From below zero to above. */
    RISING,
    /** From above zero to below. */
    FALLING,
    /** Both. */
    ANY;

    boolean covers(boolean rising) {
      return this == ANY || (this == RISING) == rising;
    }
  }

  /** Told of an event. */
  @FunctionalInterface
  public interface Listener {

    /**
     * The function passes zero.
     *
     * @param time of the root
     * @param state there; not to be kept or changed
     */
    void happened(double time, double[] state);
  }
}
