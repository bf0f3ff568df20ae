package lodeswing.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDPage;

/** What a page's own operators draw, in millimetres from its lower left corner. */
final class PrintedPage {

  private static final double MM = 25.4 / 72;

  /** A closed path of four curves. */
  record Circle(double x, double y, double radius) {}

  /** A straight line. */
  record Segment(double fromX, double fromY, double toX, double toY) {
    double length() {
      return Math.hypot(toX - fromX, toY - fromY);
    }
  }

  final List<Circle> circles = new ArrayList<>();
  final List<Segment> segments = new ArrayList<>();

  PrintedPage(PDPage page) throws IOException {
    List<Double> numbers = new ArrayList<>();
    List<double[]> curve = new ArrayList<>();
    double[] at = {0, 0};
    for (Object token : new PDFStreamParser(page).parse()) {
      if (token instanceof COSNumber number) {
        numbers.add(number.floatValue() * MM);
        continue;
      }
      if (token instanceof Operator operator) {
        int count = numbers.size();
        switch (operator.getName()) {
          case "m" -> {
            curve.clear();
            at = new double[] {numbers.get(count - 2), numbers.get(count - 1)};
          }
          case "l" -> {
            double[] to = {numbers.get(count - 2), numbers.get(count - 1)};
            segments.add(new Segment(at[0], at[1], to[0], to[1]));
            at = to;
          }
          case "c" -> {
            at = new double[] {numbers.get(count - 2), numbers.get(count - 1)};
            curve.add(at);
          }
          case "h" -> {
            if (curve.size() == 4) {
              circles.add(circle(curve));
            }
            curve.clear();
          }
          default -> {
            // Colours, text and clipping do not matter here.
          }
        }
        numbers.clear();
      }
    }
  }

  private static Circle circle(List<double[]> ends) {
    double left = ends.stream().mapToDouble(end -> end[0]).min().orElseThrow();
    double right = ends.stream().mapToDouble(end -> end[0]).max().orElseThrow();
    double low = ends.stream().mapToDouble(end -> end[1]).min().orElseThrow();
    double high = ends.stream().mapToDouble(end -> end[1]).max().orElseThrow();
    return new Circle((left + right) / 2, (low + high) / 2, (right - left) / 2);
  }

  /** The circles of a radius [mm]. */
  List<Circle> circles(double radius) {
    return circles.stream().filter(circle -> Math.abs(circle.radius() - radius) < 0.01).toList();
  }
}
