package lodeswing.store;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.concurrent.atomic.LongAdder;
import java.util.regex.Pattern;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Counts the damaged rows that were met, each once until it is replaced, and logs each once. */
public final class DamagedResults {

  private static final Logger LOG = LoggerFactory.getLogger(DamagedResults.class);
  private static final int KNOWN = 10_000;

  /** A kind is damaged like everything else of its row; the log is not to be written by it. */
  private static final Pattern KIND = Pattern.compile("[a-z-]{1,40}");

  private final Cache<String, Boolean> met = Caffeine.newBuilder().maximumSize(KNOWN).build();
  private final LongAdder count = new LongAdder();

  /** How many were met since the start. */
  public long count() {
    return count.sum();
  }

  /**
   * Notes that a row is damaged.
   *
   * @param id the id it was asked for by
   * @param kind as it was read; empty where it could not be
   */
  void meet(String id, String kind) {
    if (met.asMap().putIfAbsent(id, true) == null) {
      count.increment();
      String known = KIND.matcher(kind).matches() ? kind : "result of unreadable kind";
      LOG.warn("The stored {} {} is damaged and is not used", known, id);
    }
  }

  /** Notes that a row was written anew, so that further damage of it is told again. */
  void replaced(String id) {
    met.invalidate(id);
  }
}
