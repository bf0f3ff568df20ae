/**
 * All that a layout has for a room without network, in one archive with a page to begin at.
 *
 * <p>The work makes sure that every result is stored; the archive is written at each request from
 * what the single addresses answer. It may import the packages of {@code web}, {@code render.zip}
 * and {@code words}.
 */
@NullMarked
package lodeswing.web.bundle;

import org.jspecify.annotations.NullMarked;
