package lodeswing.render.png;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import lodeswing.figure.Anchor;
import lodeswing.figure.Dash;
import lodeswing.figure.Drawing;
import lodeswing.figure.Points;
import lodeswing.figure.Shape;
import lodeswing.figure.Stroke;
import lodeswing.figure.Style;
import lodeswing.figure.Tint;
import lodeswing.render.Palette;
import lodeswing.render.Rgb;

/** Paints shapes on a surface whose unit is a pixel at the drawing's nominal width. */
final class ShapePainter {
  private static final float HALO = 3;
  private static final float HALO_OPACITY = 0.85f;

  private final Drawing drawing;
  private final Graphics2D graphics;

  ShapePainter(Drawing drawing, Graphics2D graphics) {
    this.drawing = drawing;
    this.graphics = graphics;
  }

  /** Covers the whole surface, its last fraction of a pixel included. */
  void paper() {
    graphics.setColor(colour(Tint.Role.PAPER, 1));
    graphics.fill(
        new Rectangle2D.Double(-1, -1, drawing.nominalWidth() + 2, drawing.nominalHeight() + 2));
  }

  void paint(Shape shape) {
    if (shape instanceof Shape.Group group) {
      group.shapes().forEach(this::paint);
    } else if (shape instanceof Shape.Clipped clipped) {
      clipped(clipped);
    } else if (shape instanceof Shape.Polyline line) {
      polyline(line);
    } else if (shape instanceof Shape.Curve curve) {
      curve(curve);
    } else if (shape instanceof Shape.Circle circle) {
      styled(disc(circle.x(), circle.y(), circle.radius() * drawing.scale()), circle.style());
    } else if (shape instanceof Shape.Ring ring) {
      Area area = new Area(disc(ring.x(), ring.y(), ring.outer() * drawing.scale()));
      area.subtract(new Area(disc(ring.x(), ring.y(), ring.inner() * drawing.scale())));
      styled(area, ring.style());
    } else if (shape instanceof Shape.Rectangle box) {
      double w = box.width() * drawing.scale();
      double h = box.height() * drawing.scale();
      styled(
          placed(new Rectangle2D.Double(-w / 2, -h / 2, w, h), box.x(), box.y(), box.turn()),
          box.style());
    } else if (shape instanceof Shape.Polygon polygon) {
      polygon(polygon);
    } else if (shape instanceof Shape.Region region) {
      Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
      for (Points border : region.borders()) {
        run(path, border);
        path.closePath();
      }
      styled(path, region.style());
    } else if (shape instanceof Shape.Strokes strokes) {
      for (Points piece : strokes.pieces()) {
        Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO, piece.count());
        run(path, piece);
        stroked(path, strokes.stroke(), 0);
      }
    } else if (shape instanceof Shape.Symbol symbol) {
      symbol(symbol);
    } else if (shape instanceof Shape.Text text) {
      text(text);
    } else if (shape instanceof Shape.Inked inked) {
      inked(inked);
    }
  }

  private void inked(Shape.Inked inked) {
    graphics.setColor(colour(inked.tint(), 1));
    for (int row = 0; row < inked.rows(); row++) {
      for (int column = 0; column < inked.columns(); column++) {
        if (inked.pattern().inked(column, row)) {
          graphics.fill(
              new Rectangle2D.Double(
                  drawing.pixelX(inked.x()) + column, drawing.pixelY(inked.y()) + row, 1, 1));
        }
      }
    }
  }

  private void run(Path2D path, Points points) {
    path.moveTo(drawing.pixelX(points.x(0)), drawing.pixelY(points.y(0)));
    for (int i = 1; i < points.count(); i++) {
      path.lineTo(drawing.pixelX(points.x(i)), drawing.pixelY(points.y(i)));
    }
  }

  private void polyline(Shape.Polyline line) {
    Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO, line.points().count());
    run(path, line.points());
    stroked(path, line.stroke(), line.dashOffset());
  }

  private void polygon(Shape.Polygon polygon) {
    Points border = polygon.border();
    Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO, border.count());
    run(path, border);
    path.closePath();
    styled(path, polygon.style());
  }

  private void clipped(Shape.Clipped clipped) {
    java.awt.Shape before = graphics.getClip();
    graphics.clip(
        new Rectangle2D.Double(
            drawing.pixelX(clipped.box().left()),
            drawing.pixelY(clipped.box().top()),
            clipped.box().width() * drawing.scale(),
            clipped.box().height() * drawing.scale()));
    clipped.shapes().forEach(this::paint);
    graphics.setClip(before);
  }

  private void curve(Shape.Curve curve) {
    Points controls = curve.controls();
    Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO, controls.count());
    path.moveTo(drawing.pixelX(controls.x(0)), drawing.pixelY(controls.y(0)));
    for (int i = 1; i < controls.count(); i += 3) {
      path.curveTo(
          drawing.pixelX(controls.x(i)),
          drawing.pixelY(controls.y(i)),
          drawing.pixelX(controls.x(i + 1)),
          drawing.pixelY(controls.y(i + 1)),
          drawing.pixelX(controls.x(i + 2)),
          drawing.pixelY(controls.y(i + 2)));
    }
    stroked(path, curve.stroke(), curve.dashOffset());
  }

  private void symbol(Shape.Symbol symbol) {
    if (symbol.mark().isDisc()) {
      styled(disc(symbol.x(), symbol.y(), symbol.size() / 2), symbol.style());
      return;
    }
    double[] corners = symbol.mark().corners();
    Path2D outline = new Path2D.Double();
    for (int i = 0; i < corners.length; i += 2) {
      double x = corners[i] * symbol.size();
      double y = -corners[i + 1] * symbol.size();
      if (i == 0) {
        outline.moveTo(x, y);
      } else {
        outline.lineTo(x, y);
      }
    }
    outline.closePath();
    styled(placed(outline, symbol.x(), symbol.y(), symbol.turn()), symbol.style());
  }

  private void text(Shape.Text text) {
    if (text.text().isBlank()) {
      return;
    }
    TextLayout layout =
        new TextLayout(text.text(), Typeface.sized(text.size()), graphics.getFontRenderContext());
    double shift =
        text.anchor() == Anchor.START
            ? 0
            : layout.getAdvance() * (text.anchor() == Anchor.MIDDLE ? 0.5 : 1);
    java.awt.Shape letters =
        layout.getOutline(
            AffineTransform.getTranslateInstance(
                drawing.pixelX(text.x()) - shift, drawing.pixelY(text.y())));
    if (text.halo()) {
      graphics.setColor(colour(Tint.Role.PAPER, HALO_OPACITY));
      graphics.setStroke(new BasicStroke(HALO, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
      graphics.draw(letters);
    }
    graphics.setColor(colour(text.tint(), 1));
    graphics.fill(letters);
  }

  private Ellipse2D disc(double x, double y, double radius) {
    return new Ellipse2D.Double(
        drawing.pixelX(x) - radius, drawing.pixelY(y) - radius, 2 * radius, 2 * radius);
  }

  /** A shape about the origin [px], turned and moved to its place. */
  private java.awt.Shape placed(java.awt.Shape shape, double x, double y, double turn) {
    AffineTransform move =
        AffineTransform.getTranslateInstance(drawing.pixelX(x), drawing.pixelY(y));
    move.rotate(-turn);
    return move.createTransformedShape(shape);
  }

  private void styled(java.awt.Shape shape, Style style) {
    style
        .fill()
        .ifPresent(
            fill -> {
              graphics.setColor(colour(fill, 1));
              graphics.fill(shape);
            });
    style.stroke().ifPresent(stroke -> stroked(shape, stroke, 0));
  }

  private void stroked(java.awt.Shape shape, Stroke stroke, double offset) {
    float width = (float) stroke.width();
    Dash dash = stroke.dash();
    graphics.setStroke(
        dash == Dash.SOLID
            ? new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
            : new BasicStroke(
                width,
                BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_ROUND,
                10,
                new float[] {(float) dash.on(), (float) dash.off()},
                (float) (offset % (dash.on() + dash.off()))));
    graphics.setColor(colour(stroke.tint(), stroke.opacity()));
    graphics.draw(shape);
  }

  private static Color colour(Tint tint, double opacity) {
    Rgb rgb = Palette.colour(tint);
    return new Color(rgb.red(), rgb.green(), rgb.blue(), (int) Math.round(opacity * 255));
  }
}
