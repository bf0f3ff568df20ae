/**
 * The resource tunings: which moves of the magnets bring the odds nearest to wanted ones.
 *
 * <p>It may import {@code analysis.tuning}, {@code figure}, {@code render}, {@code job} and the
 * packages of {@code web} that serve all resources; of {@code web.basin} the names of ends.
 */
@NullMarked
package lodeswing.web.tuning;

import org.jspecify.annotations.NullMarked;
