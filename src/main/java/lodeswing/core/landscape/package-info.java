/**
 * A layout made ready: its motion, the table of its energy, its rest points and the seal rule.
 *
 * <p>It may import every other package of {@code core}; analyses begin here.
 */
@NullMarked
package lodeswing.core.landscape;

import org.jspecify.annotations.NullMarked;
