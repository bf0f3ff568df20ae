/**
 * The picture of a layout's plate, without any path.
 *
 * <p>It may import {@code core}, {@code figure}, {@code render}, {@code web.layout} and the
 * packages of {@code web} that serve all resources.
 */
@NullMarked
package lodeswing.web.plate;

import org.jspecify.annotations.NullMarked;
