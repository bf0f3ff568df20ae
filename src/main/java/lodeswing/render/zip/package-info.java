/**
 * Files in one, as a ZIP archive whose bytes depend on the files alone.
 *
 * <p>It imports nothing of ours.
 */
@NullMarked
package lodeswing.render.zip;

import org.jspecify.annotations.NullMarked;
