package lodeswing.job;

import java.util.Optional;

/** What a computation was answered with: the result, or the job that will bring it. */
public sealed interface Answer {

  /**
   * The result.
   *
   * @param result the result
   * @param source where it came from
   */
  record Ready(StoredResult result, Source source) implements Answer {}

  /**
   * The result is still being computed.
   *
   * @param job the work as it stands
   * @param ask names this asking, so that it can be withdrawn; nothing where none is counted
   */
  record Pending(Job job, Optional<String> ask) implements Answer {}

  /** Where a result came from. */
  enum Source {
    /** It was in memory. */
    MEMORY,
    /** It was in the database. */
    STORE,
    /** It was computed for this caller. */
    COMPUTED,
    /** It was being computed for another caller already. */
    JOINED
  }
}
