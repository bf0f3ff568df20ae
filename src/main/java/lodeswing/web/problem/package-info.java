/**
 * The one error path: faults, problem codes, problem documents and their pages.
 *
 * <p>It may import {@code render.csv}, Spring and Jackson.
 */
@NullMarked
package lodeswing.web.problem;

import org.jspecify.annotations.NullMarked;
