package lodeswing.web.bundle;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import lodeswing.job.Computation;
import lodeswing.job.Computations;
import lodeswing.job.Recipe;
import lodeswing.job.Stages;
import lodeswing.job.StoredResult;
import lodeswing.job.WorkCost;
import lodeswing.sheet.Paper;
import lodeswing.web.bundle.BundlePlan.Planned;
import lodeswing.web.jobs.NeededResults;
import lodeswing.web.landscape.Landscapes;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.worksheet.SurePlace;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/**
 * The work behind bundles, and how it is done again from its words: every result that a file is
 * made of is computed and stored by itself, as a request for that file would have it.
 */
@Configuration(proxyBeanMethods = false)
class BundleComputations {

  private static final String STILL = "A part of the bundle is still being computed.";
  private static final int SERVERS_FAULT = 500;

  /** Which one has no effect on what is computed. */
  private static final BundleStyle ANY =
      new BundleStyle(Locale.ENGLISH, Paper.A4, Optional.empty(), false, false);

  private final BundleParts parts;
  private final Landscapes landscapes;
  private final Computations computations;
  private final NeededResults results;

  BundleComputations(
      BundleParts parts, Landscapes landscapes, Computations computations, NeededResults results) {
    this.parts = parts;
    this.landscapes = landscapes;
    this.computations = computations;
    this.results = results;
  }

  @Bean
  Recipe bundleRecipe(LayoutStore layouts) {
    return new Recipe(
        BundleRequest.KIND, words -> of(BundleRequest.of(layouts.get(words.get(0)), words)));
  }

  /** The work for a request, whose layout is stored. */
  Computation of(BundleRequest request) {
    Computation work =
        new Computation(
                request.key(),
                BundleRequest.KIND,
                request.url(),
                progress -> compute(request, progress).written())
            .remadeFrom(request.words().toArray(String[]::new));
    // Telling the cost asks every resource, which is not worth it where nothing is computed.
    boolean kept = computations.find(work.key().id()).isPresent();
    return kept ? work : work.costing(landscapes.costOf(request.layout()).together(costs(request)));
  }

  /** A result of a file, from memory, the store or computed on this thread. */
  StoredResult resultNow(Computation work) {
    return results.resultNow(work, STILL);
  }

  /** What each file costs by itself; 0 for those that are made of an earlier one's result. */
  private List<Long> costs(BundleRequest request) {
    SurePlace release = request.release().orElseGet(() -> SurePlace.untried(request.layout()));
    List<String> known = new ArrayList<>();
    List<Long> costs = new ArrayList<>();
    for (Planned file : new BundlePlan(request, ANY).files(release)) {
      Optional<Computation> work = work(request, file);
      costs.add(
          work.filter(one -> !known.contains(one.key().id()))
              .map(Computation::releases)
              .orElse(0L));
      work.ifPresent(one -> known.add(one.key().id()));
    }
    return costs;
  }

  /** The work of a file; nothing where it needs none, or where it is refused. */
  private Optional<Computation> work(BundleRequest request, Planned file) {
    if (file.isOfMap() || file.group().filter(request.without()::contains).isPresent()) {
      return Optional.empty();
    }
    try {
      return parts.asked(file, request.layout().layoutId()).work();
    } catch (ProblemException e) {
      // Told when the bundle is written, by the same refusal.
      return Optional.empty();
    }
  }

  private StoredBundle compute(BundleRequest request, Computation.Progress progress) {
    WorkCost cost = landscapes.costOf(request.layout());
    SurePlace untried = SurePlace.untried(request.layout());
    Optional<SurePlace> release = request.release();
    SortedMap<String, StoredBundle.Reason> failed = new TreeMap<>();
    var plan = new BundlePlan(request, ANY);
    long[] costs = costs(request).stream().mapToLong(cost::afterwards).toArray();
    boolean ready = cost.makingReady() == 0;
    Stages stages = new Stages(progress, withReady(costs, cost.makingReady()));
    Computation.Progress making = stages.next();
    for (int k = 0; k < costs.length; k++) {
      Planned file = plan.files(release.orElse(untried)).get(k);
      Computation.Progress stage = stages.next();
      Optional<Computation> work = work(request, file);
      if (work.isEmpty()) {
        continue;
      }
      Optional<StoredResult> result = tried(work.get(), ready ? stage : making, failed);
      ready |= result.isPresent();
      if (release.isEmpty() && file.isOf(BundleGroup.WORKSHEET)) {
        release = result.flatMap(own -> SurePlace.of(request.layout(), own.bytes()));
      }
    }
    return new StoredBundle(release.orElse(untried), failed);
  }

  private static long[] withReady(long[] costs, long ready) {
    long[] all = new long[costs.length + 1];
    all[0] = ready;
    System.arraycopy(costs, 0, all, 1, costs.length);
    return all;
  }

  /**
   * A result, or nothing where there is a lasting reason why there is none: what passes by itself
   * is thrown, so that a bundle that lacks something lacks it each time.
   */
  private Optional<StoredResult> tried(
      Computation work, Computation.Progress stage, SortedMap<String, StoredBundle.Reason> failed) {
    if (failed.containsKey(work.key().id())) {
      return Optional.empty();
    }
    try {
      return Optional.of(resultNow(work.alsoTelling(stage)));
    } catch (ProblemException e) {
      if (e.code().status() >= SERVERS_FAULT) {
        throw e;
      }
      failed.put(
          work.key().id(),
          new StoredBundle.Reason(e.code(), Optional.ofNullable(e.getMessage()).orElse("")));
      return Optional.empty();
    }
  }
}
