package lodeswing.web.jobs;

/**
 * A request that names its results under a revision of the engine.
 *
 * @param <R> the request itself
 */
public interface Revised<R> {

  /** The revision. */
  int revision();

  /** The same request to today's engine. */
  R today();

  /** Where its answer is found, under its revision. */
  String url();
}
