/**
 * Layouts made ready, held in memory for the next request that needs them.
 *
 * <p>It may import {@code core} and {@code web.layout}.
 */
@NullMarked
package lodeswing.web.landscape;

import org.jspecify.annotations.NullMarked;
