package lodeswing.web.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.core.magnet.Block;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.Pole;
import lodeswing.core.magnet.Ring;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.core.rig.TextbookLayout.Attractor;
import lodeswing.figure.Outline;
import lodeswing.figure.PlateMagnet;
import lodeswing.web.body.Body;
import lodeswing.web.layout.LayoutDocument;

/** A layout's plate and magnets as pictures show them. */
public final class PlateMap {

  private final LayoutDocument layout;

  /** The plate of a layout. */
  public PlateMap(LayoutDocument layout) {
    this.layout = layout;
  }

  /** The plate's outline about the origin; empty where none is stated. */
  public Optional<Outline> outline() {
    return layout.canonical().findObject("plate").flatMap(PlateMap::plate);
  }

  private static Optional<Outline> plate(Body plate) {
    OptionalDouble width = plate.findNumber("widthMm");
    if (width.isEmpty()) {
      return Optional.empty();
    }
    double metres = width.getAsDouble() * 1e-3;
    boolean round = plate.findText("shape").filter("round"::equals).isPresent();
    return Optional.of(
        round ? new Outline.Round(metres / 2) : new Outline.Oblong(metres, metres, 0));
  }

  /** The magnets in the layout's order. */
  public List<PlateMagnet> magnets() {
    return magnets(layout.layout());
  }

  private List<PlateMagnet> magnets(Layout rig) {
    List<PlateMagnet> magnets = new ArrayList<>();
    if (rig instanceof BenchLayout bench) {
      for (PlacedMagnet placed : bench.magnets()) {
        magnets.add(
            new PlateMagnet(
                magnets.size() + 1,
                placed.centre().x(),
                placed.centre().y(),
                outline(placed),
                placed.poleUp() == Pole.NORTH ? PlateMagnet.Face.NORTH : PlateMagnet.Face.SOUTH,
                label(magnets.size())));
      }
    } else if (rig instanceof TextbookLayout textbook) {
      for (Attractor attractor : textbook.magnets()) {
        magnets.add(
            new PlateMagnet(
                magnets.size() + 1,
                attractor.x(),
                attractor.y(),
                new Outline.Spot(),
                attractor.strength() >= 0 ? PlateMagnet.Face.ATTRACTS : PlateMagnet.Face.REPELS,
                label(magnets.size())));
      }
    }
    return magnets;
  }

  private String label(int index) {
    return layout.labels().get(index).orElse("");
  }

  private static Outline outline(PlacedMagnet placed) {
    Magnet magnet = placed.magnet();
    if (magnet instanceof Ring ring) {
      return new Outline.Annulus(ring.innerRadius(), ring.outerRadius());
    }
    if (magnet instanceof Block block) {
      return new Outline.Oblong(block.length(), block.width(), placed.turn());
    }
    return magnet.planRadius() > 0 ? new Outline.Round(magnet.planRadius()) : new Outline.Spot();
  }
}
