/**
 * Tables as comma-separated values (RFC 4180) for programs and for spreadsheets.
 *
 * <p>It may import nothing but the JDK.
 */
@NullMarked
package lodeswing.render.csv;

import org.jspecify.annotations.NullMarked;
