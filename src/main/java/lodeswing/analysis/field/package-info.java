/**
 * The plate's field as pictures ask for it: level lines of its strength, its lines evenly apart,
 * what filings show, and where it is weak.
 *
 * <p>It may import {@code core}.
 */
@NullMarked
package lodeswing.analysis.field;

import org.jspecify.annotations.NullMarked;
