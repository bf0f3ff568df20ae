/**
 * One release followed until it settles: path, events, outcome and how far it can be trusted.
 *
 * <p>It may import {@code core}.
 */
@NullMarked
package lodeswing.analysis.trace;

import org.jspecify.annotations.NullMarked;
