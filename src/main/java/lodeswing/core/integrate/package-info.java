/**
 * Adaptive integrators for second-order systems in two coordinates, with dense output and events
 * found as roots.
 *
 * <p>It may import {@code core.motion} for the system it integrates, and {@code core.geometry}.
 */
@NullMarked
package lodeswing.core.integrate;

import org.jspecify.annotations.NullMarked;
