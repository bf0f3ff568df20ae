package lodeswing.web.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.SteelBacking;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.core.suspension.Suspension;
import lodeswing.web.body.Body;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemException;

/** Maps a canonical layout to SI and checks what only shows when all of it is seen together. */
final class LayoutMapper {
  private final Body layout;
  private final SentPlaces places;
  private final LayoutFindings findings = new LayoutFindings();

  LayoutMapper(CanonicalForm form) {
    this.layout = form.body();
    this.places = form.places();
  }

  /** What is odd about the layout; complete after {@link #map}. */
  List<LayoutWarning> warnings() {
    return findings.warnings();
  }

  /**
   * The layout in SI.
   *
   * @throws ProblemException {@code invalid-request} or {@code impossible-layout} with every fault
   */
  Layout map() {
    return layout.text("model").equals("bench") ? bench() : textbook();
  }

  /**
   * What is wrong with single parts; what they are to each other is left out. Takes the place of
   * {@link #map} where other figures of the layout cannot be read.
   */
  List<Fault> faultsOfParts() {
    if (layout.text("model").equals("bench")) {
      var pendulum = new PendulumMapper(layout, places, findings);
      Parts parts = parts(new ClearanceReview(layout, places, findings), pendulum);
      parts.suspension.ifPresent(pendulum::loss);
    }
    return findings.faults().listed();
  }

  private Layout bench() {
    var clearance = new ClearanceReview(layout, places, findings);
    var pendulum = new PendulumMapper(layout, places, findings);
    Parts parts = parts(clearance, pendulum);
    clearance.ofMagnets(parts.placed.stream().map(p -> p.map(MagnetMapper.Placed::solid)).toList());
    var loss = parts.suspension.map(pendulum::loss);
    findings.refuseIfAny();
    var bench =
        new BenchLayout(
            parts.suspension.orElseThrow(LayoutMapper::unexplained),
            parts.bob,
            layout.number("gapMm") / 1000,
            parts.placed.stream()
                .map(p -> p.orElseThrow(LayoutMapper::unexplained).magnet())
                .toList(),
            layout.findObject("backing").map(b -> new SteelBacking(b.number("topMm") / 1000)),
            layout.number("localGravityMPerS2"),
            loss.orElseThrow(LayoutMapper::unexplained));
    clearance.ofWhole(bench);
    return bench;
  }

  /**
   * The parts by themselves.
   *
   * @param placed the magnets; empty where one has a fault
   * @param bob the bob's magnet
   * @param suspension what it hangs on
   */
  private record Parts(
      List<Optional<MagnetMapper.Placed>> placed,
      Optional<BenchLayout.BobMagnet> bob,
      Optional<Suspension> suspension) {}

  private Parts parts(ClearanceReview clearance, PendulumMapper pendulum) {
    var magnetMapper = new MagnetMapper(findings);
    var placed = new ArrayList<Optional<MagnetMapper.Placed>>();
    List<Body> magnets = layout.objects("magnets");
    for (int i = 0; i < magnets.size(); i++) {
      placed.add(magnetMapper.placed(magnets.get(i), i, places));
    }
    Optional<BenchLayout.BobMagnet> bob =
        layout.findObject("bobMagnet").flatMap(b -> bob(b, magnetMapper));
    clearance.ofGap();
    return new Parts(
        List.copyOf(placed), bob, bobIsWhole() ? pendulum.suspension() : Optional.empty());
  }

  private Optional<BenchLayout.BobMagnet> bob(Body magnet, MagnetMapper mapper) {
    Optional<Magnet> mapped =
        mapper.magnet(
            magnet, places.of("/bobMagnet/grade"), places.of("/bobMagnet/innerDiameterMm"));
    return mapped.map(
        m -> new BenchLayout.BobMagnet(m, MagnetMapper.pole(magnet.text("poleDown"))));
  }

  /** A ring whose hole is too wide has no shape; the mapper of magnets has said so. */
  private boolean bobIsWhole() {
    return layout
        .findObject("bobMagnet")
        .filter(b -> b.has("innerDiameterMm"))
        .map(b -> b.number("innerDiameterMm") < b.number("diameterMm"))
        .orElse(true);
  }

  private Layout textbook() {
    var attractors = new ArrayList<TextbookLayout.Attractor>();
    var seen = new HashMap<List<Double>, Integer>();
    for (Body magnet : layout.objects("magnets")) {
      double x = magnet.number("x");
      double y = magnet.number("y");
      int index = attractors.size();
      Integer earlier = seen.putIfAbsent(List.of(x, y), index);
      if (earlier != null) {
        findings.warn(
            "attractors-coincide",
            places.magnet(index),
            "Magnets " + (earlier + 1) + " and " + (index + 1) + " stand at the same place.");
      }
      attractors.add(new TextbookLayout.Attractor(x, y, magnet.number("strength")));
    }
    return new TextbookLayout(
        layout.number("omega0"), layout.number("drag"), layout.number("height"), attractors);
  }

  private static IllegalStateException unexplained() {
    return new IllegalStateException("a part is missing, but no fault was found");
  }
}
