package lodeswing.job;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A piece of work with the name of its result.
 *
 * @param key names the result
 * @param kind the resource it belongs to, such as {@code trace}
 * @param resultUrl where the result can be fetched once it is there
 * @param recipe in words without blanks how to make the work again from what is stored, the kind
 *     first; nothing where no other process can make it
 * @param releases what the work costs, about, in releases
 * @param work computes the body
 */
public record Computation(
    ComputationKey key,
    String kind,
    String resultUrl,
    Optional<List<String>> recipe,
    long releases,
    Work work) {

  /** Work that only this process can do. */
  public Computation(ComputationKey key, String kind, String resultUrl, Work work) {
    this(key, kind, resultUrl, Optional.empty(), 1, work);
  }

  /**
   * The same work, which another process can make again.
   *
   * @param words what {@link Recipe#remake()} needs, stored already
   */
  public Computation remadeFrom(String... words) {
    List<String> recipe = Stream.concat(Stream.of(kind), Stream.of(words)).toList();
    return new Computation(key, kind, resultUrl, Optional.of(recipe), releases, work);
  }

  /** Computes a body; the same key must always give the same bytes. */
  @FunctionalInterface
  public interface Work {

    /**
     * Computes the body.
     *
     * @param progress to be told how far the work has come
     * @return the body, handed over
     */
    byte[] compute(Progress progress);
  }

  /** Hears how far a piece of work has come. */
  @FunctionalInterface
  public interface Progress {

    /**
     * Tells how far the work has come; to be called several times a second, from any thread.
     *
     * @param fraction done so far, 0 to 1
     * @throws JobCancelledException where the work is not wanted any more, to be passed on
     */
    void report(double fraction);
  }

  /** The same result by other means. */
  public Computation done(Work otherwise) {
    return new Computation(key, kind, resultUrl, recipe, releases, otherwise);
  }

  /** The same work, which costs about so many releases. */
  public Computation costing(long count) {
    return new Computation(key, kind, resultUrl, recipe, count, work);
  }

  /** The same work, telling another hearer too how far it has come. */
  public Computation alsoTelling(Progress other) {
    Work both =
        progress ->
            work.compute(
                fraction -> {
                  progress.report(fraction);
                  other.report(fraction);
                });
    return new Computation(key, kind, resultUrl, recipe, releases, both);
  }

  /** The id under which this work can be watched; the same key always has the same one. */
  public String jobId() {
    return "job-" + ComputationKey.digest(key.id()) + Realm.endingOf(key.id());
  }
}
