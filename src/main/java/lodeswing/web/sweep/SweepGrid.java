package lodeswing.web.sweep;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lodeswing.core.rig.Release;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutOverrides;
import lodeswing.web.problem.ProblemException;

/**
 * The points of a sweep with their layouts, and the pieces that they are computed in.
 *
 * <p>Points that share a layout share a piece, up to {@value #MOST_IN_PIECE} of them, so that a
 * layout is made ready once and a restart repeats little.
 */
final class SweepGrid {

  /** As many points of one layout as a line of a square sweep has. */
  static final int MOST_IN_PIECE = 32;

  private final SweepRequest request;
  private final List<SweptQuantity> vary;
  private final List<Point> points = new ArrayList<>();
  private final Map<Map<String, String>, Varied> made = new HashMap<>();

  /**
   * A point.
   *
   * @param values of the quantities, in their order
   * @param layout with those values; empty where it is refused
   * @param problem why it is refused
   * @param release in SI; at rest in the middle where none is asked for
   */
  record Point(
      List<Object> values,
      Optional<LayoutDocument> layout,
      Optional<String> problem,
      Release release) {}

  /**
   * Points that are computed together.
   *
   * @param layout the layout of all of them, labels aside
   * @param points their numbers
   */
  record Piece(LayoutDocument layout, List<Integer> points) {}

  /** A layout or why there is none. */
  private record Varied(Optional<LayoutDocument> layout, Optional<String> problem) {}

  private SweepGrid(SweepRequest request) {
    this.request = request;
    this.vary = request.vary();
  }

  /** All points of a sweep. */
  static SweepGrid of(SweepRequest request) {
    return of(request, 1);
  }

  /** Some of its points, evenly chosen: about so many at most. */
  static SweepGrid some(SweepRequest request, int most) {
    return of(request, 1 + (request.points() - 1) / most);
  }

  private static SweepGrid of(SweepRequest request, int stride) {
    SweepGrid grid = new SweepGrid(request);
    int last = grid.vary.get(grid.vary.size() - 1).values().size();
    for (int i = 0; i < request.points(); i += stride) {
      List<Object> values = new ArrayList<>();
      if (grid.vary.size() > 1) {
        values.add(grid.vary.get(0).values().get(i / last));
      }
      values.add(grid.vary.get(grid.vary.size() - 1).values().get(i % last));
      grid.add(values);
    }
    return grid;
  }

  private void add(List<Object> values) {
    Map<String, String> overrides = new LinkedHashMap<>();
    Map<String, Double> varied = new HashMap<>();
    for (int k = 0; k < vary.size(); k++) {
      if (vary.get(k).ofRelease()) {
        varied.put(vary.get(k).name(), (Double) values.get(k));
      } else {
        overrides.put(vary.get(k).name(), SweptQuantity.written(values.get(k)));
      }
    }
    Varied layout = made.computeIfAbsent(overrides, this::varied);
    points.add(new Point(values, layout.layout(), layout.problem(), release(varied)));
  }

  private Release release(Map<String, Double> varied) {
    double unit = 1 / request.layout().shownPerUnit();
    double[] state = new double[4];
    int k = 0;
    for (String name : List.of("x", "y", "vx", "vy")) {
      double fixed = request.releases() ? request.release().number(name) : 0;
      state[k] = varied.getOrDefault(name, fixed) * unit;
      k++;
    }
    return new Release(state[0], state[1], state[2], state[3]);
  }

  private Varied varied(Map<String, String> overrides) {
    try {
      return new Varied(
          Optional.of(
              LayoutOverrides.apply(request.layout(), overrides, List.of())
                  .within(request.layout())),
          Optional.empty());
    } catch (ProblemException e) {
      return new Varied(Optional.empty(), Optional.of(said(e)));
    }
  }

  /** A problem on one line, as a cell has room for. */
  static String said(ProblemException problem) {
    String faults =
        problem.faults().stream()
            .map(fault -> fault.pointer().replaceFirst("^[?/]", "") + " " + fault.detail())
            .collect(Collectors.joining("; "));
    return problem.code().code() + ": " + (faults.isEmpty() ? problem.getMessage() : faults);
  }

  List<Point> points() {
    return List.copyOf(points);
  }

  /** The pieces, in the order of their first points. */
  List<Piece> pieces() {
    Map<String, List<Integer>> byMotion = new LinkedHashMap<>();
    for (int i = 0; i < points.size(); i++) {
      int point = i;
      points
          .get(i)
          .layout()
          .ifPresent(
              layout ->
                  byMotion.computeIfAbsent(layout.physicsKey(), k -> new ArrayList<>()).add(point));
    }
    List<Piece> pieces = new ArrayList<>();
    for (List<Integer> alike : byMotion.values()) {
      LayoutDocument layout = points.get(alike.get(0)).layout().orElseThrow();
      for (int from = 0; from < alike.size(); from += MOST_IN_PIECE) {
        int to = Math.min(alike.size(), from + MOST_IN_PIECE);
        pieces.add(new Piece(layout, List.copyOf(alike.subList(from, to))));
      }
    }
    return pieces;
  }
}
