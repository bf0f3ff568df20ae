/**
 * The chance of each end for a hand that wanders: spreads, even tries, counts until intervals are
 * short enough.
 *
 * <p>Lives on landscapes, outcomes and statistics; odds and tunings ask here.
 */
@NullMarked
package lodeswing.core.chance;

import org.jspecify.annotations.NullMarked;
