/**
 * Texts in the languages that the service speaks, with numbers, units and plurals as each has them.
 *
 * <p>The texts are UTF-8 property files beside this package, one for each subject and language. It
 * may import the JDK and ICU4J and nothing of ours, so that every floor may use it.
 */
@NullMarked
package lodeswing.words;

import org.jspecify.annotations.NullMarked;
