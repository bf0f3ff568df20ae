/**
 * Cautions for a rig: what its magnets, its bob and what is used with it can do to people and
 * things, in figures computed for this rig, each rule with its limit and where that comes from.
 *
 * <p>It may import {@code core} and nothing else of ours; its sentences are texts of {@code words},
 * which this package knows by key alone.
 */
@NullMarked
package lodeswing.safety;

import org.jspecify.annotations.NullMarked;
