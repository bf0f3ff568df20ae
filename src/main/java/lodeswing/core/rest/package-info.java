/**
 * Rest points, saddles, barriers, wells and the rule that says from when an outcome is certain.
 *
 * <p>It may import {@code core.motion} and {@code core.rig}.
 */
@NullMarked
package lodeswing.core.rest;

import org.jspecify.annotations.NullMarked;
