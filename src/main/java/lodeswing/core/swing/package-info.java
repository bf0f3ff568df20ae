/**
 * Swings of a rig without its magnets in closed form: small ones, and one of any size.
 *
 * <p>It may import {@code core} alone.
 */
@NullMarked
package lodeswing.core.swing;

import org.jspecify.annotations.NullMarked;
