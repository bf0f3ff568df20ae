package lodeswing.analysis.comparison;

import java.util.OptionalInt;

/**
 * Where a recorded bob is at rest in the end.
 *
 * @param x its plan place, a mean [m]
 * @param y its plan place [m]
 * @param nearest index of the nearest rest point; empty where there is none
 * @param distance from there [m]; 0 where there is none
 * @param belongs whether it is near enough to be that rest point's
 */
public record RecordedEnd(
    double x, double y, OptionalInt nearest, double distance, boolean belongs) {}
