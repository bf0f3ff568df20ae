/**
 * Maps of where releases end: windows, tiles, pictures, legends; and lists of releases.
 *
 * <p>It may import {@code analysis.basin}, {@code core}, {@code figure}, {@code render}, {@code
 * job} and the packages of {@code web} that serve all resources.
 */
@NullMarked
package lodeswing.web.basin;

import org.jspecify.annotations.NullMarked;
