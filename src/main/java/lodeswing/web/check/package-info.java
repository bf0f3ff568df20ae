/**
 * The resource of the rig check: every line with its figure, limit, verdict, reason and the change
 * that would make it pass; the parts of a bar with their masses.
 *
 * <p>It may import {@code analysis.check}, {@code render}, {@code job} and the packages of {@code
 * web} that serve all resources; of {@code web.basin} the usual window. Its sentences are in {@code
 * CheckWords} alone.
 */
@NullMarked
package lodeswing.web.check;

import org.jspecify.annotations.NullMarked;
