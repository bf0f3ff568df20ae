/**
 * The square of the plate that a map shows, and its pixels as releases.
 *
 * <p>It may import {@code core} alone.
 */
@NullMarked
package lodeswing.core.window;

import org.jspecify.annotations.NullMarked;
