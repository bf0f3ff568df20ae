/**
 * Where the bob spends its time: the time of a great many paths, cell by cell, against the field's
 * strength there.
 *
 * <p>It may import {@code core}.
 */
@NullMarked
package lodeswing.analysis.occupancy;

import org.jspecify.annotations.NullMarked;
