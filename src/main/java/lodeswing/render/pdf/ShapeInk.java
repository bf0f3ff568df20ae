package lodeswing.render.pdf;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import lodeswing.figure.Anchor;
import lodeswing.figure.Dash;
import lodeswing.figure.Drawing;
import lodeswing.figure.Pattern;
import lodeswing.figure.Points;
import lodeswing.figure.Shape;
import lodeswing.figure.Stroke;
import lodeswing.figure.Style;
import lodeswing.figure.Tint;
import lodeswing.letters.Glyph;
import lodeswing.letters.SetLine;
import lodeswing.letters.Typesetter;
import lodeswing.render.Palette;
import lodeswing.render.Rgb;

/** Paints shapes as the operators of one page, in points from its lower left corner. */
final class ShapeInk {

  /** Controls of a quarter circle by its radius: 4 (sqrt 2 - 1) / 3. */
  private static final double QUARTER = 4 * (Math.sqrt(2) - 1) / 3;

  private static final double HALO = 3;
  private static final double HALO_OPACITY = 0.85;
  private static final int EM = 1000;

  private final DocumentWriter document;
  private final Drawing drawing;
  private final ContentStream stream;

  ShapeInk(DocumentWriter document, Drawing drawing, ContentStream stream) {
    this.document = document;
    this.drawing = drawing;
    this.stream = stream;
  }

  ContentStream stream() {
    return stream;
  }

  void paint(Shape shape) throws IOException {
    if (shape instanceof Shape.Group group) {
      all(group.shapes());
    } else if (shape instanceof Shape.Clipped clipped) {
      clipped(clipped);
    } else if (shape instanceof Shape.Polyline line) {
      stream.painting();
      stroke(line.stroke(), line.dashOffset());
      run(line.points());
      stream.raw("S\n");
    } else if (shape instanceof Shape.Curve curve) {
      curve(curve);
    } else if (shape instanceof Shape.Circle circle) {
      style(circle.style());
      circle(x(circle.x()), y(circle.y()), length(circle.radius()));
      end(circle.style(), false);
    } else if (shape instanceof Shape.Ring ring) {
      style(ring.style());
      circle(x(ring.x()), y(ring.y()), length(ring.outer()));
      circle(x(ring.x()), y(ring.y()), length(ring.inner()));
      end(ring.style(), true);
    } else if (shape instanceof Shape.Rectangle rectangle) {
      rectangle(rectangle);
    } else if (shape instanceof Shape.Polygon polygon) {
      style(polygon.style());
      run(polygon.border());
      stream.raw("h\n");
      end(polygon.style(), false);
    } else if (shape instanceof Shape.Region region) {
      region(region);
    } else if (shape instanceof Shape.Strokes strokes) {
      stream.painting();
      stroke(strokes.stroke(), 0);
      strokes.pieces().forEach(this::run);
      stream.raw("S\n");
    } else if (shape instanceof Shape.Symbol symbol) {
      symbol(symbol);
    } else if (shape instanceof Shape.Text text) {
      text(text);
    } else if (shape instanceof Shape.Inked inked) {
      inked(inked);
    }
  }

  private void all(List<Shape> shapes) throws IOException {
    for (Shape shape : shapes) {
      paint(shape);
    }
  }

  private void clipped(Shape.Clipped clipped) throws IOException {
    stream.closed().raw("q\n");
    stream.operator(
        "re",
        x(clipped.box().left()),
        y(clipped.box().bottom()),
        length(clipped.box().width()),
        length(clipped.box().height()));
    stream.raw("W n\n");
    all(clipped.shapes());
    stream.closed().raw("Q\n");
  }

  private void region(Shape.Region region) {
    if (region.borders().isEmpty()) {
      return;
    }
    style(region.style());
    for (Points border : region.borders()) {
      run(border);
      stream.raw("h\n");
    }
    end(region.style(), true);
  }

  private void curve(Shape.Curve curve) {
    stream.painting();
    stroke(curve.stroke(), curve.dashOffset());
    Points at = curve.controls();
    stream.operator("m", x(at.x(0)), y(at.y(0)));
    for (int i = 1; i < at.count(); i += 3) {
      stream.operator(
          "c",
          x(at.x(i)),
          y(at.y(i)),
          x(at.x(i + 1)),
          y(at.y(i + 1)),
          x(at.x(i + 2)),
          y(at.y(i + 2)));
    }
    stream.raw("S\n");
  }

  private void rectangle(Shape.Rectangle rectangle) {
    double w = length(rectangle.width()) / 2;
    double h = length(rectangle.height()) / 2;
    style(rectangle.style());
    corners(
        new double[] {-w, -h, w, -h, w, h, -w, h},
        x(rectangle.x()),
        y(rectangle.y()),
        1,
        rectangle.turn());
    end(rectangle.style(), false);
  }

  private void symbol(Shape.Symbol symbol) {
    style(symbol.style());
    double size = symbol.size() * DocumentWriter.POINTS;
    if (symbol.mark().isDisc()) {
      circle(x(symbol.x()), y(symbol.y()), size / 2);
    } else {
      corners(symbol.mark().corners(), x(symbol.x()), y(symbol.y()), size, symbol.turn());
    }
    end(symbol.style(), false);
  }

  private void corners(double[] corners, double x, double y, double size, double turn) {
    double cos = Math.cos(turn) * size;
    double sin = Math.sin(turn) * size;
    for (int i = 0; i < corners.length; i += 2) {
      stream.operator(
          i == 0 ? "m" : "l",
          x + cos * corners[i] - sin * corners[i + 1],
          y + sin * corners[i] + cos * corners[i + 1]);
    }
    stream.raw("h\n");
  }

  private void circle(double x, double y, double radius) {
    double k = QUARTER * radius;
    stream.operator("m", x + radius, y);
    stream.operator("c", x + radius, y + k, x + k, y + radius, x, y + radius);
    stream.operator("c", x - k, y + radius, x - radius, y + k, x - radius, y);
    stream.operator("c", x - radius, y - k, x - k, y - radius, x, y - radius);
    stream.operator("c", x + k, y - radius, x + radius, y - k, x + radius, y);
    stream.raw("h\n");
  }

  private void run(Points points) {
    for (int i = 0; i < points.count(); i++) {
      stream.operator(i == 0 ? "m" : "l", x(points.x(i)), y(points.y(i)));
    }
  }

  /** Level strokes a pixel high, a run of inked pixels each. */
  private void inked(Shape.Inked inked) {
    if (inked.pattern() == Pattern.PLAIN) {
      return;
    }
    stream.painting();
    fill(inked.tint());
    double pixel = DocumentWriter.POINTS;
    for (int row = 0; row < inked.rows(); row++) {
      for (int from = 0; from < inked.columns(); from++) {
        int to = from;
        while (to < inked.columns() && inked.pattern().inked(to, row)) {
          to++;
        }
        if (to > from) {
          stream.operator(
              "re",
              x(inked.x()) + from * pixel,
              y(inked.y()) - (row + 1) * pixel,
              (to - from) * pixel,
              pixel);
          from = to;
        }
      }
    }
    stream.raw("f\n");
  }

  private void text(Shape.Text text) throws IOException {
    if (text.text().isBlank()) {
      return;
    }
    SetLine line = Typesetter.line(text.text());
    double size = text.size() * DocumentWriter.POINTS;
    double shift =
        text.anchor() == Anchor.START
            ? 0
            : line.width() * size * (text.anchor() == Anchor.MIDDLE ? 0.5 : 1);
    double x = x(text.x()) - shift;
    double y = y(text.y());
    if (text.halo()) {
      Optional<StructureElement> owner = stream.owner();
      stream.belongsTo(Optional.empty());
      stream.closed().raw("q\n").painting();
      stroke(new Stroke(Tint.Role.PAPER, HALO, Dash.SOLID, HALO_OPACITY), 0);
      stream.raw("1 Tr\n");
      letters(line, x, y, size);
      stream.closed().raw("Q\n");
      stream.belongsTo(owner);
    }
    stream.painting();
    fill(text.tint());
    if (line.plain()) {
      letters(line, x, y, size);
    } else {
      stream.raw("/Span <</ActualText <FEFF");
      stream.raw(EmbeddedTypeface.hexadecimal(line.text())).raw(">>> BDC\n");
      letters(line, x, y, size);
      stream.raw("EMC\n");
    }
  }

  private void letters(SetLine line, double x, double y, double size) throws IOException {
    stream.raw("BT\n");
    List<Glyph> glyphs = line.glyphs();
    int from = 0;
    while (from < glyphs.size()) {
      Glyph first = glyphs.get(from);
      int to = from;
      while (to < glyphs.size()
          && glyphs.get(to).typeface() == first.typeface()
          && glyphs.get(to).y() == first.y()) {
        to++;
      }
      run(glyphs.subList(from, to), x, y, size);
      from = to;
    }
    stream.raw("ET\n");
  }

  private void run(List<Glyph> glyphs, double x, double y, double size) throws IOException {
    Glyph first = glyphs.get(0);
    EmbeddedTypeface typeface = document.typeface(first.typeface());
    stream.raw("/" + typeface.resource() + " ").operator("Tf", size);
    stream.operator("Tm", 1, 0, 0, 1, x + first.x() * size, y + first.y() * size);
    stream.raw("[");
    var codes = new StringBuilder();
    double pen = 0;
    for (Glyph glyph : glyphs) {
      long off = Math.round(pen - (glyph.x() - first.x()) * EM);
      if (off != 0) {
        if (!codes.isEmpty()) {
          stream.raw("<" + codes + ">");
          codes.setLength(0);
        }
        stream.raw(Long.toString(off));
        pen -= off;
      }
      codes.append(EmbeddedTypeface.hexadecimal(Character.toString(typeface.code(glyph))));
      pen += typeface.advance(glyph);
    }
    stream.raw("<" + codes + ">] TJ\n");
  }

  /** To be called before the path of a closed shape. */
  private void style(Style style) {
    stream.painting();
    style.stroke().ifPresent(stroke -> stroke(stroke, 0));
    style.fill().ifPresent(this::fill);
  }

  private void end(Style style, boolean evenOdd) {
    String star = evenOdd ? "*" : "";
    if (style.fill().isPresent()) {
      stream.raw((style.stroke().isPresent() ? "B" : "f") + star + "\n");
    } else {
      stream.raw(style.stroke().isPresent() ? "S\n" : "n\n");
    }
  }

  private void fill(Tint tint) {
    colour(tint, "rg");
  }

  private void stroke(Stroke stroke, double offset) {
    colour(stroke.tint(), "RG");
    stream.operator("w", stroke.width() * DocumentWriter.POINTS);
    stream.raw("/" + document.opacity(stroke.opacity()) + " gs\n");
    Dash dash = stroke.dash();
    if (dash == Dash.SOLID) {
      stream.raw("1 J 1 j [] 0 d\n");
    } else {
      stream.raw("0 J 1 j [");
      stream.number(dash.on() * DocumentWriter.POINTS).raw(" ");
      stream.number(dash.off() * DocumentWriter.POINTS).raw("] ");
      stream.operator("d", offset % (dash.on() + dash.off()) * DocumentWriter.POINTS);
    }
  }

  private void colour(Tint tint, String operator) {
    Rgb rgb = Palette.colour(tint);
    stream.operator(operator, rgb.red() / 255.0, rgb.green() / 255.0, rgb.blue() / 255.0);
  }

  private double x(double x) {
    return drawing.pixelX(x) * DocumentWriter.POINTS;
  }

  private double y(double y) {
    return (drawing.nominalHeight() - drawing.pixelY(y)) * DocumentWriter.POINTS;
  }

  private double length(double model) {
    return model * drawing.scale() * DocumentWriter.POINTS;
  }
}
