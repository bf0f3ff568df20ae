package lodeswing.benchmark;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.Motion;
import lodeswing.core.outcome.Ends;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.outcome.ParallelOutcomes;
import lodeswing.core.outcome.ReleaseWatch;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Release;
import lodeswing.core.rig.TextbookLayout;

/**
 * Two long proofs that ends are right, on twenty layouts; {@code .ci/outcomes} runs it.
 *
 * <p>1. An end that is certain is the end: each release is followed until sealed, and once more
 * until rest by a run that does not know the seal rule, on lanes and one at a time. Both take the
 * same steps, so that chance plays no part: not one may differ.
 *
 * <p>2. Another's integrator finds the same ends: see {@link CommonsMathRun}. Releases for which it
 * disagrees with itself between 1e-12 and 1e-11 are chance and counted apart; of the others at most
 * two in two thousand may differ from the lanes at 1e-12, and at 1e-10 at most two and ten times as
 * many as are chance, since errors are ten times those at 1e-11.
 */
public final class OutcomeCheck {

  private static final long SEED = 20_260_101;
  private static final double LONGEST = 600;

  /** Loose, so that the energy drifts after sealing. */
  private static final Tolerance SEALING = Tolerance.of(1e-5);

  /** A bob with less than this part of its barrier has come to rest. */
  private static final double RESTED = 1e-4;

  private static final int PART = 128;
  private static final int TEXTBOOK_RUNS = 2_048;
  private static final int BENCH_RUNS = 1_024;

  /** A bench's bobs of the first proof come from so far that some meet a magnet or go slack. */
  private static final double BENCH_WIDER = 2;

  private static final Tolerance FINE = Tolerance.of(1e-10);
  private static final double REFERENCE = 1e-12;
  private static final double NEARLY = 1e-11;
  private static final int COMPARED = 2_000;
  private static final int BLOCK = 125;

  /** Time in which a bench begins another block of comparisons [s]. */
  private static final double BENCH_TIME = 25;

  /** How many of 2,000 may differ that are not chance between the two finest tolerances. */
  private static final int MAY_DIFFER = 2;

  /**
   * The lanes' tolerance over that which chance is told by: so much more often may chance strike.
   */
  private static final int TIMES_CHANCE = 10;

  /** Releases told of a layout at most. */
  private static final int TOLD = 5;

  private final LaneProvider provider = LaneProvider.choose();
  private final List<String> failures = new ArrayList<>();

  private OutcomeCheck() {}

  /** Prints both tables; exits with 1 where a proof fails. */
  public static void main(String[] arguments) {
    OutcomeCheck check = new OutcomeCheck();
    System.out.println(
        check.provider.reason() + "; seed " + SEED + "; layouts without loss are left out");
    List<Scene> scenes = check.scenes();
    System.out.println(
        "\nsealed against a run until rest, the same steps, at 1e-5, the loosest of a map");
    System.out.println(
        "| layout | releases | on lanes | one at a time | held | open | sealed, then elsewhere |"
            + " s |\n| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
    scenes.forEach(check::sealedIsFinal);
    System.out.println(
        "\nlanes against Commons Math's DormandPrince853Integrator at 1e-12 (Hairer, Norsett and"
            + " Wanner, Solving Ordinary Differential Equations I, 1993)");
    System.out.println(
        "| layout | releases | chance | given up | lanes at 1e-10 differ | at 1e-12 differ | s |\n"
            + "| --- | ---: | ---: | ---: | ---: | ---: | ---: |");
    scenes.forEach(check::agreesWithAnother);
    System.out.println();
    check.failures.forEach(System.out::println);
    System.out.println(check.failures.isEmpty() ? "all hold" : "FAILED");
    System.exit(check.failures.isEmpty() ? 0 : 1);
  }

  /** A layout made ready. */
  private record Scene(LaneScene scene, Landscape landscape, WellOfPlace wells) {

    /** The state of a release; empty where there is none or the model does not hold. */
    Optional<double[]> start(double[] releases, int i) {
      Motion motion = landscape.motion();
      int k = 4 * i;
      return motion
          .toState(new Release(releases[k], releases[k + 1], releases[k + 2], releases[k + 3]))
          .filter(state -> motion.limits().stream().allMatch(l -> l.margin(state) > 0));
    }

    boolean textbook() {
      return scene.layout() instanceof TextbookLayout;
    }

    /** Part of the barrier left at rest: none where friction is there to hold the bob. */
    double rested() {
      return scene.layout() instanceof BenchLayout bench && bench.loss().pivotTorque() > 0
          ? 0
          : RESTED;
    }

    String tell(double[] releases, int i) {
      return scene.name() + ": " + Arrays.toString(Arrays.copyOfRange(releases, 4 * i, 4 * i + 4));
    }
  }

  private List<Scene> scenes() {
    List<Scene> scenes = new ArrayList<>();
    for (LaneScene scene : LaneScene.twenty()) {
      if (scene.layout().lossless()) {
        System.out.println(scene.name() + ": left out, no loss");
      } else {
        Landscape landscape = Landscape.of(scene.layout());
        scenes.add(new Scene(scene, landscape, new WellOfPlace(landscape)));
      }
    }
    return scenes;
  }

  /** What came of some releases of the first proof. */
  private record Sealed(int lanes, int single, int held, int open, List<String> wrong) {

    Sealed and(Sealed other) {
      List<String> both = new ArrayList<>(wrong);
      both.addAll(other.wrong);
      return new Sealed(
          lanes + other.lanes, single + other.single, held + other.held, open + other.open, both);
    }
  }

  private void sealedIsFinal(Scene scene) {
    long begun = System.nanoTime();
    int count = scene.textbook() ? TEXTBOOK_RUNS : BENCH_RUNS;
    double times = scene.textbook() ? 1 : BENCH_WIDER;
    double[] releases = scene.scene().releases(count, SEED, times);
    // As finders fold them, so that both follow the same path to the bit.
    scene.landscape().symmetry().fold(releases);
    Sealed all =
        IntStream.range(0, count / PART)
            .parallel()
            .mapToObj(part -> sealedPart(scene, releases, part * PART))
            .reduce(new Sealed(0, 0, 0, 0, List.of()), Sealed::and);
    all.wrong().stream().limit(TOLD).forEach(failures::add);
    System.out.printf(
        Locale.ROOT,
        "| %s | %,d | %,d | %,d | %,d | %,d | %,d | %.0f |%n",
        scene.scene().name(),
        all.lanes() + all.single(),
        all.lanes(),
        all.single(),
        all.held(),
        all.open(),
        all.wrong().size(),
        seconds(begun));
  }

  private Sealed sealedPart(Scene scene, double[] releases, int from) {
    // The table that the finder takes at this tolerance, so that both run the same steps.
    Landscape landscape = scene.landscape().asFineAs(SEALING);
    Ends ends = new Ends(releases.length / 4);
    new OutcomeFinders(provider)
        .of(landscape, SEALING, LONGEST)
        .find(releases, from, from + PART, ends);
    int[] indices =
        IntStream.range(from, from + PART)
            .filter(i -> scene.start(releases, i).isPresent())
            .toArray();
    double[][] starts =
        IntStream.of(indices)
            .mapToObj(i -> scene.start(releases, i).orElseThrow())
            .toArray(double[][]::new);
    double rested = scene.rested();
    LaneRunOn.Way[] ways = new LaneRunOn(landscape, provider, SEALING, LONGEST, rested).run(starts);
    ScalarRunOn single = new ScalarRunOn(landscape, SEALING, LONGEST);
    Sealed sum = new Sealed(0, 0, 0, 0, List.of());
    for (int k = 0; k < indices.length; k++) {
      int i = indices[k];
      ReleaseWatch watch = single.sealed(starts[k]);
      RunOn rest = single.untilRest(starts[k], rested);
      Named named = new Named(ends.end(i), ends.sealedAt(i));
      Named alone = new Named(watch.end(), watch.sealedAt());
      sum = sum.and(judge(scene.tell(releases, i), named, ways[k], alone, rest));
    }
    return sum;
  }

  /** An end and when it was certain. */
  private record Named(int end, double time) {

    boolean same(Named other) {
      return end == other.end && Double.compare(time, other.time) == 0;
    }

    boolean open() {
      return end == Ends.UNSETTLED;
    }

    boolean borneOutBy(RunOn rest) {
      return open() || (rest.bearsOut(end) && time <= rest.time());
    }
  }

  /**
   * Lanes hand some releases to the finder of one at a time: their end is that one's to the bit. An
   * end that was certain at the release must bear out on both ways.
   */
  private static Sealed judge(
      String release, Named lanes, LaneRunOn.Way way, Named alone, RunOn aloneRest) {
    List<String> wrong = new ArrayList<>();
    boolean handedOver = lanes.same(alone) && lanes.time() != 0;
    boolean own = !handedOver && lanes.end() >= 0;
    if (!alone.borneOutBy(aloneRest)) {
      wrong.add(release + " one at a time: " + alone + ", until rest " + aloneRest);
    }
    if (own && !lanes.borneOutBy(way.rest())) {
      wrong.add(release + " on lanes: " + lanes + ", until rest " + way.rest());
    }
    if (own ? !way.sealsAt(lanes.end(), lanes.time()) : !handedOver && !lanes.open()) {
      wrong.add(release + " on lanes: " + lanes + " is not a moment of its own path");
    }
    boolean open = lanes.open() || (own ? way.rest().open() : aloneRest.open());
    boolean held = own ? way.rest().held() : aloneRest.held();
    return new Sealed(own ? 1 : 0, handedOver ? 1 : 0, held ? 1 : 0, open ? 1 : 0, wrong);
  }

  /** How a release compares with another's integrator. */
  private enum Likeness {
    NO_RELEASE,
    SAME,
    CHANCE,
    GIVEN_UP,
    /** The lanes differ at their tolerance, and agree at the other's. */
    DIFFERS,
    /** The lanes differ at the other's tolerance too. */
    STILL_DIFFERS
  }

  private void agreesWithAnother(Scene scene) {
    long begun = System.nanoTime();
    double[] releases = scene.scene().releases(COMPARED, SEED + 1, 1);
    Map<Likeness, Integer> found = new EnumMap<>(Likeness.class);
    List<String> differing = new ArrayList<>();
    int done = 0;
    while (done < COMPARED && (scene.textbook() || seconds(begun) < BENCH_TIME)) {
      compare(scene, Arrays.copyOfRange(releases, 4 * done, 4 * (done + BLOCK)), found, differing);
      done += BLOCK;
    }
    int chance = found.getOrDefault(Likeness.CHANCE, 0);
    int givenUp = found.getOrDefault(Likeness.GIVEN_UP, 0);
    int still = found.getOrDefault(Likeness.STILL_DIFFERS, 0);
    int differ = found.getOrDefault(Likeness.DIFFERS, 0) + still;
    int mayDiffer = MAY_DIFFER + TIMES_CHANCE * chance;
    if (differ > mayDiffer || still > MAY_DIFFER || givenUp > 0) {
      failures.add(scene.scene().name() + ": too many differ, or another's integrator gave up");
      differing.stream().limit(TOLD).forEach(failures::add);
    }
    System.out.printf(
        Locale.ROOT,
        "| %s | %,d | %,d | %,d | %,d of %,d | %,d of %,d | %.0f |%n",
        scene.scene().name(),
        done - found.getOrDefault(Likeness.NO_RELEASE, 0),
        chance,
        givenUp,
        differ,
        mayDiffer,
        still,
        MAY_DIFFER,
        seconds(begun));
  }

  private static double seconds(long begun) {
    return 1e-9 * (System.nanoTime() - begun);
  }

  private void compare(
      Scene scene, double[] block, Map<Likeness, Integer> found, List<String> differing) {
    Ends ends = lanes(scene, FINE, block);
    Ends finer = lanes(scene, Tolerance.of(REFERENCE), block);
    Likeness[] likeness =
        IntStream.range(0, BLOCK)
            .parallel()
            .mapToObj(i -> likeness(scene, block, i, ends.end(i), finer.end(i)))
            .toArray(Likeness[]::new);
    for (int i = 0; i < BLOCK; i++) {
      found.merge(likeness[i], 1, Integer::sum);
      if (likeness[i] == Likeness.DIFFERS || likeness[i] == Likeness.STILL_DIFFERS) {
        differing.add(
            scene.tell(block, i) + " on lanes: " + ends.end(i) + ", at 1e-12: " + finer.end(i));
      }
    }
  }

  private Ends lanes(Scene scene, Tolerance tolerance, double[] block) {
    return new ParallelOutcomes(
            new OutcomeFinders(provider).of(scene.landscape(), tolerance, LONGEST))
        .find(
            BLOCK,
            (from, to, out) -> System.arraycopy(block, 4 * from, out, 0, 4 * (to - from)),
            part -> {});
  }

  private static Likeness likeness(Scene scene, double[] block, int i, int end, int finer) {
    Optional<double[]> start = scene.start(block, i);
    if (start.isEmpty()) {
      return end == Ends.CANNOT_START ? Likeness.NO_RELEASE : Likeness.STILL_DIFFERS;
    }
    RunOn fine = run(scene, start.get(), REFERENCE);
    RunOn coarse = run(scene, start.get(), NEARLY);
    if (fine.open() || coarse.open()) {
      return Likeness.GIVEN_UP;
    }
    if (fine.end() != coarse.end()) {
      return Likeness.CHANCE;
    }
    if (fine.bearsOut(end)) {
      return Likeness.SAME;
    }
    return fine.bearsOut(finer) ? Likeness.DIFFERS : Likeness.STILL_DIFFERS;
  }

  private static RunOn run(Scene scene, double[] start, double tolerance) {
    return CommonsMathRun.follow(scene.landscape(), scene.wells(), start, tolerance, LONGEST);
  }
}
