package lodeswing.core.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.core.integrate.Event;
import lodeswing.core.integrate.EventFunction;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;

/**
 * Looks out for what ends a path: a limit of its model, or friction that holds the bob. Keeps the
 * first that did, and the state there. Changes with its path; for one thread.
 */
public final class Endings {

  private final Motion motion;
  private final double[] last = new double[4];
  private Optional<PathEnd> end = Optional.empty();

  /**
   * The endings of a path.
   *
   * @param motion what moves
   * @param start its state at the release
   */
  public Endings(Motion motion, double[] start) {
    this.motion = motion;
    System.arraycopy(start, 0, last, 0, 4);
    if (motion.slideMargin(start) <= 0) {
      end = Optional.of(new PathEnd(0, Optional.empty()));
    }
  }

  /** The events that end the path, for the finder that sees its steps. */
  public List<Event> events() {
    List<Event> events = new ArrayList<>();
    for (Limit limit : motion.limits()) {
      events.add(event((time, state) -> limit.margin(state), Optional.of(limit.kind())));
    }
    events.add(event((time, state) -> motion.slideMargin(state), Optional.empty()));
    return events;
  }

  private Event event(EventFunction margin, Optional<Limit.Kind> limit) {
    return new Event(
        margin,
        Event.Direction.FALLING,
        true,
        (time, state) -> {
          end = Optional.of(new PathEnd(time, limit));
          System.arraycopy(state, 0, last, 0, 4);
        });
  }

  /** What ended it, where anything has. */
  public Optional<PathEnd> end() {
    return end;
  }

  /** Whether the bob is held by friction, so that it stays where it is. */
  public boolean held() {
    return end.isPresent() && end.get().limit().isEmpty();
  }

  /** The time up to which a step belongs to the path. */
  public double until(double stepEnd) {
    return end.isPresent() ? Math.min(stepEnd, end.get().time()) : stepEnd;
  }

  /** The state at the end; not a copy. */
  public double[] state() {
    return last;
  }
}
