/**
 * The resource of the safety notes: each caution in the reader's language with its figures, rule,
 * limit, source and what it does not cover, and the short lines that every sheet prints.
 *
 * <p>It may import {@code safety}, {@code words}, {@code render} and the packages of {@code web}
 * that serve all resources.
 */
@NullMarked
package lodeswing.web.safety;

import org.jspecify.annotations.NullMarked;
