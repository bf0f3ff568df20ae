/**
 * What a sweep measures of one layout: rest, contact and periods, releases, and a small map.
 *
 * <p>It may import {@code core} and no other analysis. Whoever sweeps makes the layouts.
 */
@NullMarked
package lodeswing.analysis.sweep;

import org.jspecify.annotations.NullMarked;
