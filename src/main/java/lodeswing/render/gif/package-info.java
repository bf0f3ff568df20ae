/**
 * Animations as GIF files.
 *
 * <p>It may import {@code figure}, {@code render} and {@code render.png}.
 */
@NullMarked
package lodeswing.render.gif;

import org.jspecify.annotations.NullMarked;
