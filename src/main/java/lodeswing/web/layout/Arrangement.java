package lodeswing.web.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;
import lodeswing.web.body.Body;
import lodeswing.web.body.FaultList;
import lodeswing.web.body.NumberShape;

/**
 * Figures of how the magnets stand that no one member of a layout holds: {@code ring.count}, {@code
 * ring.poles} and {@code ring.radiusMm} (all together, about the axis), {@code magnet.2.radiusMm}
 * and {@code magnet.2.angleDeg} (one magnet, in polar coordinates about the axis). In a textbook
 * layout lengths go by {@code radius} and there are no poles.
 *
 * <p>They are applied in this order, before members of the layout, so that both may be given.
 */
final class Arrangement {

  private static final String COUNT = "ring.count";
  private static final String POLES = "ring.poles";
  private static final Pattern POLE_WORD = Pattern.compile("[nsNS]{1,200}");

  /** How far magnets may be from an even ring, as a part of its radius. */
  private static final double EVEN = 1e-3;

  private final Body layout;
  private final boolean bench;
  private final String radius;
  private final double grains;

  Arrangement(Body canonical) {
    this.layout = canonical;
    this.bench = canonical.text("model").equals("bench");
    this.radius = bench ? "radiusMm" : "radius";
    this.grains = bench ? 1e6 : 1e9;
  }

  /** The names that this layout knows. */
  Set<String> names() {
    Set<String> names = new LinkedHashSet<>();
    int count = layout.objects("magnets").size();
    if (count > 0) {
      names.add(COUNT);
      names.add("ring." + radius);
      if (bench) {
        names.add(POLES);
      }
    }
    for (int i = 1; i <= count; i++) {
      names.add(of(i) + radius);
      names.add(of(i) + "angleDeg");
    }
    return names;
  }

  private static String of(int magnet) {
    return "magnet." + magnet + ".";
  }

  /** Whether a name changes where a numbered magnet stands, whose own x and y it contradicts. */
  boolean moves(String name, String member) {
    int end = name.lastIndexOf('.');
    return name.startsWith("magnet.")
        && names().contains(name)
        && (member.equals(name.substring(0, end) + ".x")
            || member.equals(name.substring(0, end) + ".y"));
  }

  /**
   * The layout as arranged.
   *
   * @param written text values by name
   * @param faults hears what is wrong, by {@code ?name}
   */
  Body changed(Map<String, String> written, FaultList faults) {
    List<Body> magnets = new ArrayList<>(layout.objects("magnets"));
    if (written.containsKey(COUNT)) {
      magnets = counted(magnets, written.getOrDefault(COUNT, ""), faults);
    }
    if (written.containsKey(POLES)) {
      magnets = poled(magnets, written.getOrDefault(POLES, "").strip(), faults);
    }
    String wide = "ring." + radius;
    if (written.containsKey(wide)) {
      magnets = scaled(magnets, number(wide, written, length(), faults), wide, faults);
    }
    for (int i = 1; i <= magnets.size(); i++) {
      if (written.containsKey(of(i) + radius) || written.containsKey(of(i) + "angleDeg")) {
        magnets.set(i - 1, moved(magnets.get(i - 1), i, written, faults));
      }
    }
    return layout.with("magnets", List.copyOf(magnets));
  }

  private NumberShape length() {
    return bench ? NumberShape.between(0, 5000) : NumberShape.between(0, 1000);
  }

  private static Optional<Double> number(
      String name, Map<String, String> written, NumberShape shape, FaultList faults) {
    String text = written.getOrDefault(name, "");
    Optional<Double> value = OverrideTarget.number(text.strip());
    boolean fits =
        value.isPresent()
            && value.get() >= shape.least()
            && value.get() <= shape.most()
            && (!shape.whole() || value.get() == Math.rint(value.get()));
    if (!fits) {
      faults.add("?" + name, "must be " + shape.accepted() + ", not \"" + shortened(text) + "\"");
      return Optional.empty();
    }
    return value;
  }

  private static String shortened(String text) {
    return text.length() <= 40 ? text : text.substring(0, 40) + "…";
  }

  private List<Body> counted(List<Body> magnets, String text, FaultList faults) {
    NumberShape shape = NumberShape.count(1, LayoutShapes.MOST_MAGNETS);
    Optional<Double> asked = number(COUNT, Map.of(COUNT, text), shape, faults);
    List<Body> ring = magnets.stream().sorted(Comparator.comparingDouble(fromFirst())).toList();
    if (!isRing(ring)) {
      faults.add(
          "?" + COUNT,
          "needs a ring: magnets of one kind, evenly about the axis; this layout has none");
      return magnets;
    }
    int count = asked.map(Double::intValue).orElse(ring.size());
    if (count == ring.size()) {
      return magnets;
    }
    double far = distance(ring.get(0));
    double start = angle(ring.get(0));
    List<Body> made = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Body like = ring.get(i % ring.size());
      Map<String, Object> members = new LinkedHashMap<>(like.members());
      if (i >= ring.size()) {
        members.remove("label");
      }
      made.add(placed(Body.of(members), far, start + 2 * Math.PI * i / count));
    }
    return made;
  }

  private ToDoubleFunction<Body> fromFirst() {
    double first = angle(layout.objects("magnets").get(0));
    return magnet -> {
      double turn = (angle(magnet) - first) / (2 * Math.PI);
      // A turn that is a hair less than whole is the first place, not the last.
      double part = turn - Math.floor(turn);
      return part > 1 - 1e-9 ? 0 : part;
    };
  }

  private static boolean isRing(List<Body> ring) {
    Body first = ring.get(0);
    double far = distance(first);
    for (int i = 0; i < ring.size(); i++) {
      Body magnet = ring.get(i);
      double angle = angle(first) + 2 * Math.PI * i / ring.size();
      double off =
          Math.hypot(
              magnet.number("x") - far * StrictMath.cos(angle),
              magnet.number("y") - far * StrictMath.sin(angle));
      if (!(off <= EVEN * far) || !kind(magnet).equals(kind(first))) {
        return false;
      }
    }
    return far > 0;
  }

  private static Map<String, Object> kind(Body magnet) {
    return magnet.without("x", "y", "label", "poleUp").members();
  }

  private static List<Body> poled(List<Body> magnets, String word, FaultList faults) {
    if (!POLE_WORD.matcher(word).matches()) {
      faults.add(
          "?" + POLES,
          "must be the upper poles in the magnets' order, letters n and s such as nns, which begin"
              + " again at the end, not \""
              + shortened(word)
              + "\"");
      return magnets;
    }
    List<Body> made = new ArrayList<>();
    for (int i = 0; i < magnets.size(); i++) {
      boolean north = Character.toLowerCase(word.charAt(i % word.length())) == 'n';
      made.add(magnets.get(i).with("poleUp", north ? "north" : "south"));
    }
    return made;
  }

  private List<Body> scaled(
      List<Body> magnets, Optional<Double> wide, String name, FaultList faults) {
    double farthest = magnets.stream().mapToDouble(Arrangement::distance).max().orElse(0);
    if (farthest == 0) {
      faults.add("?" + name, "has no effect: every magnet stands on the axis");
    }
    if (wide.isEmpty() || farthest == 0) {
      return magnets;
    }
    double factor = wide.get() / farthest;
    List<Body> made = new ArrayList<>();
    for (Body magnet : magnets) {
      made.add(at(magnet, factor * magnet.number("x"), factor * magnet.number("y")));
    }
    return made;
  }

  private Body moved(Body magnet, int i, Map<String, String> written, FaultList faults) {
    double far = distance(magnet);
    double angle = angle(magnet);
    String out = of(i) + radius;
    if (written.containsKey(out)) {
      far = number(out, written, length(), faults).orElse(far);
    }
    String turn = of(i) + "angleDeg";
    if (written.containsKey(turn)) {
      if (far == 0) {
        faults.add("?" + turn, "has no effect: the magnet stands on the axis");
      }
      angle =
          number(turn, written, NumberShape.between(-360, 360), faults)
              .map(Math::toRadians)
              .orElse(angle);
    }
    return placed(magnet, far, angle);
  }

  private static double distance(Body magnet) {
    return Math.hypot(magnet.number("x"), magnet.number("y"));
  }

  private static double angle(Body magnet) {
    return StrictMath.atan2(magnet.number("y"), magnet.number("x"));
  }

  private Body placed(Body magnet, double far, double angle) {
    return at(magnet, far * StrictMath.cos(angle), far * StrictMath.sin(angle));
  }

  /** Rounded, so that the last bit of a cosine is no part of any layout. */
  private Body at(Body magnet, double x, double y) {
    return magnet.with("x", rounded(x)).with("y", rounded(y));
  }

  private double rounded(double value) {
    return Math.rint(value * grains) / grains + 0.0;
  }
}
