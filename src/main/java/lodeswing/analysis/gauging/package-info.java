/**
 * How strong a magnet is, from what a bench can measure.
 *
 * <p>Pulls, a lift and a field reading, each solved for the remanence and with its range; several
 * are combined. Knows nothing of pendulums; imports the core only.
 */
@NullMarked
package lodeswing.analysis.gauging;

import org.jspecify.annotations.NullMarked;
