/**
 * Period, length and loss of a rig from swings that were counted by hand and a ruler.
 *
 * <p>Knows a rig without its magnets alone, and what its magnets would do to a first swing; imports
 * the core only.
 */
@NullMarked
package lodeswing.analysis.swingcount;

import org.jspecify.annotations.NullMarked;
