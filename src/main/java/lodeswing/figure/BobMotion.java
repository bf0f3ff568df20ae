package lodeswing.figure;

/**
 * The bob's places frame by frame, at even steps of time, to move over a picture of its path.
 *
 * @param places a place a frame [model units]
 * @param trusted how many frames show a place that is trusted
 * @param frame time from one frame to the next as it is played [s]
 * @param hold how long the last frame stays before all begins again [s]
 */
public record BobMotion(Points places, int trusted, double frame, double hold) {

  /**
   * @throws IllegalArgumentException where there are no two frames, or they take no time
   */
  public BobMotion {
    if (places.count() < 2 || !(frame > 0) || !(hold >= 0)) {
      throw new IllegalArgumentException("A motion has two frames or more, each of some time.");
    }
  }

  /** How many frames there are. */
  public int count() {
    return places.count();
  }
}
