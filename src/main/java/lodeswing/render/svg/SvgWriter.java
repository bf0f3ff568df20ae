package lodeswing.render.svg;

import com.ibm.icu.text.Bidi;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.zip.CRC32;
import lodeswing.figure.Anchor;
import lodeswing.figure.Dash;
import lodeswing.figure.Drawing;
import lodeswing.figure.Mark;
import lodeswing.figure.Pattern;
import lodeswing.figure.Points;
import lodeswing.figure.Shape;
import lodeswing.figure.Stroke;
import lodeswing.figure.Style;
import lodeswing.figure.Tint;
import lodeswing.render.Palette;

/**
 * Writes a drawing as a standalone SVG 1.1 file that scales, brings its own paper and needs nothing
 * from outside: no script, style sheet, font file or reference.
 *
 * <p>One unit of the view box is one pixel at the nominal width. The picture is one image to
 * readers: role {@code img}, named by its title and description (W3C, SVG Accessibility API
 * Mappings). The ids of those come from the picture's content, so that two pictures can stand in
 * one page. The same drawing always gives the same text.
 */
public final class SvgWriter {
  private static final String FONT = "'DejaVu Sans',Verdana,sans-serif";
  private static final double HALO = 3;

  private static final double MILLIMETRES = 25.4 / 96;

  private final Drawing drawing;
  private final boolean trueSize;
  private final StringBuilder out = new StringBuilder(1 << 15);

  private SvgWriter(Drawing drawing, boolean trueSize) {
    this.drawing = drawing;
    this.trueSize = trueSize;
  }

  /** The drawing as the text of an SVG file; to be sent as UTF-8. */
  public static String write(Drawing drawing) {
    return new SvgWriter(drawing, false).text();
  }

  /** The same, its size given in millimetres, 96 pixels to the inch: for paper. */
  public static String printed(Drawing drawing) {
    return new SvgWriter(drawing, true).text();
  }

  private String text() {
    StringBuilder body = new StringBuilder(1 << 15);
    drawing.shapes().forEach(this::shape);
    body.append(out);
    out.setLength(0);
    head(id(body));
    return out.append(body).append("</svg>\n").toString();
  }

  private String id(StringBuilder body) {
    CRC32 sum = new CRC32();
    sum.update(body.toString().getBytes(StandardCharsets.UTF_8));
    sum.update(drawing.alternative().toString().getBytes(StandardCharsets.UTF_8));
    return String.format("p%08x", sum.getValue());
  }

  private void head(String id) {
    out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\"");
    number(" width=\"", drawing.nominalWidth() * (trueSize ? MILLIMETRES : 1));
    out.append(trueSize ? "mm" : "");
    number("\" height=\"", drawing.nominalHeight() * (trueSize ? MILLIMETRES : 1));
    out.append(trueSize ? "mm" : "");
    number("\" viewBox=\"0 0 ", drawing.nominalWidth());
    number(" ", drawing.nominalHeight());
    out.append("\" role=\"img\" lang=\"");
    SvgText.escape(out, drawing.alternative().language());
    out.append("\" xml:lang=\"");
    SvgText.escape(out, drawing.alternative().language());
    out.append("\" aria-labelledby=\"").append(id).append("-title ").append(id);
    out.append("-desc\" font-family=\"").append(FONT).append("\">\n");
    out.append("<title id=\"").append(id).append("-title\">");
    SvgText.escape(out, drawing.alternative().title());
    out.append("</title>\n<desc id=\"").append(id).append("-desc\">");
    SvgText.escape(out, drawing.alternative().description());
    out.append("</desc>\n");
  }

  private void shape(Shape shape) {
    if (shape instanceof Shape.Group group) {
      group(group);
    } else if (shape instanceof Shape.Clipped clipped) {
      clipped(clipped);
    } else if (shape instanceof Shape.Polyline line) {
      polyline(line);
    } else if (shape instanceof Shape.Curve curve) {
      curve(curve);
    } else if (shape instanceof Shape.Circle circle) {
      number("<circle cx=\"", x(circle.x()));
      number("\" cy=\"", y(circle.y()));
      number("\" r=\"", circle.radius() * drawing.scale());
      out.append('"');
      end(circle.style());
    } else if (shape instanceof Shape.Ring ring) {
      ring(ring);
    } else if (shape instanceof Shape.Rectangle rectangle) {
      rectangle(rectangle);
    } else if (shape instanceof Shape.Polygon polygon) {
      polygon(polygon);
    } else if (shape instanceof Shape.Region region) {
      region(region);
    } else if (shape instanceof Shape.Strokes strokes) {
      strokes(strokes);
    } else if (shape instanceof Shape.Symbol symbol) {
      symbol(symbol);
    } else if (shape instanceof Shape.Text text) {
      text(text);
    } else if (shape instanceof Shape.Inked inked) {
      inked(inked);
    }
  }

  /** One path of level strokes, a pixel high, a run of inked pixels each. */
  private void inked(Shape.Inked inked) {
    if (inked.pattern() == Pattern.PLAIN) {
      return;
    }
    out.append("<path shape-rendering=\"crispEdges\" d=\"");
    for (int row = 0; row < inked.rows(); row++) {
      for (int from = 0; from < inked.columns(); from++) {
        int to = from;
        while (to < inked.columns() && inked.pattern().inked(to, row)) {
          to++;
        }
        if (to > from) {
          number("M", x(inked.x()) + from);
          number(" ", y(inked.y()) + row + 0.5);
          out.append('h').append(to - from);
          from = to;
        }
      }
    }
    out.append("\" fill=\"none\" stroke-width=\"1\" stroke=\"");
    out.append(colour(inked.tint())).append("\"/>\n");
  }

  private void group(Shape.Group group) {
    out.append("<g class=\"");
    SvgText.escape(out, group.role());
    out.append("\">");
    if (!group.title().isEmpty()) {
      out.append("<title>");
      SvgText.escape(out, group.title());
      out.append("</title>");
    }
    out.append('\n');
    group.shapes().forEach(this::shape);
    out.append("</g>\n");
  }

  /** A nested view shows nothing beyond its own box (SVG 1.1, 14.3.3). */
  private void clipped(Shape.Clipped clipped) {
    double left = x(clipped.box().left());
    double top = y(clipped.box().top());
    double width = clipped.box().width() * drawing.scale();
    double height = clipped.box().height() * drawing.scale();
    number("<svg x=\"", left);
    number("\" y=\"", top);
    number("\" width=\"", width);
    number("\" height=\"", height);
    number("\" viewBox=\"", left);
    number(" ", top);
    number(" ", width);
    number(" ", height);
    out.append("\">\n");
    clipped.shapes().forEach(this::shape);
    out.append("</svg>\n");
  }

  private void polyline(Shape.Polyline line) {
    out.append("<path d=\"");
    SvgPath path = new SvgPath(out);
    run(path, line.points());
    open(line.stroke(), line.dashOffset());
  }

  private void region(Shape.Region region) {
    if (region.borders().isEmpty()) {
      return;
    }
    out.append("<path fill-rule=\"evenodd\" d=\"");
    SvgPath path = new SvgPath(out);
    for (Points border : region.borders()) {
      run(path, border);
      path.close();
    }
    out.append("\" stroke-linejoin=\"round\"");
    end(region.style());
  }

  private void strokes(Shape.Strokes strokes) {
    if (strokes.pieces().isEmpty()) {
      return;
    }
    out.append("<path d=\"");
    SvgPath path = new SvgPath(out);
    strokes.pieces().forEach(piece -> run(path, piece));
    open(strokes.stroke(), 0);
  }

  private void run(SvgPath path, Points points) {
    path.move(x(points.x(0)), y(points.y(0)));
    for (int i = 1; i < points.count(); i++) {
      path.line(x(points.x(i)), y(points.y(i)));
    }
  }

  private void curve(Shape.Curve curve) {
    Points controls = curve.controls();
    out.append("<path d=\"");
    SvgPath path = new SvgPath(out);
    path.move(x(controls.x(0)), y(controls.y(0)));
    for (int i = 1; i < controls.count(); i += 3) {
      path.curve(
          x(controls.x(i)),
          y(controls.y(i)),
          x(controls.x(i + 1)),
          y(controls.y(i + 1)),
          x(controls.x(i + 2)),
          y(controls.y(i + 2)));
    }
    open(curve.stroke(), curve.dashOffset());
  }

  /** Ends an open line. */
  private void open(Stroke stroke, double dashOffset) {
    out.append("\" fill=\"none\"");
    stroke(stroke);
    if (stroke.dash() == Dash.SOLID) {
      out.append(" stroke-linecap=\"round\"");
    } else if (dashOffset != 0) {
      number(" stroke-dashoffset=\"", dashOffset % period(stroke.dash()));
      out.append('"');
    }
    out.append(" stroke-linejoin=\"round\"/>\n");
  }

  private static double period(Dash dash) {
    return dash.on() + dash.off();
  }

  private void ring(Shape.Ring ring) {
    out.append("<path fill-rule=\"evenodd\" d=\"");
    SvgPath path = new SvgPath(out);
    path.circle(x(ring.x()), y(ring.y()), ring.outer() * drawing.scale());
    path.circle(x(ring.x()), y(ring.y()), ring.inner() * drawing.scale());
    out.append('"');
    end(ring.style());
  }

  private void rectangle(Shape.Rectangle rectangle) {
    double halfWidth = rectangle.width() / 2;
    double halfHeight = rectangle.height() / 2;
    double[] corners = {
      -halfWidth, -halfHeight, halfWidth, -halfHeight, halfWidth, halfHeight, -halfWidth, halfHeight
    };
    polygon(corners, rectangle.x(), rectangle.y(), 1, rectangle.turn(), rectangle.style());
  }

  private void symbol(Shape.Symbol symbol) {
    if (symbol.mark().isDisc()) {
      number("<circle cx=\"", x(symbol.x()));
      number("\" cy=\"", y(symbol.y()));
      number("\" r=\"", symbol.size() / 2);
      out.append('"');
      end(symbol.style());
    } else {
      Mark mark = symbol.mark();
      double size = symbol.size() / drawing.scale();
      polygon(mark.corners(), symbol.x(), symbol.y(), size, symbol.turn(), symbol.style());
    }
  }

  private void polygon(Shape.Polygon polygon) {
    double[] corners = new double[2 * polygon.border().count()];
    for (int i = 0; i < polygon.border().count(); i++) {
      corners[2 * i] = polygon.border().x(i);
      corners[2 * i + 1] = polygon.border().y(i);
    }
    polygon(corners, 0, 0, 1, 0, polygon.style());
  }

  private void polygon(
      double[] corners, double x, double y, double size, double turn, Style style) {
    double cos = Math.cos(turn) * size;
    double sin = Math.sin(turn) * size;
    out.append("<path d=\"");
    SvgPath path = new SvgPath(out);
    for (int i = 0; i < corners.length; i += 2) {
      double px = x(x + cos * corners[i] - sin * corners[i + 1]);
      double py = y(y + sin * corners[i] + cos * corners[i + 1]);
      if (i == 0) {
        path.move(px, py);
      } else {
        path.line(px, py);
      }
    }
    path.close();
    out.append("\" stroke-linejoin=\"round\"");
    end(style);
  }

  private void text(Shape.Text text) {
    number("<text x=\"", x(text.x()));
    number("\" y=\"", y(text.y()));
    number("\" font-size=\"", text.size());
    out.append("\" fill=\"").append(colour(text.tint())).append('"');
    boolean back = Bidi.getBaseDirection(text.text()) == Bidi.RTL;
    if (back) {
      out.append(" direction=\"rtl\"");
    }
    // What is read from the right begins at the right.
    Anchor beginning = back ? Anchor.END : Anchor.START;
    if (text.anchor() != beginning) {
      out.append(" text-anchor=\"")
          .append(text.anchor() == Anchor.MIDDLE ? "middle" : "end")
          .append('"');
    }
    if (text.halo()) {
      // Renderers without paint-order would hide the letters: the halo is a copy below instead.
      int from = out.length();
      out.append(" stroke=\"").append(colour(Tint.Role.PAPER));
      number("\" stroke-width=\"", HALO);
      out.append("\" stroke-linejoin=\"round\" stroke-opacity=\".85\" aria-hidden=\"true\">");
      SvgText.escape(out, text.text());
      out.append("</text>\n");
      String opening = out.substring(out.lastIndexOf("<text", from), from);
      out.append(opening);
    }
    out.append('>');
    SvgText.escape(out, text.text());
    out.append("</text>\n");
  }

  private void end(Style style) {
    Optional<Tint> fill = style.fill();
    out.append(" fill=\"").append(fill.map(SvgWriter::colour).orElse("none")).append('"');
    style.stroke().ifPresent(this::stroke);
    out.append("/>\n");
  }

  private void stroke(Stroke stroke) {
    out.append(" stroke=\"").append(colour(stroke.tint()));
    number("\" stroke-width=\"", stroke.width());
    out.append('"');
    if (stroke.opacity() != 1) {
      number(" stroke-opacity=\"", stroke.opacity());
      out.append('"');
    }
    if (stroke.dash() != Dash.SOLID) {
      number(" stroke-dasharray=\"", stroke.dash().on());
      number(" ", stroke.dash().off());
      out.append('"');
    }
  }

  private void number(String before, double value) {
    out.append(before);
    SvgText.number(out, value);
  }

  private double x(double x) {
    return drawing.pixelX(x);
  }

  private double y(double y) {
    return drawing.pixelY(y);
  }

  private static String colour(Tint tint) {
    return Palette.colour(tint).hex();
  }
}
