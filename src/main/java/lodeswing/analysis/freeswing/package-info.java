/**
 * A rig without its magnets: periods, figures, decay and precession, the suspension that gives a
 * wanted figure, and until when the path among the magnets keeps to the free one.
 *
 * <p>It may import {@code core}.
 */
@NullMarked
package lodeswing.analysis.freeswing;

import org.jspecify.annotations.NullMarked;
