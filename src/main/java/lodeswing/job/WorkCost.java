package lodeswing.job;

import java.util.List;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;

/**
 * What work on a layout costs, told before it is begun, in releases of a textbook map: the unit in
 * which the queue is bounded. The one place that knows these figures.
 *
 * <p>Figures are processor time of one run each over that of a release of the sample {@code
 * paper-triangle} ({@code WorkCostReport} among the tests), told beside each: right within a factor
 * of two or three, which is enough to bound a queue.
 *
 * <p>Making the layout ready counts only as long as that has not been begun. What else a piece of
 * work needs (a tile the survey of its map) counts for itself, where it is asked for first.
 *
 * @param layout what the work is about
 * @param ready whether the layout is ready, or is being made so
 * @param preparingWork expected evaluations of a potential that making it ready takes
 */
public record WorkCost(Layout layout, boolean ready, double preparingWork) {

  /**
   * Maps of three bench samples on cords took 17 to 18; a bar with much friction takes far more.
   */
  private static final long BENCH = 17;

  /**
   * 3,200 (12 s) to 31,000 (600 s) on the textbook sample; how long a path gets is not foretold.
   */
  private static final long PATH = 20_000;

  /** 11,000 to 54,000 on three bench samples. */
  private static final long BENCH_PATH = 25_000;

  /** One of two paths beside each other: a guess, as a trace's. */
  private static final long TWIN = 20_000;

  /** The same on the bench. */
  private static final long BENCH_TWIN = 25_000;

  /**
   * A swing without magnets: 7 on three samples on cords, 14 on a bar with drag and friction
   * (processor time of following one release until half its size is left).
   */
  private static final double FREE_SWING = 10;

  /** A swing among magnets beside one without: a guess. */
  private static final double OCCUPANCY_SWING = 15;

  /** A quantity that is sought behind a recording: a guess. */
  private static final long FIT = 5_000;

  /** The same on the bench: a guess. */
  private static final long BENCH_FIT = 50_000;

  /**
   * A recording that is compared, beside a trace: the search for hints, where there is a
   * difference.
   */
  private static final long COMPARISON = 20_000;

  /**
   * The same on the bench: 0.1 s where nothing differs, 0.2 to 3 s where hints are sought (three
   * dipoles by their table, 10 s of recording, one core beside other work).
   */
  private static final long BENCH_COMPARISON = 100_000;

  /** A magnet's field at a point on lanes: 5 to 20 ns of the 15.8 microseconds of a release. */
  private static final double FIELD_EVALUATION = 1e-3;

  /** Changed rigs that one check makes ready: a guess. */
  private static final long CHECKED_RIGS = 3;

  /** 512 tries, and 48 releases until they have settled. */
  private static final long CHECK_RELEASES = 512 + 48 * 6;

  /** 26,000 on the textbook sample. */
  private static final long SURVEY = 26_000;

  /** 39,000 to 54,000 on three bench samples. */
  private static final long BENCH_SURVEY = 46_000;

  /** A release of a list, at its tight tolerance: 12 and 15 on the textbook sample. */
  private static final long LISTED = 13;

  /** 51 to 108 on three bench samples. */
  private static final long BENCH_LISTED = 75;

  /** A release on the path of a trace: 97 on the textbook sample, mean of 900 in a row. */
  private static final long SINGLE = 97;

  /** 660 on one bench sample, mean of 300 in a row; 3,700 until it has settled. */
  private static final long BENCH_SINGLE = 660;

  /** How much longer a release takes until it has settled: 4 to 6 times, on one sample 12 times. */
  private static final long SETTLING = 6;

  /**
   * 115,000 and 147,000 on the textbook sample, whose map is too fine for its own pixels; three
   * bench samples needed none. Which maps do is not known before: that each textbook map does, and
   * no bench one, is a guess.
   */
  private static final long BELOW_PIXELS = 130_000;

  /** The search for the textbook sample's rest points: 4,700; on the bench a guess. */
  private static final long SEARCH = 4_700;

  /** An evaluation of a potential, fits and search included: 0.001 to 0.0034 on four samples. */
  private static final double EVALUATION = 2e-3;

  /** Rest points: all of it is making the layout ready. */
  public long restPoints() {
    return Math.max(1, makingReady());
  }

  /** The path of one release, how far it is trusted, and its end on the map. */
  public long trace() {
    return makingReady() + (bench() ? BENCH_PATH : PATH);
  }

  /** Two paths beside each other, without their ends on the map. */
  public long twins() {
    return makingReady() + 2 * twin();
  }

  /** One path of the two. */
  public long twin() {
    return bench() ? BENCH_TWIN : TWIN;
  }

  /**
   * The path of one release without magnets, for which nothing needs to be made ready.
   *
   * @param swings how many swings it is followed
   */
  public long freeSwing(double swings) {
    return (long) Math.ceil(FREE_SWING * (1 + swings));
  }

  /**
   * Releases followed with and without magnets, counting where they are.
   *
   * @param swings of all of them together
   */
  public long occupancy(double swings) {
    return makingReady() + (long) Math.ceil(OCCUPANCY_SWING * (1 + swings));
  }

  /**
   * A recording that is fitted: a guess of some thousand paths, shorter ones among them.
   *
   * @param quantities that are sought
   */
  public long fit(int quantities) {
    return FIT + quantities * (bench() ? BENCH_FIT : FIT);
  }

  /**
   * A recording that is held against a path: that path, its start, and what may explain the rest.
   */
  public long comparison() {
    return trace() + (bench() ? BENCH_COMPARISON : COMPARISON);
  }

  /**
   * A picture of the field, for which nothing needs to be made ready.
   *
   * @param evaluations of one magnet's field at one point
   */
  public static long field(double evaluations) {
    return 1 + (long) Math.ceil(FIELD_EVALUATION * evaluations);
  }

  /**
   * A check: some releases until they rest, many tries, and a few changed rigs that are made ready;
   * how many is not known before, three is a guess.
   */
  public long check() {
    long each = (long) (SEARCH + EVALUATION * preparingWork);
    return makingReady() + CHECKED_RIGS * each + CHECK_RELEASES * release();
  }

  /** The survey of a window. */
  public long survey() {
    return makingReady() + (bench() ? BENCH_SURVEY : SURVEY);
  }

  /**
   * A map, whether a tile or a picture.
   *
   * @param pixels how many releases it has
   * @param settled whether each is followed until the bob has settled
   */
  public long map(long pixels, boolean settled) {
    return makingReady() + pixels * release() * (settled ? SETTLING : 1);
  }

  /**
   * A list of releases.
   *
   * @param releases how many it has
   * @param settled whether each is followed until the bob has settled
   */
  public long list(long releases, boolean settled) {
    return makingReady() + releases * (bench() ? BENCH_LISTED : LISTED) * (settled ? SETTLING : 1);
  }

  /** What a summary samples below the pixels of its map, if need be. */
  public long belowPixels() {
    return bench() ? 0 : BELOW_PIXELS;
  }

  /**
   * A summary: its map, as if nobody had asked for that, and releases below its pixels if need be.
   *
   * @param pixels of the map
   */
  public long summary(long pixels) {
    return map(pixels, false) + belowPixels();
  }

  /**
   * Odds: tries on the rig, and on rigs that each are made ready anew.
   *
   * @param releases on the rig itself, at most
   * @param rigs how many varied rigs
   * @param releasesPerRig on each of those
   */
  public long odds(long releases, int rigs, long releasesPerRig) {
    long each = (long) (SEARCH + EVALUATION * preparingWork) + releasesPerRig * release();
    return makingReady() + releases * release() + rigs * each;
  }

  /**
   * Pieces of work one after the other, for which the layout is made ready once.
   *
   * @param pieces what each costs by itself
   */
  public long together(List<Long> pieces) {
    return makingReady() + pieces.stream().mapToLong(this::afterwards).sum();
  }

  /**
   * What a piece of work costs beside others, once the layout is ready.
   *
   * @param piece what it costs by itself; where that is less than making the layout ready, it does
   *     not need that
   */
  public long afterwards(long piece) {
    return piece < makingReady() ? piece : piece - makingReady();
  }

  /** The same once the layout is ready. */
  public WorkCost madeReady() {
    return new WorkCost(layout, true, preparingWork);
  }

  /**
   * A piece of a sweep: releases on the paths of traces, tries of odds, and the pixels of a map.
   *
   * @param runs how often single releases are followed
   * @param settled whether until the bob has settled
   * @param tries of all odds together, at most
   * @param pixels of the map
   */
  public long sweepPiece(long runs, boolean settled, long tries, long pixels) {
    long single = (bench() ? BENCH_SINGLE : SINGLE) * (settled ? SETTLING : 1);
    return makingReady() + runs * single + (tries + pixels) * release();
  }

  /**
   * What a tuning does.
   *
   * @param rigs whether candidates are rigs of their own, each made ready anew
   * @param candidates how many are tried at most
   * @param glance tries on each
   * @param looks tries on those that are looked at closer, all together
   * @param finalists how many are counted in full
   * @param releases on each of those, and on the rig as it is
   */
  public record TuningSize(
      boolean rigs, long candidates, long glance, long looks, long finalists, long releases) {}

  /**
   * What a tuning costs, in its stages.
   *
   * @param before the rig as it is
   * @param search the candidates
   * @param finish the nearest ones
   */
  public record TuningCost(long before, long search, long finish) {

    /** All of it. */
    public long all() {
      return before + search + finish;
    }
  }

  /** A search for the settings of a rig that give wanted odds. */
  public TuningCost tuning(TuningSize size) {
    long each = size.rigs() ? (long) (SEARCH + EVALUATION * preparingWork) : 0;
    return new TuningCost(
        makingReady() + size.releases() * release(),
        size.candidates() * (each + size.glance() * release()) + size.looks() * release(),
        size.finalists() * (each + size.releases() * release()));
  }

  /**
   * Tells such work as two stages: making the layout ready, and the rest.
   *
   * @param progress hears of all of it
   * @param all what the work costs, the first stage included
   */
  public Stages stages(Computation.Progress progress, long all) {
    return new Stages(progress, makingReady(), all - makingReady());
  }

  /** Making the layout ready; 0 where it is, or is being made so. */
  public long makingReady() {
    return ready ? 0 : (long) (SEARCH + EVALUATION * preparingWork);
  }

  private long release() {
    return bench() ? BENCH : 1;
  }

  private boolean bench() {
    return layout instanceof BenchLayout;
  }
}
