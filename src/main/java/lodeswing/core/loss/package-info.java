/**
 * Losses: linear, air drag and pivot friction, and how counted swings set them.
 *
 * <p>It may import {@code core.suspension}.
 */
@NullMarked
package lodeswing.core.loss;

import org.jspecify.annotations.NullMarked;
