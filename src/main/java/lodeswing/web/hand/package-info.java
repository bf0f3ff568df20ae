/**
 * A hand that lets the bob go, as requests say it: shapes, parameters, what is wrong with it,
 * words.
 *
 * <p>It may import {@code core.chance}, {@code web.body}, {@code web.representation} and the places
 * of layouts in {@code web.landscape}; odds, tunings and sweeps ask here.
 */
@NullMarked
package lodeswing.web.hand;

import org.jspecify.annotations.NullMarked;
