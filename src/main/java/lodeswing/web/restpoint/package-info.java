/**
 * The resource of rest points: their stored form, their names in words, their documents.
 *
 * <p>It may import {@code core}, {@code job} and the packages of {@code web} that serve all
 * resources.
 */
@NullMarked
package lodeswing.web.restpoint;

import org.jspecify.annotations.NullMarked;
