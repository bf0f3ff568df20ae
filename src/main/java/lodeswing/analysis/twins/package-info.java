/**
 * Two releases a shift apart: their separation, how fast it grows, and when they part.
 *
 * <p>It may import {@code core}.
 */
@NullMarked
package lodeswing.analysis.twins;

import org.jspecify.annotations.NullMarked;
