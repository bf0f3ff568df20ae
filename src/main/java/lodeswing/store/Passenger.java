package lodeswing.store;

import java.util.Optional;
import lodeswing.job.Computations.Urgency;

/**
 * Who wants the result of a flight.
 *
 * @param asker the flight whose work needs it; empty for a request
 * @param urgency whether somebody waits for it
 */
record Passenger(Optional<Flight> asker, Urgency urgency) {

  /** Whether a request waits for the result, so that nobody may cancel it meanwhile. */
  boolean sits() {
    return asker.isEmpty() && urgency == Urgency.WAITED_FOR;
  }
}
