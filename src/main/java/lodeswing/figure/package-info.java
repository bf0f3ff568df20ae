/**
 * Results turned into format-neutral drawings: shapes, legend, scale bar, alternative text.
 *
 * <p>It may import {@code analysis} and {@code core}; no framework.
 */
@NullMarked
package lodeswing.figure;

import org.jspecify.annotations.NullMarked;
