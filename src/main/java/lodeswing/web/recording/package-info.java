/**
 * Recordings of a bob, as columns or as a table, in whatever frame and units they were taken.
 *
 * <p>They are brought into seconds and the layout's unit of length; what had to be passed over is
 * counted and told.
 */
@NullMarked
package lodeswing.web.recording;

import org.jspecify.annotations.NullMarked;
