package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.core.geometry.PathCurve;

/**
 * What lies over the light of a long exposure: outlines of plate and magnets, the centre, and a bar
 * of known length, all as thin lines that leave the light to be seen; and the whole in words.
 */
public final class GlowFigure {

  private static final double LINE = 1.1;
  private static final double CROSS = 4;
  private static final double EDGE = 14;
  private static final double TICK = 4;
  private static final double LETTERS = 13;

  /** Share of the paper's width that the bar takes at most. */
  private static final double BAR = 0.25;

  private static final Stroke GUIDE = Stroke.solid(Tint.Role.GLOW_GUIDE, LINE);

  private GlowFigure() {}

  /**
   * The smallest box that holds plate and magnets, and the path with a margin about it.
   *
   * @param plate outline of the plate about the origin
   * @param magnets the magnets
   * @param curve the path
   * @param margin about the path [model units]
   */
  public static ViewBox bounds(
      Optional<Outline> plate, List<PlateMagnet> magnets, PathCurve curve, double margin) {
    Extent extent = new Extent();
    extent.add(0, 0, margin);
    plate.ifPresent(outline -> PathFigure.addPlate(extent, outline));
    for (PlateMagnet magnet : magnets) {
      extent.add(magnet.x(), magnet.y(), magnet.outline().reach());
    }
    Extent path = new Extent();
    PathFigure.addPath(path, curve);
    extent.add(path, margin);
    return extent.box();
  }

  /** The lines over the light, the picture's pixels being those of the nominal width. */
  public static Drawing draw(GlowPicture picture) {
    ViewBox paper = picture.paper();
    double width = paper.width() / picture.pixel();
    List<Shape> shapes = new ArrayList<>();
    picture.plate().ifPresent(plate -> shapes.add(outlined(plate, 0, 0, picture.pixel())));
    for (PlateMagnet magnet : picture.magnets()) {
      shapes.add(outlined(magnet.outline(), magnet.x(), magnet.y(), picture.pixel()));
    }
    double arm = CROSS * picture.pixel();
    shapes.add(line(-arm, 0, arm, 0));
    shapes.add(line(0, -arm, 0, arm));
    bar(picture, shapes);
    return new Drawing(paper, width, shapes, List.of(), GlowWords.alternative(picture));
  }

  private static Shape outlined(Outline outline, double x, double y, double pixel) {
    Style style = Style.outlined(GUIDE);
    if (outline instanceof Outline.Annulus ring) {
      return new Shape.Ring(x, y, ring.inner(), ring.outer(), style);
    }
    if (outline instanceof Outline.Oblong block) {
      return new Shape.Rectangle(x, y, block.width(), block.height(), block.turn(), style);
    }
    return new Shape.Circle(x, y, Math.max(outline.reach(), CROSS * pixel), style);
  }

  private static Shape line(double... places) {
    return new Shape.Polyline(
        new Points(new double[] {places[0], places[2]}, new double[] {places[1], places[3]}),
        GUIDE,
        0);
  }

  private static void bar(GlowPicture picture, List<Shape> shapes) {
    Measure measure = picture.measure();
    double shown = ScaleBar.roundLength(BAR * picture.paper().width() * measure.shownPerUnit());
    double length = shown / measure.shownPerUnit();
    double x = picture.paper().left() + EDGE * picture.pixel();
    double y = picture.paper().bottom() + EDGE * picture.pixel();
    double tick = TICK * picture.pixel();
    shapes.add(line(x, y, x + length, y));
    shapes.add(line(x, y - tick, x, y + tick));
    shapes.add(line(x + length, y - tick, x + length, y + tick));
    shapes.add(
        new Shape.Text(
            new PathWords(measure).length(length),
            x,
            y + (TICK + 3) * picture.pixel(),
            LETTERS,
            Anchor.START,
            Tint.Role.GLOW_LETTERS,
            false));
  }
}
