package lodeswing.web.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import lodeswing.analysis.fit.FitParameter;
import lodeswing.analysis.fit.FitParameter.Role;
import lodeswing.analysis.fit.FitSpec;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.landscape.PlanScale;
import lodeswing.core.motion.FreeMotion;
import lodeswing.core.motion.NearbyMotion;
import lodeswing.core.recording.Recording;
import lodeswing.core.regression.FreeParameter;
import lodeswing.core.rig.Layout;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutOverrides;
import lodeswing.web.problem.ProblemException;

/** The quantities behind a recording: their names, units, and what the analysis is asked. */
final class FitQuantities {

  /** Names of the release and the frame, in the order of {@link Role}. */
  static final List<String> NAMES =
      List.of("x", "y", "vx", "vy", "releaseTimeS", "originX", "originY", "turnDeg", "scale");

  /** Those of the release, which are sought unless it is given. */
  static final Set<String> OF_RELEASE = Set.of("x", "y", "vx", "vy");

  private static final double DEGREE = Math.PI / 180;

  /** A length that a curve shows plainly, as a part of the swing. */
  private static final double LENGTH_PART = 0.1;

  private static final double TURN_SCALE = 0.1;
  private static final double TIME_PART = 0.02;
  private static final double FACTOR_SCALE = 0.05;
  private static final double FIGURE_PART = 0.05;

  /** Part of a figure's scale over which the magnets' energy is taken for a quadratic. */
  private static final double NEARBY_PART = 0.25;

  /** Times the recorded swing that a guess of the frame may reach to. */
  private static final double BEYOND = 1.3;

  private static final int MOST_ANCHORS = 12;

  /** A figure is sought between a fifth and five times its start. */
  private static final double WIDEST = 5;

  private final FitRequest request;
  private final double unit;

  FitQuantities(FitRequest request) {
    this.request = request;
    this.unit = request.unit();
  }

  /** Figures of the layout that are sought, in order. */
  List<String> figures() {
    return request.unknown().stream().filter(name -> !NAMES.contains(name)).toList();
  }

  /** Names of all quantities, in the analysis's order. */
  List<String> names() {
    List<String> names = new ArrayList<>(NAMES);
    names.addAll(figures());
    return names;
  }

  /** Names of those that are sought, in the same order. */
  List<String> sought() {
    return names().stream().filter(this::isSought).toList();
  }

  private boolean isSought(String name) {
    boolean named = request.unknown().contains(name);
    if (!OF_RELEASE.contains(name) || request.release().isPresent()) {
      return named;
    }
    // A bob that is held until it is let go has no push, unless one is sought.
    boolean push = name.startsWith("v") && request.unknown().contains("releaseTimeS");
    return named || !push;
  }

  /** What one of a quantity's unit is in the analysis's. */
  double inSi(String name) {
    return switch (name) {
      case "x", "y", "vx", "vy", "originX", "originY" -> unit;
      case "turnDeg" -> DEGREE;
      default -> 1;
    };
  }

  /** Where a quantity begins, or what it is known to be, in its own unit. */
  double begin(String name, Recording recording) {
    OptionalDouble start = request.start(name);
    if (start.isPresent()) {
      return start.getAsDouble();
    }
    return switch (name) {
      case "x", "y", "vx", "vy" ->
          request.release().map(release -> release.number(name)).orElse(0.0);
      case "releaseTimeS" -> request.unknown().contains(name) ? recording.heldUntil() : 0;
      case "originX", "originY", "turnDeg" -> request.frame().number(name);
      case "scale" -> 1;
      default -> LayoutOverrides.figure(request.layout(), name).orElse(0);
    };
  }

  /** What the analysis is asked. */
  FitSpec spec(int mostPaths) {
    Recording recording = request.recording();
    double swing = recording.size();
    Layout layout = request.layout().layout();
    double rate = FreeMotion.of(layout).naturalRate();
    double spacing = PlanScale.of(layout).spacing(swing);
    List<Vec3> places = PlanScale.magnetPlaces(layout);
    List<FitParameter> parameters = new ArrayList<>();
    for (String name : names()) {
      parameters.add(parameter(name, recording, swing, rate));
    }
    return new FitSpec(
        recording,
        parameters,
        mirroring(),
        rigs(parameters, reach(swing, places))::of,
        rate,
        spacing,
        places.subList(0, Math.min(MOST_ANCHORS, places.size())),
        mostPaths);
  }

  private FitSpec.Mirroring mirroring() {
    return switch (request.frame().text("mirrored")) {
      case "yes" -> FitSpec.Mirroring.MIRRORED;
      case "unknown" -> FitSpec.Mirroring.UNKNOWN;
      default -> FitSpec.Mirroring.NONE;
    };
  }

  private FitParameter parameter(String name, Recording recording, double swing, double rate) {
    double start = begin(name, recording) * inSi(name);
    Role role = Role.at(names().indexOf(name));
    boolean given = request.start(name).isPresent() || framed(name);
    FreeParameter value =
        switch (role) {
          case X, Y, ORIGIN_X, ORIGIN_Y ->
              FreeParameter.unbounded(name, start, LENGTH_PART * swing);
          case VX, VY -> FreeParameter.unbounded(name, start, LENGTH_PART * swing * rate);
          case TURN -> FreeParameter.unbounded(name, start, TURN_SCALE);
          case RELEASE_TIME ->
              new FreeParameter(
                  name,
                  start,
                  TIME_PART / rate,
                  0,
                  Math.max(start, recording.since(recording.count() - 1)));
          case SCALE ->
              new FreeParameter(name, start, FACTOR_SCALE, start / WIDEST, start * WIDEST);
          case FIGURE -> figure(name, start);
        };
    return new FitParameter(role, value, isSought(name), given);
  }

  /** A frame that is stated is where a search begins, and nowhere else. */
  private boolean framed(String name) {
    return Set.of("originX", "originY", "turnDeg").contains(name)
        && request.frame().number(name) != 0;
  }

  private FreeParameter figure(String name, double start) {
    NumberShape shape =
        LayoutOverrides.numeric(request.layout(), name)
            .orElse(NumberShape.between(-Double.MAX_VALUE, Double.MAX_VALUE));
    double least = start > 0 ? Math.max(shape.least(), start / WIDEST) : shape.least();
    double most = start > 0 ? Math.min(shape.most(), start * WIDEST) : shape.most();
    double scale = start == 0 ? FIGURE_PART : FIGURE_PART * Math.abs(start);
    return new FreeParameter(name, start, scale, least, most);
  }

  /** The layout with figures in place of its own. */
  static LayoutDocument changed(LayoutDocument layout, Map<String, Double> figures) {
    Map<String, String> written = new LinkedHashMap<>();
    figures.forEach((name, value) -> written.put(name, Numbers.shortest(value)));
    return LayoutOverrides.apply(layout, written, Set.of());
  }

  /** How far from the plate's middle guesses of the frame may lead the bob. */
  private static double reach(double swing, List<Vec3> places) {
    double farthest = places.stream().mapToDouble(at -> Math.hypot(at.x(), at.y())).max().orElse(0);
    return Math.max(BEYOND * swing, farthest + swing);
  }

  /** The rigs of the layout with other figures. */
  private NearbyMotion rigs(List<FitParameter> parameters, double reach) {
    List<String> figures = figures();
    double[] steps =
        parameters.subList(Role.FIGURE.place(), parameters.size()).stream()
            .mapToDouble(parameter -> NEARBY_PART * parameter.value().scale())
            .toArray();
    return new NearbyMotion(values -> rig(figures, values), steps, reach);
  }

  private Optional<Layout> rig(List<String> figures, List<Double> values) {
    Map<String, Double> named = new LinkedHashMap<>();
    for (int k = 0; k < figures.size(); k++) {
      named.put(figures.get(k), values.get(k));
    }
    try {
      return Optional.of(changed(request.layout(), named).layout());
    } catch (ProblemException e) {
      return Optional.empty();
    }
  }
}
