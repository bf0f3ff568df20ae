/**
 * Lane arithmetic on the processor's vector unit, equal to the scalar form to the bit.
 *
 * <p>The only package that imports jdk.incubator.vector; loaded by name, so that the service starts
 * without that module.
 *
 * <p>May import core.integrate.lane and core.motion.
 */
@NullMarked
package lodeswing.core.integrate.simd;

import org.jspecify.annotations.NullMarked;
