/**
 * Least squares for curves that depend on their parameters in any way.
 *
 * <p>The iteration is Commons Math's; here are slopes by differences, what to do at bounds, and
 * what a fit is worth: errors, correlations, and which parameters it cannot tell.
 */
@NullMarked
package lodeswing.core.regression;

import org.jspecify.annotations.NullMarked;
