/**
 * Recordings of a real bob: which rig, and which frame, would have drawn them.
 *
 * <p>A path is fitted over a stretch that grows as long as it can be followed; where chaos, or a
 * rig that is another one, ends that, the result says so.
 */
@NullMarked
package lodeswing.analysis.fit;

import org.jspecify.annotations.NullMarked;
