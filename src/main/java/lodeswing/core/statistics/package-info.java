/**
 * Statistics that Commons Math lacks: intervals of shares, and the measures of a labelled plane
 * (box counting, uncertainty exponent, basin entropy, Wada test).
 *
 * <p>It knows labels only, nothing of pendulums, and may import Commons Math alone.
 */
@NullMarked
package lodeswing.core.statistics;

import org.jspecify.annotations.NullMarked;
