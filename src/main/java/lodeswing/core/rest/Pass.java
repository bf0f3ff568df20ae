package lodeswing.core.rest;

/**
 * A way between two sinks (rest points first, then unsafe zones, then the unknown).
 *
 * @param energy energy above which it is open
 * @param error how far that may lie above the true one
 * @param one a sink
 * @param other another sink
 * @param saddle the saddle's index, or -1 where the pass was read off the grid
 */
record Pass(double energy, double error, int one, int other, int saddle) {

  static final int NO_SADDLE = -1;

  int beyond(int sink) {
    return sink == one ? other : one;
  }
}
