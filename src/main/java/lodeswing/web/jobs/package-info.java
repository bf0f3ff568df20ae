/**
 * Answers from computations: ready, pending or too much, and the jobs behind the pending ones.
 *
 * <p>It may import {@code job}, {@code web.limits}, {@code web.representation}, {@code
 * web.problem}.
 */
@NullMarked
package lodeswing.web.jobs;

import org.jspecify.annotations.NullMarked;
