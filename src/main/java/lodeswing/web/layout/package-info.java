/**
 * Layouts on the wire: their shapes, the mapper to SI, the canonical form, variants and samples.
 *
 * <p>It may import {@code core}, {@code job}, {@code web.body}, {@code web.problem} and Spring.
 */
@NullMarked
package lodeswing.web.layout;

import org.jspecify.annotations.NullMarked;
