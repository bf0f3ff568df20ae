/**
 * Writers of drawings and tables, one a format, and the palette.
 *
 * <p>It may import {@code figure} and {@code analysis}; no framework but the format's own library.
 */
@NullMarked
package lodeswing.render;

import org.jspecify.annotations.NullMarked;
