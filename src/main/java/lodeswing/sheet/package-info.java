/**
 * Sheets to print: paper, pages whose parts say what they are, flowing text and tables, and the
 * sheets of a layout in true scale.
 *
 * <p>It may import {@code figure}, {@code letters} and {@code words}; no framework, and no format.
 */
@NullMarked
package lodeswing.sheet;

import org.jspecify.annotations.NullMarked;
