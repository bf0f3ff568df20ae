package lodeswing.analysis.occupancy;

/** Moments of one lot of releases, by cell. */
final class LotCount {

  private final int[] byCell;
  private final int elsewhere;
  private final int notReleased;
  private final int endedEarly;

  /**
   * Takes over what was counted.
   *
   * @param byCell how often a bob was met in each cell
   * @param elsewhere how often beside the grid
   * @param notReleased releases that could not begin
   * @param endedEarly releases that met a limit of the model before their time
   */
  LotCount(int[] byCell, int elsewhere, int notReleased, int endedEarly) {
    this.byCell = byCell;
    this.elsewhere = elsewhere;
    this.notReleased = notReleased;
    this.endedEarly = endedEarly;
  }

  int cells() {
    return byCell.length;
  }

  int at(int cell) {
    return byCell[cell];
  }

  int notReleased() {
    return notReleased;
  }

  int endedEarly() {
    return endedEarly;
  }

  /** Moments in all. */
  long total() {
    long sum = elsewhere;
    for (int count : byCell) {
      sum += count;
    }
    return sum;
  }
}
