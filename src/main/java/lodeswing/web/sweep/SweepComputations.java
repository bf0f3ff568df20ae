package lodeswing.web.sweep;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
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

  private static final String KIND = "sweep";
  private static final String STILL = "A piece of the sweep is still being computed.";
  private static final int PLANS = 20;
  private static final int MOST_FORETOLD = 16;

  private final Landscapes landscapes;
  private final PreparingCost preparing;
  private final Computations computations;
  private final NeededResults results;
  private final OutcomeFinders finders;
  private final Limits limits;
  private final Cache<String, SweepGrid> grids =
      Caffeine.newBuilder().executor(Runnable::run).maximumSize(PLANS).build();

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

  /** The points of a sweep. */
  SweepGrid grid(SweepRequest request) {
    return grids.get(request.sweepId(), id -> new SweepGrid(request));
  }

  /** The work for a sweep. */
  Computation of(SweepRequest request) {
    Computation work =
        new Computation(
                request.key(limits),
                KIND,
                request.url(),
                progress -> table(request, progress).written())
            .remadeFrom(request.sweepId());
    boolean there = computations.find(work.key().id()).isPresent();
    return there || !work.key().current() ? work : work.costing(cost(request));
  }

  /** What a sweep costs, about, in releases. */
  long cost(SweepRequest request) {
    long cost = 1;
    for (long piece : costs(request, grid(request).pieces())) {
      cost += piece;
    }
    return cost;
  }

  /**
   * What each piece costs. Making layouts ready is foretold of some of them, evenly chosen: to
   * foretell all takes too long for a request.
   */
  private long[] costs(SweepRequest request, List<SweepGrid.Piece> pieces) {
    long foretold = 0;
    int some = 0;
    for (int i = 0; i < pieces.size(); i += 1 + (pieces.size() - 1) / MOST_FORETOLD) {
      double work = preparing.of(pieces.get(i).layout());
      foretold +=
          work > limits.preparingWork()
              ? 0
              : landscapes.costOf(pieces.get(i).layout()).makingReady();
      some++;
    }
    Set<String> seen = new HashSet<>();
    long[] costs = new long[pieces.size()];
    for (int i = 0; i < costs.length; i++) {
      SweepGrid.Piece piece = pieces.get(i);
      boolean first = seen.add(piece.layout().physicsKey());
      long count = piece.points().size();
      long pixels = first ? (long) request.side() * request.side() : 0;
      costs[i] =
          (first ? foretold / some : 0)
              + new WorkCost(piece.layout().layout(), true, 0)
                  .sweepPiece(
                      count * request.asked().runs(),
                      request.asked().settled(),
                      count * request.tries(),
                      pixels);
    }
    return costs;
  }

  private StoredSweep table(SweepRequest request, Computation.Progress progress) {
    SweepGrid grid = grid(request);
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
