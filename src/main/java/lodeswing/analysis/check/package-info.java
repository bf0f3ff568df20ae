/**
 * The rig check: what a builder wants to know before anything is glued, line by line: a measured
 * figure, its limit, a verdict, and the smallest change that would pass, solved for on the real
 * model.
 *
 * <p>It may import {@code core}. Limits are in {@code CheckLimits} alone; sentences are made
 * outside, from each finding's {@code Cause}.
 */
@NullMarked
package lodeswing.analysis.check;

import org.jspecify.annotations.NullMarked;
