package lodeswing.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LabelPlacingTest {
  private final Random random = new Random(11);

  /** Distances and gaps against places sampled on the edges of both shapes. */
  @Test
  void distancesAndGapsHoldForDiscsAndTurnedRectangles() {
    for (int i = 0; i < 300; i++) {
      Footprint thing = thing();
      double angle = 2 * Math.PI * random.nextDouble();
      double width = 5 + 80 * random.nextDouble();
      double away = thing.away(Math.cos(angle), Math.sin(angle), width, 16, 7);
      LabelPlacing.Box box =
          LabelPlacing.Box.about(
              thing.x() + away * Math.cos(angle), thing.y() + away * Math.sin(angle), width, 16);
      double distance = thing.distance(box);
      assertTrue(
          distance > 7 - 1e-9 && distance < 7 * Math.sqrt(2) + 1e-9, () -> thing + " " + box);
      double sampled = Double.POSITIVE_INFINITY;
      for (int k = 0; k < 400; k++) {
        double[] edge = edge(box, k / 400.0);
        double[] near = thing.nearest(edge[0], edge[1]);
        sampled = Math.min(sampled, Math.hypot(near[0] - edge[0], near[1] - edge[1]));
      }
      assertEquals(sampled, distance, 0.2);
      LabelPlacing.Line leader = thing.lineTo(box);
      assertTrue(thing.holds(leader.fromX(), leader.fromY()));
      assertTrue(box.distance(leader.toX(), leader.toY()) < 1e-9);
      assertEquals(distance, leader.length(), 1e-9);
      LabelPlacing.Box over = LabelPlacing.Box.about(thing.x() + 1, thing.y(), 4, 4);
      assertEquals(0, thing.distance(over));
    }
  }

  private Footprint thing() {
    double x = 200 * random.nextDouble();
    double y = 200 * random.nextDouble();
    if (random.nextBoolean()) {
      return new Footprint.Round(x, y, 1 + 40 * random.nextDouble());
    }
    double turn = 7 * random.nextDouble();
    return new Footprint.Turned(
        x,
        y,
        1 + 60 * random.nextDouble(),
        1 + 20 * random.nextDouble(),
        Math.cos(turn),
        Math.sin(turn));
  }

  private static double[] edge(LabelPlacing.Box box, double share) {
    double along = share * 4 % 1;
    return switch ((int) (share * 4)) {
      case 0 -> new double[] {box.x() + along * box.width(), box.y()};
      case 1 -> new double[] {box.x() + box.width(), box.y() + along * box.height()};
      case 2 -> new double[] {box.x() + along * box.width(), box.y() + box.height()};
      default -> new double[] {box.x(), box.y() + along * box.height()};
    };
  }

  @Test
  void linesMeetBoxesAndEachOther() {
    LabelPlacing.Box box = new LabelPlacing.Box(10, 10, 20, 10);
    assertTrue(new LabelPlacing.Line(0, 0, 40, 30).meets(box));
    assertTrue(new LabelPlacing.Line(20, 0, 20, 40).meets(box));
    assertTrue(new LabelPlacing.Line(12, 12, 14, 14).meets(box));
    assertFalse(new LabelPlacing.Line(0, 0, 8, 40).meets(box));
    assertFalse(new LabelPlacing.Line(0, 10, 40, 10).meets(box));
    assertFalse(new LabelPlacing.Line(0, 0, 9, 9).meets(box));
    assertTrue(new LabelPlacing.Line(0, 0, 10, 10).crosses(new LabelPlacing.Line(0, 10, 10, 0)));
    assertFalse(new LabelPlacing.Line(0, 0, 4, 4).crosses(new LabelPlacing.Line(0, 10, 10, 0)));
  }

  @Test
  void labelsOfBlocksStandAtTheirEdges() {
    PathPicture bars = PictureScenes.bars();
    Drawing drawing = PathFigure.draw(bars);
    List<Shape.Text> tags = Tags.of(drawing);
    assertEquals(bars.magnets().size(), tags.size());
    for (int i = 0; i < tags.size(); i++) {
      Footprint block = Tags.footprint(bars.magnets().get(i), drawing);
      double distance = block.distance(Tags.box(tags.get(i), drawing));
      assertTrue(distance < 16, () -> "stands off by " + distance);
    }
    assertTrue(Tags.leaders(drawing).isEmpty());
  }

  @Test
  void noTagCoversAnotherTagOrAnotherMagnetHoweverManyThereAre() {
    for (int count : new int[] {3, 27, 60, 200}) {
      PathPicture scene = PictureScenes.manyStations(count);
      Drawing drawing = PathFigure.draw(scene);
      List<LabelPlacing.Box> boxes = new ArrayList<>();
      for (Shape.Text tag : Tags.of(drawing)) {
        boxes.add(Tags.box(tag, drawing));
      }
      List<Footprint> magnets =
          scene.magnets().stream().map(magnet -> Tags.footprint(magnet, drawing)).toList();
      for (int i = 0; i < boxes.size(); i++) {
        LabelPlacing.Box box = boxes.get(i);
        assertTrue(boxes.stream().filter(box::covers).count() == 1, "a tag covers another");
        assertTrue(magnets.stream().noneMatch(m -> m.distance(box) == 0), "covers a magnet");
      }
      List<LabelPlacing.Line> leaders = Tags.leaders(drawing);
      for (LabelPlacing.Line leader : leaders) {
        assertTrue(boxes.stream().noneMatch(leader::meets), "a line runs through a tag");
        assertEquals(1, magnets.stream().filter(leader::passes).count(), "across a magnet");
      }
    }
  }

  @Test
  void tagsThatAreNearerToAnotherMagnetOrStandOffAreLedTo() {
    PathPicture scene = PictureScenes.manyStations(60);
    Drawing drawing = PathFigure.draw(scene);
    List<LabelPlacing.Line> leaders = Tags.leaders(drawing);
    for (Shape.Text tag : Tags.of(drawing)) {
      LabelPlacing.Box box = Tags.box(tag, drawing);
      Footprint nearest = null;
      Optional<Footprint> own = Optional.empty();
      for (PlateMagnet magnet : scene.magnets()) {
        Footprint footprint = Tags.footprint(magnet, drawing);
        if (nearest == null || footprint.distance(box) < nearest.distance(box)) {
          nearest = footprint;
        }
        if (magnet.label().equals(tag.text())
            || tag.text().equals(String.valueOf(magnet.number()))) {
          own = Optional.of(footprint);
        }
      }
      Footprint mine = own.orElseThrow();
      boolean led =
          leaders.stream()
              .anyMatch(
                  leader ->
                      box.distance(leader.toX(), leader.toY()) < 1
                          && Math.abs(
                                  Math.hypot(leader.fromX() - mine.x(), leader.fromY() - mine.y())
                                      - mine.reach())
                              < 1);
      assertTrue(led || (mine.equals(nearest) && mine.distance(box) < 16), tag::text);
    }
  }

  @Test
  void whatIsLeftOutIsSaid() {
    Drawing drawing = PathFigure.draw(PictureScenes.manyStations(200));
    int shown = Tags.of(drawing).size();
    assertTrue(shown < 200, () -> shown + " tags");
    String legend = String.join("\n", drawing.legend().stream().map(LegendEntry::text).toList());
    String said = 200 - shown + " labels are left out for want of room";
    assertTrue(legend.contains(said), legend);
    assertTrue(drawing.alternative().description().contains(said));
    Drawing few = PathFigure.draw(PictureScenes.manyStations(3));
    assertFalse(few.alternative().description().contains("for want of room"));
  }

  /** The tags of magnets in a drawing, in pixels. */
  private static final class Tags {
    static List<Shape> shapes(Drawing drawing) {
      return drawing.shapes().stream()
          .filter(shape -> shape instanceof Shape.Group group && group.role().equals("labels"))
          .flatMap(shape -> ((Shape.Group) shape).shapes().stream())
          .toList();
    }

    /** Words beside magnets, without the letters on badges. */
    static List<Shape.Text> of(Drawing drawing) {
      return shapes(drawing).stream()
          .filter(shape -> shape instanceof Shape.Text text && text.halo())
          .map(Shape.Text.class::cast)
          .toList();
    }

    /** The words and the badge before them. */
    static LabelPlacing.Box box(Shape.Text text, Drawing drawing) {
      double left = drawing.pixelX(text.x()) - PlateDrawer.BADGE - 4;
      double width = PlateDrawer.BADGE + 4 + TextWidth.of(text.text(), text.size());
      double middle = drawing.pixelY(text.y()) - 0.36 * text.size();
      return new LabelPlacing.Box(left + 0.5, middle - 7.5, width - 1, 15);
    }

    static Footprint footprint(PlateMagnet magnet, Drawing drawing) {
      double x = drawing.pixelX(magnet.x());
      double y = drawing.pixelY(magnet.y());
      if (magnet.outline() instanceof Outline.Oblong block) {
        return new Footprint.Turned(
            x,
            y,
            block.width() / 2 * drawing.scale(),
            block.height() / 2 * drawing.scale(),
            Math.cos(-block.turn()),
            Math.sin(-block.turn()));
      }
      return new Footprint.Round(x, y, magnet.outline().reach() * drawing.scale());
    }

    static List<LabelPlacing.Line> leaders(Drawing drawing) {
      List<LabelPlacing.Line> lines = new ArrayList<>();
      for (Shape shape : shapes(drawing)) {
        if (shape instanceof Shape.Polyline line && line.stroke().tint() == Tint.Role.INK) {
          Points p = line.points();
          lines.add(
              new LabelPlacing.Line(
                  drawing.pixelX(p.x(0)),
                  drawing.pixelY(p.y(0)),
                  drawing.pixelX(p.x(1)),
                  drawing.pixelY(p.y(1))));
        }
      }
      return lines;
    }
  }
}
