package lodeswing.web.sweep;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import lodeswing.analysis.sweep.LayoutFigures;
import lodeswing.analysis.sweep.MapFigures;
import lodeswing.analysis.sweep.ReleaseFigures;
import lodeswing.core.chance.EndCounts;
import lodeswing.core.chance.Odds;
import lodeswing.core.chance.OddsSpec;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.rig.Release;
import lodeswing.job.Computation;
import lodeswing.job.ComputationKey;
import lodeswing.job.Computations;
import lodeswing.job.Stages;
import lodeswing.job.WorkCost;
import lodeswing.web.body.Numbers;
import lodeswing.web.jobs.NeededResults;
import lodeswing.web.landscape.Landscapes;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.landscape.PreparingCost;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.restpoint.RestPlace;
import org.springframework.stereotype.Component;

/**
 * The work behind sweeps. Each piece is a result of its own, kept as soon as it is there, so that a
 * sweep goes on after a restart where it was, and sweeps that have points in common share them.
 */
@Component
final class SweepComputations {

  private static final String STILL = "A piece of the sweep is still being computed.";
  private static final int MOST_FORETOLD = 6;

  private final Landscapes landscapes;
  private final PreparingCost preparing;
  private final Computations computations;
  private final NeededResults results;
  private final OutcomeFinders finders;
  private final Limits limits;

  SweepComputations(
      Landscapes landscapes,
      PreparingCost preparing,
      Computations computations,
      NeededResults results,
      OutcomeFinders finders,
      Limits limits) {
    this.landscapes = landscapes;
    this.preparing = preparing;
    this.computations = computations;
    this.results = results;
    this.finders = finders;
    this.limits = limits;
  }

  /** The work for a sweep. */
  Computation of(SweepRequest request) {
    Computation work =
        new Computation(
                request.key(limits),
                request.kind().word(),
                request.url(),
                progress -> table(request, progress).written())
            .remadeFrom(request.id());
    boolean there = computations.find(work.key().id()).isPresent();
    return there || !work.key().current() ? work : work.costing(cost(request));
  }

  /**
   * What a sweep costs, about, in releases. Making layouts ready is foretold of some of them: to
   * make all of them takes too long for a request.
   */
  private long cost(SweepRequest request) {
    long points = request.points();
    long pixels = (long) request.layouts() * request.side() * request.side();
    return 1
        + request.layouts() * makingReady(request)
        + work(request, points)
        + new WorkCost(request.layout().layout(), true, 0).sweepPiece(0, false, 0, pixels);
  }

  /** Making one of its layouts ready, on average. */
  private long makingReady(SweepRequest request) {
    long foretold = 0;
    int some = 0;
    for (SweepGrid.Piece piece : SweepGrid.some(request, MOST_FORETOLD).pieces()) {
      boolean made = preparing.of(piece.layout()) <= limits.preparingWork();
      foretold += made ? landscapes.costOf(piece.layout()).makingReady() : 0;
      some++;
    }
    return some == 0 ? 0 : foretold / some;
  }

  /** Releases and odds of some points. */
  private static long work(SweepRequest request, long points) {
    return new WorkCost(request.layout().layout(), true, 0)
        .sweepPiece(
            points * request.asked().runs(),
            request.asked().settled(),
            points * request.tries(),
            0);
  }

  /** What each piece costs. */
  private long[] costs(SweepRequest request, List<SweepGrid.Piece> pieces) {
    long ready = makingReady(request);
    Set<String> seen = new HashSet<>();
    return pieces.stream()
        .mapToLong(
            piece ->
                work(request, piece.points().size())
                    + (seen.add(piece.layout().physicsKey()) ? ready : 0))
        .toArray();
  }

  private StoredSweep table(SweepRequest request, Computation.Progress progress) {
    SweepGrid grid = SweepGrid.of(request);
    List<SweepGrid.Piece> pieces = grid.pieces();
    Stages stages = new Stages(progress, costs(request, pieces));
    Map<Integer, List<Object>> cells = new HashMap<>();
    for (SweepGrid.Piece piece : pieces) {
      Computation.Progress stage = stages.next();
      stage.report(0);
      fill(request, grid, piece, stage, cells);
    }
    int measured = new SweepColumns(request).all().size() - request.vary().size();
    List<List<Object>> rows = new ArrayList<>();
    for (int i = 0; i < grid.points().size(); i++) {
      SweepGrid.Point point = grid.points().get(i);
      List<Object> row = new ArrayList<>(point.values());
      row.addAll(cells.computeIfAbsent(i, k -> refused(measured, point.problem().orElse(""))));
      rows.add(row);
    }
    return new StoredSweep(limits.durationS(), rows);
  }

  /** Cells without figures, and the reason. */
  private static List<Object> refused(int measured, String reason) {
    List<Object> cells = new ArrayList<>();
    for (int k = 1; k < measured; k++) {
      cells.add(Optional.empty());
    }
    cells.add(reason);
    return cells;
  }

  private void fill(
      SweepRequest request,
      SweepGrid grid,
      SweepGrid.Piece piece,
      Computation.Progress progress,
      Map<Integer, List<Object>> cells) {
    try {
      preparing.check(piece.layout(), LayoutPlace.STORED);
      List<Release> releases =
          request.releases()
              ? piece.points().stream().map(i -> grid.points().get(i).release()).toList()
              : List.of();
      WorkCost cost = landscapes.costOf(piece.layout());
      long pixels = (long) request.side() * request.side();
      long alone =
          cost.sweepPiece(
              (long) releases.size() * request.asked().runs(),
              request.asked().settled(),
              (long) releases.size() * request.tries(),
              0);
      Stages stages = new Stages(progress, alone, cost.sweepPiece(0, false, 0, pixels));
      StoredPiece found =
          StoredPiece.read(
              results.now(
                  piece(request, piece.layout(), releases).alsoTelling(stages.next()), STILL));
      Optional<MapFigures> map =
          request.window().isPresent()
              ? Optional.of(
                  StoredPiece.readMap(
                      results.now(map(request, piece.layout()).alsoTelling(stages.next()), STILL)))
              : Optional.empty();
      for (int k = 0; k < piece.points().size(); k++) {
        int i = piece.points().get(k);
        LayoutDocument layout = grid.points().get(i).layout().orElseThrow();
        Optional<ReleaseFigures> release =
            releases.isEmpty() ? Optional.empty() : Optional.of(found.releases().get(k));
        Optional<EndCounts> hand =
            found.hands().isEmpty() ? Optional.empty() : Optional.of(found.hands().get(k));
        cells.put(i, new PointCells(layout, found, release, hand, map).of(request.measures()));
      }
    } catch (ProblemException e) {
      if (e.code() != ProblemCode.TOO_COSTLY) {
        throw e;
      }
      int measured = new SweepColumns(request).all().size() - request.vary().size();
      String reason = e.code().code() + ": " + e.getMessage();
      piece.points().forEach(i -> cells.put(i, refused(measured, reason)));
    }
  }

  /** A piece, named by what moves alone: other sweeps and other labels share it. */
  private Computation piece(SweepRequest request, LayoutDocument layout, List<Release> releases) {
    ReleaseFigures.Asked asked = request.asked();
    String listed =
        releases.stream()
            .flatMapToDouble(one -> DoubleStream.of(one.x(), one.y(), one.vx(), one.vy()))
            .mapToObj(Numbers::shortest)
            .collect(Collectors.joining(",", "[", "]"));
    var key =
        new ComputationKey(
            "spc",
            "sweep-piece|"
                + limits.durationS()
                + "|"
                + limits.followedS()
                + "|"
                + asked
                + "|"
                + request.handKey()
                + "|"
                + listed
                + "|"
                + layout.physicsKey(),
            request.revision());
    return new Computation(
        key,
        "sweep-piece",
        request.url(),
        progress -> {
          WorkCost cost = landscapes.costOf(layout);
          long runs = (long) releases.size() * asked.runs();
          long tries = (long) releases.size() * request.tries();
          WorkCost ready = cost.madeReady();
          Stages stages =
              new Stages(
                  progress,
                  cost.makingReady(),
                  ready.sweepPiece(runs, asked.settled(), 0, 0),
                  ready.sweepPiece(0, false, tries, 0));
          Landscape landscape = landscapes.of(layout, LayoutPlace.STORED, stages.next());
          return new StoredPiece(
                  landscape.restPoints().list().stream().map(RestPlace::of).toList(),
                  LayoutFigures.of(landscape),
                  ReleaseFigures.of(
                      landscape,
                      releases,
                      asked,
                      finders,
                      limits.durationS(),
                      stages.next()::report),
                  hands(request, landscape, releases, stages.next()))
              .written();
        });
  }

  private List<EndCounts> hands(
      SweepRequest request,
      Landscape landscape,
      List<Release> releases,
      Computation.Progress progress) {
    List<EndCounts> hands = new ArrayList<>();
    for (int k = 0; k < releases.size(); k++) {
      double begun = k;
      Optional<OddsSpec> spec = request.odds(releases.get(k), limits);
      spec.ifPresent(
          asked ->
              hands.add(
                  new Odds(landscape, asked.hand(), finders, asked.longest())
                      .count(asked, part -> progress.report((begun + part) / releases.size()))));
    }
    return hands;
  }

  private Computation map(SweepRequest request, LayoutDocument layout) {
    var window = request.window().orElseThrow();
    var key =
        new ComputationKey(
            "smp",
            "sweep-map|"
                + limits.followedS()
                + "|"
                + request.canonical().object("map").toJson()
                + "|"
                + layout.physicsKey(),
            request.revision());
    return new Computation(
        key,
        "sweep-map",
        request.url(),
        progress -> {
          WorkCost cost = landscapes.costOf(layout);
          long pixels = (long) request.side() * request.side();
          Stages stages = cost.stages(progress, cost.map(pixels, false));
          Landscape landscape = landscapes.of(layout, LayoutPlace.STORED, stages.next());
          return StoredPiece.written(
              MapFigures.of(
                  landscape,
                  window,
                  request.side(),
                  finders,
                  limits.followedS(),
                  stages.next()::report));
        });
  }
}
