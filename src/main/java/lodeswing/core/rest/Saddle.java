package lodeswing.core.rest;

/**
 * A saddle of the potential: the lowest place of a way between two neighbouring regions.
 *
 * @param index its number in the result, from 0, by rising potential
 * @param q0 place
 * @param q1 place
 * @param x plan position
 * @param y plan position
 * @param potential potential energy there
 * @param one where the way down leads on one side
 * @param other where it leads on the other side; may be the same
 * @param continuum whether it stands for a whole line of such places, a round ridge
 */
public record Saddle(
    int index,
    double q0,
    double q1,
    double x,
    double y,
    double potential,
    Side one,
    Side other,
    boolean continuum) {}
