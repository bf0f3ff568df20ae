package lodeswing.core.rig;

/**
 * How the bob is let go: plan position of the bob magnet's centre and its plan velocity.
 *
 * @param x plan position [m on the bench, the model's unit in a textbook layout]
 * @param y plan position
 * @param vx plan velocity [m/s on the bench]
 * @param vy plan velocity
 */
public record Release(double x, double y, double vx, double vy) {}
