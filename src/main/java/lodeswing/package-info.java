/**
 * The application class: it starts everything and holds nothing.
 *
 * <p>It may import Spring and {@code config}.
 */
@NullMarked
package lodeswing;

import org.jspecify.annotations.NullMarked;
