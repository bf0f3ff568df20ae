/**
 * Strict reading of JSON bodies: a small vocabulary of shapes from which reader and schema are
 * made.
 *
 * <p>It may import {@code web.problem}, {@code core} nothing, and Jackson.
 */
@NullMarked
package lodeswing.web.body;

import org.jspecify.annotations.NullMarked;
