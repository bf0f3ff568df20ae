/**
 * The writer of PDF: pages of shapes and text, tagged, with the typefaces inside (PDFBox).
 *
 * <p>It may import {@code figure}, {@code letters}, {@code sheet} and {@code render}.
 */
@NullMarked
package lodeswing.render.pdf;

import org.jspecify.annotations.NullMarked;
