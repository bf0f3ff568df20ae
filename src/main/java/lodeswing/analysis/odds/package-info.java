/**
 * How likely each end is on rigs whose parts are not exact; on one rig {@code core.chance} tells.
 *
 * <p>It may import {@code core} and no other analysis.
 */
@NullMarked
package lodeswing.analysis.odds;

import org.jspecify.annotations.NullMarked;
