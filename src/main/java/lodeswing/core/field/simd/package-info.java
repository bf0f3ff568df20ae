/**
 * The passes over blocks of field points on the processor's vector unit, equal to the scalar form
 * to the bit.
 *
 * <p>Loaded by name, so that the service starts without the vector module. It may import {@code
 * core.field} and the width of vectors in {@code core.integrate.simd}.
 */
@NullMarked
package lodeswing.core.field.simd;

import org.jspecify.annotations.NullMarked;
