/**
 * Equations of motion of both models, their energies, their limits of validity and the table of the
 * magnets' energy.
 *
 * <p>It may import {@code core.rig} and the packages of parts.
 */
@NullMarked
package lodeswing.core.motion;

import org.jspecify.annotations.NullMarked;
