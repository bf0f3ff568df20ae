/**
 * What is posted and then fetched by an id.
 *
 * <p>Here the body of a post is read, what was asked is kept under its id, and its answers are made
 * and kept below its address; each resource brings its own request, computation and forms.
 */
@NullMarked
package lodeswing.web.posted;

import org.jspecify.annotations.NullMarked;
