/**
 * Comparisons: a recording of the bench held against the path that a layout foretells, nothing of
 * the layout being fitted.
 *
 * <p>It may import {@code analysis.comparison}, {@code analysis.trace}, {@code figure}, {@code
 * render}, {@code job} and the packages of {@code web} that serve all resources; of {@code
 * web.trace} what one path is asked for and told as.
 */
@NullMarked
package lodeswing.web.comparison;

import org.jspecify.annotations.NullMarked;
