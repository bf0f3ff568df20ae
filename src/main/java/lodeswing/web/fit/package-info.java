/**
 * Fits: which rig, release and frame would have drawn what was recorded on the bench.
 *
 * <p>It may import {@code web.recording}, {@code web.posted}, {@code analysis.fit} and what these
 * may; no other resource.
 */
@NullMarked
package lodeswing.web.fit;

import org.jspecify.annotations.NullMarked;
