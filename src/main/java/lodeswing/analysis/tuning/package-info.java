/**
 * Which changes of a rig bring the odds of its labels nearest to wanted ones.
 *
 * <p>It may import {@code core} and no other analysis.
 */
@NullMarked
package lodeswing.analysis.tuning;

import org.jspecify.annotations.NullMarked;
