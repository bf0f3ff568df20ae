/**
 * Suspensions: cord, Y cord and hooked bar, their mass and inertia from parts, their kinematics and
 * support load.
 *
 * <p>It may import {@code core.geometry} and Commons Math.
 */
@NullMarked
package lodeswing.core.suspension;

import org.jspecify.annotations.NullMarked;
