/**
 * What every resource does alike over HTTP: query parameters, negotiation, tags, caching, ranges.
 *
 * <p>It may import {@code web.body}, {@code web.problem}, {@code job}, {@code render.csv}, Spring,
 * Caffeine and Jackson.
 */
@NullMarked
package lodeswing.web.representation;

import org.jspecify.annotations.NullMarked;
