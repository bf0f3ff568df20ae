/**
 * The resource of two releases a shift apart: both paths, their separation and its growth.
 *
 * <p>It may import {@code analysis.twins}, {@code analysis.trace}, {@code figure}, {@code render},
 * {@code job} and the packages of {@code web} that serve all resources; of {@code web.trace} what
 * one path is asked for and told as.
 */
@NullMarked
package lodeswing.web.twins;

import org.jspecify.annotations.NullMarked;
