/**
 * The front door: what the service is, for people and for machines, and where everything else is.
 *
 * <p>It computes nothing; it may import {@code words}, {@code web.layout}, {@code web.openapi},
 * {@code web.body} and {@code web.representation}.
 */
@NullMarked
package lodeswing.web.front;

import org.jspecify.annotations.NullMarked;
