/**
 * The pages that explain each kind of problem, and how to mend it.
 *
 * <p>It may import {@code web.problem}, {@code web.representation} and Spring.
 */
@NullMarked
package lodeswing.web.problempage;

import org.jspecify.annotations.NullMarked;
