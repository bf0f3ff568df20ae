/**
 * Losses: linear, air drag and pivot friction, and how counted swings set them.
 *
 * <p>It may import {@code core.suspension} and Commons Math.
 */
@NullMarked
package lodeswing.core.loss;

import org.jspecify.annotations.NullMarked;
