package lodeswing.analysis.freeswing;

import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.core.geometry.PathCurve;
import lodeswing.core.outcome.PathEnd;

/**
 * The path of a bob without magnets.
 *
 * @param curve the path, up to the asked time or to its end
 * @param end what ended it before
 * @param halvedAt when a quarter of the energy was left, so that the swing had half its size; empty
 *     where that was not reached
 * @param widest greatest distance of the path from the line through the release and the lowest
 *     point; of interest after a release from rest
 */
public record FreePath(
    PathCurve curve, Optional<PathEnd> end, OptionalDouble halvedAt, double widest) {}
