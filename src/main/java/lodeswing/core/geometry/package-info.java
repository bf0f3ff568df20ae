/**
 * Points, vectors and curves in the layout's frame: origin on the plate below the upper axis, z up,
 * metres; the cubic between values with slopes.
 *
 * <p>It may import the JDK only.
 */
@NullMarked
package lodeswing.core.geometry;

import org.jspecify.annotations.NullMarked;
