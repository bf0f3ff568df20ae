/**
 * The resource sweeps: one or two quantities varied over ranges, and a table of measures.
 *
 * <p>It may import {@code analysis.sweep}, {@code figure}, {@code render}, {@code job} and the
 * packages of {@code web} that serve all resources; of {@code web.basin} the names of ends and the
 * usual window.
 */
@NullMarked
package lodeswing.web.sweep;

import org.jspecify.annotations.NullMarked;
