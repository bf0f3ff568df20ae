/**
 * What other sites embed: the figure's script, pages that hold it, and oEmbed answers that name it.
 *
 * <p>It computes nothing; it may import {@code words}, {@code web.layout}, {@code web.trace},
 * {@code web.openapi}, {@code web.problem}, {@code web.body} and {@code web.representation}.
 */
@NullMarked
package lodeswing.web.embed;

import org.jspecify.annotations.NullMarked;
