package lodeswing.render.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import lodeswing.figure.AlternativeText;
import lodeswing.figure.Anchor;
import lodeswing.figure.Drawing;
import lodeswing.figure.PathFigure;
import lodeswing.figure.PictureScenes;
import lodeswing.figure.Points;
import lodeswing.figure.Shape;
import lodeswing.figure.Tint;
import lodeswing.figure.ViewBox;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class SvgWriterTest {
  private static final String[] HOSTILE = {
    "</text><script>alert(1)</script>", "\"><image href='x'/>", "a\u202Eb\u0000\u0007&<!--]]>"
  };

  @Test
  void aPictureIsOneNamedImageThatScales() throws Exception {
    Element svg = parsed(drawn("Tide", "Dune", "Reef")).getDocumentElement();
    assertEquals("img", svg.getAttribute("role"));
    assertEquals("en", svg.getAttribute("lang"));
    String[] box = svg.getAttribute("viewBox").split(" ");
    assertEquals(4, box.length);
    assertEquals(svg.getAttribute("width"), box[2]);
    assertEquals(svg.getAttribute("height"), box[3]);
    String[] names = svg.getAttribute("aria-labelledby").split(" ");
    Element title = (Element) svg.getElementsByTagName("title").item(0);
    Element description = (Element) svg.getElementsByTagName("desc").item(0);
    assertEquals(names[0], title.getAttribute("id"));
    assertEquals(names[1], description.getAttribute("id"));
    assertEquals("Which station first?", title.getTextContent());
    assertTrue(description.getTextContent().contains("comes to rest at Tide"));
  }

  @Test
  void whatIsReadFromTheRightBeginsAtTheRight() throws Exception {
    Drawing drawing =
        new Drawing(
            new ViewBox(0, 0, 1, 1),
            100,
            List.of(
                new Shape.Text("محطة 25", 0.2, 0.5, 12, Anchor.START, Tint.Role.INK, false),
                new Shape.Text("Tide", 0.2, 0.2, 12, Anchor.START, Tint.Role.INK, false)),
            List.of(),
            new AlternativeText("en", "Two lines", "Two lines of text."));
    NodeList texts = parsed(SvgWriter.write(drawing)).getElementsByTagName("text");
    Element arabic = (Element) texts.item(0);
    // The anchor is the line's left end, which is where it ends.
    assertEquals("rtl", arabic.getAttribute("direction"));
    assertEquals("end", arabic.getAttribute("text-anchor"));
    assertEquals("", ((Element) texts.item(1)).getAttribute("direction"));
    assertEquals("", ((Element) texts.item(1)).getAttribute("text-anchor"));
  }

  @Test
  void hostileLabelsStayText() throws Exception {
    Document document = parsed(drawn(HOSTILE));
    Set<String> elements = new HashSet<>();
    Set<String> attributes = new HashSet<>();
    NodeList all = document.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      elements.add(all.item(i).getNodeName());
      for (int k = 0; k < all.item(i).getAttributes().getLength(); k++) {
        attributes.add(all.item(i).getAttributes().item(k).getNodeName());
      }
    }
    assertTrue(
        Set.of("svg", "title", "desc", "g", "path", "circle", "text").containsAll(elements),
        elements::toString);
    assertFalse(attributes.contains("href") || attributes.contains("style"), attributes::toString);
    String words = document.getDocumentElement().getTextContent();
    assertTrue(words.contains("</text><script>alert"), words);
    assertTrue(words.contains("ab&<!--]]>"), words);
    assertTrue(words.chars().noneMatch(c -> c == 0x202E || (c < 0x20 && c != '\n')));
  }

  @Test
  void nothingComesFromOutside() {
    String svg = drawn("Tide", "Dune", "Reef").replace("xmlns=\"http://www.w3.org/2000/svg\"", "");
    for (String word :
        List.of("http", "href", "url(", "@import", "<script", "<style", "<!DOCTYPE")) {
      assertFalse(svg.contains(word), word);
    }
  }

  @Test
  void theSamePictureGivesTheSameTextAndAnotherPictureOtherIds() {
    assertEquals(drawn("Tide", "Dune", "Reef"), drawn("Tide", "Dune", "Reef"));
    assertFalse(id(drawn("Tide", "Dune", "Reef")).equals(id(drawn("Tide", "Dune", "Cove"))));
  }

  @Test
  void drawnPathFollowsTheDrawingToAHundredthOfAPixel() throws Exception {
    Drawing drawing = PathFigure.draw(PictureScenes.threeStations("Tide", "Dune", "Reef"));
    List<Shape.Curve> lines = new ArrayList<>();
    for (Shape shape : drawing.shapes()) {
      if (shape instanceof Shape.Group group && group.role().equals("path")) {
        group.shapes().forEach(line -> lines.add((Shape.Curve) line));
      }
    }
    NodeList groups = parsed(SvgWriter.write(drawing)).getElementsByTagName("g");
    List<Element> paths = new ArrayList<>();
    for (int i = 0; i < groups.getLength(); i++) {
      Element group = (Element) groups.item(i);
      if (group.getAttribute("class").equals("path")) {
        NodeList inside = group.getElementsByTagName("path");
        for (int k = 0; k < inside.getLength(); k++) {
          paths.add((Element) inside.item(k));
        }
      }
    }
    assertEquals(lines.size(), paths.size());
    for (int i = 0; i < lines.size(); i++) {
      List<double[]> points = SvgPathReader.points(paths.get(i).getAttribute("d"));
      Points controls = lines.get(i).controls();
      assertEquals(controls.count(), points.size());
      for (int k = 0; k < controls.count(); k++) {
        assertEquals(drawing.pixelX(controls.x(k)), points.get(k)[0], 0.00501);
        assertEquals(drawing.pixelY(controls.y(k)), points.get(k)[1], 0.00501);
      }
    }
  }

  @Test
  void aPathOfTwentySecondsStaysSmall() {
    int size = drawn("Tide", "Dune", "Reef").getBytes(StandardCharsets.UTF_8).length;
    assertTrue(size < 30_000, () -> size + " bytes");
  }

  @Test
  void numbersAreShortAndRounded() {
    StringBuilder out = new StringBuilder();
    for (double value : new double[] {0, -0.001, 0.5, -0.25, 12.999, -3, 100.05, 1e-9}) {
      SvgText.number(out, value);
      out.append(' ');
    }
    assertEquals("0 0 .5 -.25 13 -3 100.05 0 ", out.toString());
  }

  private static String drawn(String... labels) {
    return SvgWriter.write(PathFigure.draw(PictureScenes.threeStations(labels)));
  }

  private static String id(String svg) {
    int from = svg.indexOf("aria-labelledby=\"");
    return svg.substring(from, svg.indexOf(' ', from));
  }

  private static Document parsed(String svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
  }
}
