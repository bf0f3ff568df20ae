/**
 * The resources of one release: traces, their pictures and tables, and the outcome alone.
 *
 * <p>It may import {@code analysis.trace}, {@code figure}, {@code render}, {@code job} and the
 * packages of {@code web} that serve all resources; of {@code web.basin} what a map says of a
 * release.
 */
@NullMarked
package lodeswing.web.trace;

import org.jspecify.annotations.NullMarked;
