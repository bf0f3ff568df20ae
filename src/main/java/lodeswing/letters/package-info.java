/**
 * Text made into letters at their places: typefaces, direction, shaping, line breaks.
 *
 * <p>It may import the JDK and ICU4J and nothing of ours, so that sheets and writers agree on how
 * wide a line is.
 */
@NullMarked
package lodeswing.letters;

import org.jspecify.annotations.NullMarked;
