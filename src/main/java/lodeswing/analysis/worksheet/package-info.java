/**
 * What pupils can try at a rig: releases from many places, and which of them suit a worksheet.
 *
 * <p>Places whose end can be foretold and places whose end cannot. It may import {@code core} and
 * no other analysis.
 */
@NullMarked
package lodeswing.analysis.worksheet;

import org.jspecify.annotations.NullMarked;
