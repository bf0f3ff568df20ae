/**
 * A long exposure: what the bob's light leaves on paper that glows in the dark, by time spent and
 * by the paper's decay.
 *
 * <p>It may import {@code core}.
 */
@NullMarked
package lodeswing.analysis.glow;

import org.jspecify.annotations.NullMarked;
