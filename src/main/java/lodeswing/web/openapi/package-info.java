/**
 * The OpenAPI document: what each operation says about itself, put together.
 *
 * <p>It may import {@code web.body}, {@code web.representation}, {@code web.problem}, springdoc.
 */
@NullMarked
package lodeswing.web.openapi;

import org.jspecify.annotations.NullMarked;
