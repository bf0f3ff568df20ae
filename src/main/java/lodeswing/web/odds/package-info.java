/**
 * The resource odds: how likely each end is for a hand that wanders and parts that are not exact.
 *
 * <p>It may import {@code analysis.odds}, {@code figure}, {@code render}, {@code job} and the
 * packages of {@code web} that serve all resources; of {@code web.basin} the names of ends.
 */
@NullMarked
package lodeswing.web.odds;

import org.jspecify.annotations.NullMarked;
