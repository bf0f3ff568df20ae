package lodeswing.store;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import lodeswing.job.StoredResult;
import org.jspecify.annotations.Nullable;

/**
 * The result of a flight, which leads to the flight as long as it has not ended.
 *
 * <p>Whoever finds the future finds the flight with it: no moment and no other cache lies between.
 */
final class Landing extends CompletableFuture<StoredResult> {

  private volatile @Nullable Flight flight;

  Landing(Flight flight) {
    this.flight = flight;
  }

  /**
   * The flight; empty once it has ended, so that a held result holds nothing else. Where it is
   * empty the future is complete.
   */
  Optional<Flight> flight() {
    return Optional.ofNullable(flight);
  }

  @Override
  public boolean complete(StoredResult result) {
    boolean first = super.complete(result);
    flight = null;
    return first;
  }

  @Override
  public boolean completeExceptionally(Throwable failure) {
    boolean first = super.completeExceptionally(failure);
    flight = null;
    return first;
  }
}
