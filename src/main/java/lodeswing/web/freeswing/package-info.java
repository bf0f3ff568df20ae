/**
 * The resource of a rig without its magnets: periods, figure, decay and precession, its picture,
 * and the suspension that gives a wanted figure.
 *
 * <p>It may import {@code analysis.freeswing}, {@code analysis.trace}, {@code figure}, {@code
 * render}, {@code job} and the packages of {@code web} that serve all resources; of {@code
 * web.trace} the ranges of a release.
 */
@NullMarked
package lodeswing.web.freeswing;

import org.jspecify.annotations.NullMarked;
