package lodeswing.analysis.check;

/**
 * What a check is asked with.
 *
 * @param radius of the disc about the middle that the bob is released from [plan unit]
 * @param wander standard deviation of the hand along either axis [plan unit]
 * @param seed of the tries
 * @param longest how long a release is followed [s on the bench]
 * @param mostWork work that making one rig ready may take
 */
public record CheckSpec(double radius, double wander, long seed, double longest, double mostWork) {}
