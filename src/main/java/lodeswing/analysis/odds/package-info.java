/**
 * How likely each end is when a hand wanders, and when the parts of the rig are not exact.
 *
 * <p>It may import {@code core} and no other analysis.
 */
@NullMarked
package lodeswing.analysis.odds;

import org.jspecify.annotations.NullMarked;
