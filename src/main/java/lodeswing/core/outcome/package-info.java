/**
 * Where many releases end: the well that each settles in, and from when that was certain.
 *
 * <p>Lives on landscapes and integrators; basins, odds and sweeps ask here.
 *
 * <p>May import core alone.
 */
@NullMarked
package lodeswing.core.outcome;

import org.jspecify.annotations.NullMarked;
