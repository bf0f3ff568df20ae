/**
 * Resource {@code /v1/magnet-estimates}: a magnet's remanence from what a bench can measure.
 *
 * <p>Reads the readings from the query, has {@code analysis.gauging} solve them, and answers with
 * range, grades that fit and notes. Stores nothing.
 */
@NullMarked
package lodeswing.web.gauging;

import org.jspecify.annotations.NullMarked;
