package lodeswing.web.basin;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.Ends;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.outcome.ParallelOutcomes;
import lodeswing.core.outcome.SharedFinder;
import lodeswing.job.Computation;
import lodeswing.job.ResultStore;
import lodeswing.job.Stages;
import lodeswing.job.StoredResult;
import lodeswing.job.WorkCost;
import lodeswing.web.body.Body;
import lodeswing.web.body.BodyReader;
import lodeswing.web.landscape.Landscapes;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.restpoint.RestPlace;
import org.springframework.stereotype.Component;

/** Keeps lists of releases and computes their ends. */
@Component
final class OutcomeListComputations {

  private static final String KIND = "outcomes";

  private static final String REQUEST_KIND = "outcomes-request";

  /** A single release has no pixel that an error may be measured against: as traces, almost. */
  private static final Tolerance TOLERANCE = new Tolerance(1e-11, 1e-10);

  private final ResultStore store;
  private final LayoutStore layouts;
  private final Landscapes landscapes;
  private final OutcomeFinders finders;
  private final Limits limits;
  private final Clock clock;

  OutcomeListComputations(
      ResultStore store,
      LayoutStore layouts,
      Landscapes landscapes,
      OutcomeFinders finders,
      Limits limits,
      Clock clock) {
    this.store = store;
    this.layouts = layouts;
    this.landscapes = landscapes;
    this.finders = finders;
    this.limits = limits;
    this.clock = clock;
  }

  /** Keeps what was asked. */
  void save(ReleaseList list) {
    String canonical = list.stored().toJson();
    store.saveIfAbsent(
        StoredResult.document(
            list.listId(),
            REQUEST_KIND,
            list.listId(),
            canonical.getBytes(StandardCharsets.UTF_8),
            clock.instant()));
  }

  /**
   * What was asked under an id.
   *
   * @throws ProblemException {@code not-found}
   */
  ReleaseList get(String listId) {
    Body stored =
        store
            .find(listId)
            .filter(result -> result.kind().equals(REQUEST_KIND))
            .map(result -> BodyReader.read(result.bytes(), OutcomeShapes.STORED))
            .orElseThrow(
                () ->
                    new ProblemException(
                        ProblemCode.NOT_FOUND,
                        "No list of this id is stored; post it again.",
                        List.of()));
    ReleaseList list =
        ReleaseList.of(
                layouts.get(stored.text("layoutId")),
                stored.without("layoutId", "settled"),
                stored.flag("settled"),
                Integer.MAX_VALUE)
            .asNamed(listId);
    if (list.revision() != list.today().revision()) {
      // So that the address of today's answer, which an older one names, leads there.
      save(list.today());
    }
    return list;
  }

  /** The work for a list. */
  Computation of(ReleaseList list) {
    return new Computation(
            list.key(limits.followedS()),
            KIND,
            "/v1/outcomes/" + list.listId(),
            progress -> {
              WorkCost cost = landscapes.costOf(list.layout());
              Stages stages = cost.stages(progress, cost.list(list.count(), list.settled()));
              Landscape landscape = landscapes.of(list.layout(), LayoutPlace.STORED, stages.next());
              List<RestPlace> places =
                  landscape.restPoints().list().stream().map(RestPlace::of).toList();
              return ends(landscape, list, places, stages.next()).written();
            })
        .remadeFrom(list.listId())
        .costing(landscapes.costOf(list.layout()).list(list.count(), list.settled()));
  }

  private StoredEnds ends(
      Landscape landscape,
      ReleaseList list,
      List<RestPlace> places,
      Computation.Progress progress) {
    double[] releases = list.inSi();
    SharedFinder finder =
        list.settled()
            ? finders.settling(landscape, TOLERANCE, limits.followedS())
            : finders.of(landscape, TOLERANCE, limits.followedS());
    Ends ends =
        new ParallelOutcomes(finder)
            .find(
                list.count(),
                (from, to, out) -> System.arraycopy(releases, 4 * from, out, 0, 4 * (to - from)),
                progress::report);
    return new StoredEnds(places, ends, list.settled());
  }
}
