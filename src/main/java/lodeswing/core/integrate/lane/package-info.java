/**
 * Integration of many releases at once, a lane each: kernels, what they are made of, and its scalar
 * form.
 *
 * <p>The form on the vector unit lives in core.integrate.simd and is loaded by name.
 *
 * <p>May import core.motion and core.integrate.
 */
@NullMarked
package lodeswing.core.integrate.lane;

import org.jspecify.annotations.NullMarked;
