package lodeswing.core.integrate.lane;

import java.util.ArrayList;
import java.util.List;

/**
 * The passes of an attempt, one after the other.
 *
 * <p>A pass is one short loop over the lanes. The loop over the passes meets so many kinds of them
 * that the compiler never merges two: each is compiled by itself and stays small enough to become
 * vector code throughout.
 */
public final class Plan {

  private final List<Runnable> passes = new ArrayList<>();

  /** Adds a pass at the end. */
  public void add(Runnable pass) {
    passes.add(pass);
  }

  /** All passes in their order; a copy. */
  Runnable[] passes() {
    return passes.toArray(new Runnable[0]);
  }
}
