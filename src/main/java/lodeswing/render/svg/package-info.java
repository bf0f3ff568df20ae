/**
 * Drawings as standalone SVG.
 *
 * <p>It may import {@code figure} and {@code render}; nothing but the JDK besides.
 */
@NullMarked
package lodeswing.render.svg;

import org.jspecify.annotations.NullMarked;
