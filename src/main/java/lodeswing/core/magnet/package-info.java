/**
 * Permanent magnets: shapes, grades, exact fields, potentials and the energy of one magnet in the
 * field of many.
 *
 * <p>It may import {@code core.geometry} and Commons Math.
 */
@NullMarked
package lodeswing.core.magnet;

import org.jspecify.annotations.NullMarked;
