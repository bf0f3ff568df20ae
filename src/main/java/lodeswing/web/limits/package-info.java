/**
 * Every limit of the service: one record that everybody reads, its resource, and the first guard.
 *
 * <p>It may import {@code web.body}, {@code web.layout}, {@code web.representation}, {@code
 * web.problem} and Spring.
 */
@NullMarked
package lodeswing.web.limits;

import org.jspecify.annotations.NullMarked;
