/**
 * Drawings as PNG, by Java2D and the bundled typeface.
 *
 * <p>It may import {@code figure} and {@code render}; nothing but the JDK besides.
 */
@NullMarked
package lodeswing.render.png;

import org.jspecify.annotations.NullMarked;
