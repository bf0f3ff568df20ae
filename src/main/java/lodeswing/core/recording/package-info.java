/**
 * Recordings of a real bob: places over time, the frame in which they were taken, how they begin,
 * and where a computed bob would have been at the same times.
 *
 * <p>May import {@code core.geometry}, {@code core.integrate}, {@code core.motion} and {@code
 * core.rig}.
 */
@NullMarked
package lodeswing.core.recording;

import org.jspecify.annotations.NullMarked;
