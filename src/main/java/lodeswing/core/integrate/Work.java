package lodeswing.core.integrate;

/**
 * Work spent on an integration.
 *
 * @param acceptedSteps steps taken
 * @param rejectedSteps steps tried in vain
 * @param evaluations evaluations of the force, those for first step and dense output included
 */
public record Work(long acceptedSteps, long rejectedSteps, long evaluations) {}
