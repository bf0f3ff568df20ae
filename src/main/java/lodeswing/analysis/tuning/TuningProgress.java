package lodeswing.analysis.tuning;

import java.util.function.DoubleConsumer;

/**
 * Hears how far a tuning has come, stage by stage, from several threads; each may throw to end it.
 *
 * @param before the rig as it is
 * @param search the candidates
 * @param finish the nearest ones in full
 */
public record TuningProgress(DoubleConsumer before, DoubleConsumer search, DoubleConsumer finish) {}
