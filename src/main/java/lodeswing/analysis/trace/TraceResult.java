package lodeswing.analysis.trace;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import lodeswing.core.geometry.PathCurve;

/**
 * A path and what is known of it.
 *
 * @param samples the path on the uniform grid, as far as the model holds
 * @param curve the same path as a curve for pictures, which no interval of samples changes
 * @param events what happened, in order of time
 * @param restPoint index of the rest point where the bob ends; empty where none was decided
 * @param sure whether the outcome is sealed and the same at a tenfold tighter tolerance
 * @param sealedAt from when the outcome was certain
 * @param settledAt when the bob had settled, sticking included
 * @param trustedUntil until when the computed path is right to the stated distance; empty where
 *     that horizon was not reached
 * @param foretoldUntil until when the path can be foretold for the hand's spread; empty where that
 *     horizon was not reached
 * @param followedUntil how long the bob was followed, past the samples
 * @param evaluations evaluations of the force that the path cost
 */
public record TraceResult(
    Samples samples,
    PathCurve curve,
    List<TraceEvent> events,
    OptionalInt restPoint,
    boolean sure,
    OptionalDouble sealedAt,
    OptionalDouble settledAt,
    OptionalDouble trustedUntil,
    OptionalDouble foretoldUntil,
    double followedUntil,
    long evaluations) {

  public TraceResult {
    events = List.copyOf(events);
  }

  /** The event that ended the model, where one did. */
  public Optional<TraceEvent> ending() {
    return events.stream().filter(event -> event.kind().endsModel()).findFirst();
  }
}
