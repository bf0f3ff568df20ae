/**
 * Recordings of a real bob against the path that a rig foretells, nothing of the rig being fitted.
 *
 * <p>How the bob began is told or taken from the first places; from there on the prediction stands
 * by itself. What parts the two, and whether chance may, is judged by how errors grow.
 */
@NullMarked
package lodeswing.analysis.comparison;

import org.jspecify.annotations.NullMarked;
