package lodeswing.web.landscape;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import lodeswing.core.landscape.Landscape;

/**
 * The landscapes used last, up to a weight: the newest is always held, what was longest unused goes
 * first.
 *
 * <p>Not a cache that admits by how often a key was asked for: a full one would turn away the
 * landscape just made for a layout that nobody knew before, and have it made anew at each request.
 */
final class LatestLandscapes {

  private final long mostBytes;
  private final Map<String, CompletableFuture<Landscape>> held =
      new LinkedHashMap<>(16, 0.75f, true);
  private long bytes;

  LatestLandscapes(long mostBytes) {
    this.mostBytes = mostBytes;
  }

  /** What is held, or being made, under a key; where there is nothing, takes the key's place. */
  synchronized Optional<CompletableFuture<Landscape>> seat(
      String key, CompletableFuture<Landscape> mine) {
    CompletableFuture<Landscape> seat = held.get(key);
    if (seat == null) {
      held.put(key, mine);
    }
    return Optional.ofNullable(seat);
  }

  /** Whether a key has its landscape, or it is being made. */
  synchronized boolean holds(String key) {
    return held.containsKey(key);
  }

  /** A landscape that took its place has been made; others go where it needs their room. */
  synchronized void made(String key, Landscape landscape) {
    bytes += landscape.bytes();
    Iterator<Map.Entry<String, CompletableFuture<Landscape>>> eldest = held.entrySet().iterator();
    while (bytes > mostBytes && eldest.hasNext()) {
      Map.Entry<String, CompletableFuture<Landscape>> next = eldest.next();
      if (next.getValue().isDone() && !next.getKey().equals(key)) {
        bytes -= next.getValue().join().bytes();
        eldest.remove();
      }
    }
  }

  /** Nothing came of a place that was taken. */
  synchronized void failed(String key) {
    held.remove(key);
  }
}
