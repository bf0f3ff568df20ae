package lodeswing.analysis.comparison;

import java.util.OptionalDouble;
import lodeswing.core.rig.Release;

/**
 * A release that is told.
 *
 * @param release its plan place and velocity
 * @param accuracy standard deviation of each coordinate of its place [m], 0 or above
 * @param time when it was, after the first recorded place [s]; empty where that is to be found
 */
public record KnownRelease(Release release, double accuracy, OptionalDouble time) {}
