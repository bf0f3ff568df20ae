/**
 * The flux density of a plate's magnets at many points at once: blocks of points on lanes, grids
 * over a height or over the bob's path, derivatives, and the lines that follow it.
 *
 * <p>It may import {@code core.geometry}, {@code core.magnet}, {@code core.motion}, {@code
 * core.rig} and the choice of lanes in {@code core.integrate.lane}.
 */
@NullMarked
package lodeswing.core.field;

import org.jspecify.annotations.NullMarked;
