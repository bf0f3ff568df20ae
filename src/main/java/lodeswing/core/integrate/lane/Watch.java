package lodeswing.core.integrate.lane;

/**
 * What makes a lane ask for attention after a step.
 *
 * @param sealBelow energy below which an outcome may be certain
 * @param until longest time
 * @param reach greatest size of a coordinate
 * @param smallest size of step below which a lane is stuck in numbers
 * @param everyStep whether every accepted step has to be looked at
 */
public record Watch(
    double sealBelow, double until, double reach, double smallest, boolean everyStep) {}
