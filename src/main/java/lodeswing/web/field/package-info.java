/**
 * The resources of the plate's field: at a point, as a map, as lines, as filings, and its weak
 * spots; documents, tables, pictures and single values for a cell.
 *
 * <p>It may import {@code analysis.field}, {@code core}, {@code figure}, {@code render}, {@code
 * job} and the packages of {@code web} that serve all resources; of {@code web.basin} the usual
 * window.
 */
@NullMarked
package lodeswing.web.field;

import org.jspecify.annotations.NullMarked;
