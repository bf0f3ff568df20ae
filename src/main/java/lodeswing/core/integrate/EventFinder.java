package lodeswing.core.integrate;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Finds events as roots on the dense output, in the order of time, and hands the steps on.
 *
 * <p>Each step is looked over at inner points of its free quintic; where a function changes sign
 * there, or comes so near zero that it might, the roots are bracketed and found on the dense output
 * itself (Brent's method, from Commons Math, to 1e-13 of the step). A value of exactly zero at the
 * start of the integration is no event. After a terminal event the integration ends; the time and
 * state of it are those told to the event's listener, and the observer still sees the whole step.
 *
 * <p>One integration at a time: it remembers.
 */
public final class EventFinder implements StepObserver {

  private static final int PIECES = 8;
  private static final double NEAR = 0.05;
  private static final double TIME_PART = 1e-13;

  private final List<Event> events;
  private final StepObserver next;
  private final double[] state = new double[4];
  private final double[] values = new double[PIECES + 1];
  private final double[] times = new double[PIECES + 1];
  private final List<Found> found = new ArrayList<>();
  private double endedAt = Double.NaN;

  /**
   * A finder for some events.
   *
   * @param events looked out for, each on its own
   * @param next sees each step after its events were told
   */
  public EventFinder(List<Event> events, StepObserver next) {
    this.events = List.copyOf(events);
    this.next = next;
  }

  private record Found(Event event, double time) {}

  /** Time of the terminal event that ended the integration; NaN if none did. */
  public double endedAt() {
    return endedAt;
  }

  @Override
  public boolean accept(Step step) {
    found.clear();
    for (Event event : events) {
      look(event, step);
    }
    found.sort((a, b) -> Double.compare(a.time(), b.time()));
    boolean on = tell(step);
    return next.accept(step) && on;
  }

  private boolean tell(Step step) {
    for (Found one : found) {
      step.at(one.time(), state);
      one.event().onEvent().happened(one.time(), state);
      if (one.event().terminal()) {
        endedAt = one.time();
        return false;
      }
    }
    return true;
  }

  /** Looks over a step cheaply, and closely where something may be. */
  private void look(Event event, Step step) {
    sample(event, step, false);
    if (suspicious()) {
      sample(event, step, true);
      for (int i = 0; i < PIECES; i++) {
        piece(event, step, i);
      }
    }
  }

  private void sample(Event event, Step step, boolean exactly) {
    double length = step.endTime() - step.startTime();
    for (int i = 0; i <= PIECES; i++) {
      times[i] = i == PIECES ? step.endTime() : step.startTime() + i * length / PIECES;
      if (i == 0) {
        step.startState(state);
      } else if (i == PIECES) {
        step.endState(state);
      } else if (exactly) {
        step.at(times[i], state);
      } else {
        step.glimpse(times[i], state);
      }
      values[i] = event.function().value(times[i], state);
    }
  }

  /** Whether the samples change sign, or come near zero measured by how much they change. */
  private boolean suspicious() {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= PIECES; i++) {
      least = Math.min(least, values[i]);
      most = Math.max(most, values[i]);
      nearest = Math.min(nearest, Math.abs(values[i]));
    }
    return (least <= 0 && most >= 0) || nearest < NEAR * (most - least);
  }

  /** Roots in one piece: a change of sign, or a dip to the other side between two samples. */
  private void piece(Event event, Step step, int i) {
    if (values[i] != 0 && changesSign(values[i], values[i + 1])) {
      root(event, step, times[i], times[i + 1], values[i + 1] > values[i]);
    } else if (mayDip(i)) {
      double side = Math.signum(values[i]);
      double turn = turningTime(event, step, side, i);
      step.at(turn, state);
      double there = event.function().value(turn, state);
      if (there * side < 0) {
        root(event, step, times[i], turn, side < 0);
        root(event, step, turn, times[i + 1], side > 0);
      }
    }
  }

  /** A root exactly at a piece's end belongs to this piece, one at its start to the one before. */
  private static boolean changesSign(double from, double to) {
    return from > 0 ? to <= 0 : to >= 0;
  }

  /** Whether |value| seems to have a minimum inside the piece, by its neighbours' slopes. */
  private boolean mayDip(int i) {
    double side = Math.signum(values[i]);
    if (side == 0) {
      return false;
    }
    boolean fallsIn = i == 0 || (values[i] - values[i - 1]) * side < 0;
    boolean risesOut = i + 1 == PIECES || (values[i + 2] - values[i + 1]) * side > 0;
    return fallsIn && risesOut;
  }

  /** Time where side * value is least in a piece, by golden sections. */
  private double turningTime(Event event, Step step, double side, int i) {
    double low = times[i];
    double high = times[i + 1];
    for (int n = 0; n < 40; n++) {
      double a = high - GOLDEN * (high - low);
      double b = low + GOLDEN * (high - low);
      step.at(a, state);
      double va = side * event.function().value(a, state);
      step.at(b, state);
      double vb = side * event.function().value(b, state);
      if (va < 0 || vb < 0) {
        return va < vb ? a : b;
      }
      if (va < vb) {
        high = b;
      } else {
        low = a;
      }
    }
    return 0.5 * (low + high);
  }

  private void root(Event event, Step step, double from, double to, boolean rising) {
    if (!event.direction().covers(rising)) {
      return;
    }
    double a = valueAt(event, step, from);
    double b = valueAt(event, step, to);
    double time;
    if (a * b < 0) {
      double accuracy = Math.max(TIME_PART * (to - from), 4 * Math.ulp(to));
      time =
          new BracketingNthOrderBrentSolver(0, accuracy, 0, 5)
              .solve(200, t -> valueAt(event, step, t), from, to);
    } else {
      time = Math.abs(a) < Math.abs(b) ? from : to;
    }
    found.add(new Found(event, time));
  }

  private double valueAt(Event event, Step step, double time) {
    step.at(time, state);
    return event.function().value(time, state);
  }

  private static final double GOLDEN = 0.6180339887498949;
}
