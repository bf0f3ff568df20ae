/**
 * Layouts made ready, held in memory for the next request that needs them.
 *
 * <p>It may import {@code core}, {@code web.layout}, {@code web.limits}, {@code web.body} and
 * {@code web.problem}.
 */
@NullMarked
package lodeswing.web.landscape;

import org.jspecify.annotations.NullMarked;
