/**
 * Maps of where every release ends: pixel grids, the maps on them, and how deep they may be zoomed.
 *
 * <p>It may import {@code core} alone; no other analysis.
 */
@NullMarked
package lodeswing.analysis.basin;

import org.jspecify.annotations.NullMarked;
