/**
 * Keeps results and layouts in a database, with a memory cache and single flight in front.
 *
 * <p>It may import {@code job}, Spring, JDBC, Caffeine and Micrometer.
 */
@NullMarked
package lodeswing.store;

import org.jspecify.annotations.NullMarked;
