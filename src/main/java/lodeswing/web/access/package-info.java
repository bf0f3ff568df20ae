/**
 * Who asks: the address or the key behind a request, and what that may do.
 *
 * <p>May import {@code job} and {@code web.problem}; knows nothing of what is asked for.
 */
@NullMarked
package lodeswing.web.access;

import org.jspecify.annotations.NullMarked;
