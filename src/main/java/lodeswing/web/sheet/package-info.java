/**
 * Sheets of a layout to print: where its magnets go, and the labels of its outcomes.
 *
 * <p>It may import {@code core}, {@code figure}, {@code sheet}, {@code words}, {@code render},
 * {@code web.layout}, {@code web.plate} and the packages of {@code web} that serve all resources.
 */
@NullMarked
package lodeswing.web.sheet;

import org.jspecify.annotations.NullMarked;
