/**
 * Results by content: keys, stored results and the ports that keep them.
 *
 * <p>It may import {@code core}; no framework.
 */
@NullMarked
package lodeswing.job;

import org.jspecify.annotations.NullMarked;
