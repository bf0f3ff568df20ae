package lodeswing.core.outcome;

import java.util.Optional;
import lodeswing.core.motion.Limit;

/**
 * What ends a path before its time.
 *
 * @param time when
 * @param limit the border of the model that was met; empty where friction holds the bob
 */
public record PathEnd(double time, Optional<Limit.Kind> limit) {}
