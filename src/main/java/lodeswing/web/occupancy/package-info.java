/**
 * The resource of where the bob spends its time: the map of its time beside the field's strength,
 * the correlation of both, single values for a cell.
 *
 * <p>It may import {@code analysis.occupancy}, {@code analysis.freeswing}, {@code figure}, {@code
 * render}, {@code job} and the packages of {@code web} that serve all resources; of {@code
 * web.trace} the ranges of a release, of {@code web.basin} the usual window.
 */
@NullMarked
package lodeswing.web.occupancy;

import org.jspecify.annotations.NullMarked;
