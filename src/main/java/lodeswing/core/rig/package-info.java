/**
 * Layouts and releases: what is computed, in SI, without titles or labels.
 *
 * <p>It may import the packages of parts: {@code geometry}, {@code magnet}, {@code suspension},
 * {@code loss}.
 */
@NullMarked
package lodeswing.core.rig;

import org.jspecify.annotations.NullMarked;
