/**
 * Wiring: typed properties, the beans of the shell, what is said at start.
 *
 * <p>It may import everything but the application class; nothing imports it.
 */
@NullMarked
package lodeswing.config;

import org.jspecify.annotations.NullMarked;
