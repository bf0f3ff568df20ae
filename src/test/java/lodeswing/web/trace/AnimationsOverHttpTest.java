package lodeswing.web.trace;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import lodeswing.RunningService;
import lodeswing.figure.Tint;
import lodeswing.render.Palette;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Animations of traces over HTTP. */
class AnimationsOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final String LAYOUT =
      "{\"model\":\"textbook\",\"omega0\":0.5,\"drag\":0.2,\"height\":0.3,\"magnets\":["
          + "{\"x\":0.57735,\"y\":0,\"strength\":1,\"label\":\"Tide\"},"
          + "{\"x\":-0.28868,\"y\":0.5,\"strength\":1},"
          + "{\"x\":-0.28868,\"y\":-0.5,\"strength\":1}]}";

  private static Response trace(double duration) {
    String body =
        "{\"layout\":"
            + LAYOUT
            + ",\"release\":{\"x\":1.3,\"y\":0.4},\"durationS\":"
            + duration
            + ",\"sampleIntervalS\":0.5}";
    Response trace = SERVICE.given().contentType("application/json").body(body).post("/v1/traces");
    trace.then().statusCode(200);
    return trace;
  }

  private static String animation(double duration) {
    return trace(duration).jsonPath().getString("links.animation");
  }

  private static Document svg(String url) throws Exception {
    Response answer = SERVICE.given().get(url);
    answer.then().statusCode(200).contentType("image/svg+xml");
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(answer.asByteArray()));
  }

  private static Map<String, Element> animated(Document svg) {
    Map<String, Element> found = new HashMap<>();
    NodeList all = svg.getElementsByTagName("animate");
    for (int i = 0; i < all.getLength(); i++) {
      Element one = (Element) all.item(i);
      found.put(one.getAttribute("attributeName"), one);
    }
    return found;
  }

  private static Element of(Map<String, Element> animated, String attribute) {
    return Objects.requireNonNull(animated.get(attribute), attribute);
  }

  /** Thirty places a second of true time, and a second of rest before all begins again. */
  @Test
  void theBobMovesAtTrueSpeed() throws Exception {
    Response trace = trace(10);
    Document svg = svg(trace.jsonPath().getString("links.animation"));
    Map<String, Element> moving = animated(svg);
    String[] x = of(moving, "cx").getAttribute("values").split(";", -1);
    String[] y = of(moving, "cy").getAttribute("values").split(";", -1);
    assertEquals(10 * 30 + 1 + 30, x.length);
    assertEquals(x.length, y.length);
    assertEquals("11.000s", of(moving, "cx").getAttribute("dur"));
    assertEquals("11.000s", of(moving, "width").getAttribute("dur"));
    assertEquals("indefinite", of(moving, "cy").getAttribute("repeatCount"));
    assertEquals(x[300], x[330]);
    // Samples every half second lie on one straight scale with every fifteenth place.
    double scale = 0;
    for (int i = 1; i <= 20; i++) {
      double across = Double.parseDouble(x[15 * i]) - Double.parseDouble(x[0]);
      double up = Double.parseDouble(y[0]) - Double.parseDouble(y[15 * i]);
      double dx = trace.jsonPath().getDouble("samples.x[" + i + "]") - 1.3;
      double dy = trace.jsonPath().getDouble("samples.y[" + i + "]") - 0.4;
      scale = i == 1 ? Math.hypot(across, up) / Math.hypot(dx, dy) : scale;
      assertEquals(dx * scale, across, 1.5, "sample " + i);
      assertEquals(dy * scale, up, 1.5, "sample " + i);
    }
    assertTrue(scale > 10);
  }

  @Test
  void whoPrefersReducedMotionSeesThePictureStill() throws Exception {
    Document svg = svg(animation(10));
    String style = svg.getElementsByTagName("style").item(0).getTextContent();
    assertEquals("@media (prefers-reduced-motion:reduce){.moving{display:none}}", style);
    NodeList all = svg.getElementsByTagName("animate");
    for (int i = 0; i < all.getLength(); i++) {
      Element group = (Element) all.item(i).getParentNode().getParentNode();
      assertEquals("moving", group.getAttribute("class"));
      assertEquals("true", group.getAttribute("aria-hidden"));
    }
    assertEquals(0, svg.getElementsByTagName("script").getLength());
    assertTrue(svg.getElementsByTagName("desc").item(0).getTextContent().contains("rest"));
  }

  @Test
  void aLongTraceIsPlayedFasterAndSaysSo() throws Exception {
    String url = animation(100);
    Document svg = svg(url);
    assertEquals("51.000s", of(animated(svg), "cx").getAttribute("dur"));
    assertTrue(svg.getDocumentElement().getTextContent().contains("2 times its true speed"));
    SERVICE
        .given()
        .get(url + "?speed=1")
        .then()
        .statusCode(422)
        .body("code", equalTo("too-costly"))
        .body("errors.pointer", hasItem("?speed"))
        .body("errors.detail", hasItem(containsString("raise it to 1.667")));
    SERVICE.given().get(url + "?speed=0").then().statusCode(400);
    SERVICE.given().get(url + "?format=png").then().statusCode(406);
  }

  @Test
  void theGifHasItsFramesAndDelays() throws Exception {
    byte[] bytes = gif(animation(10));
    ImageReader reader = reader(bytes);
    int frames = reader.getNumImages(true);
    assertEquals(10 * 20 + 1, frames);
    BufferedImage whole = reader.read(0);
    assertEquals(640, whole.getWidth());
    // The paper of every picture.
    assertEquals(
        Palette.colour(Tint.Role.PAPER).hex(),
        String.format("#%06x", whole.getRGB(2, 2) & 0xFFFFFF));
    BufferedImage shown = new BufferedImage(640, whole.getHeight(), BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < frames; i++) {
      IIOMetadataNode root =
          (IIOMetadataNode) reader.getImageMetadata(i).getAsTree("javax_imageio_gif_image_1.0");
      Element control = (Element) root.getElementsByTagName("GraphicControlExtension").item(0);
      assertEquals(i == frames - 1 ? "100" : "5", control.getAttribute("delayTime"));
      assertEquals(0, root.getElementsByTagName("LocalColorTable").getLength());
      Element place = (Element) root.getElementsByTagName("ImageDescriptor").item(0);
      BufferedImage part = reader.read(i);
      shown
          .getGraphics()
          .drawImage(
              part,
              Integer.parseInt(place.getAttribute("imageLeftPosition")),
              Integer.parseInt(place.getAttribute("imageTopPosition")),
              null);
    }
    // Nothing of an earlier bob is left: outside the last frame's part all is as at first.
    BufferedImage first = reader.read(0);
    int different = 0;
    for (int row = 0; row < first.getHeight(); row++) {
      for (int column = 0; column < 640; column++) {
        different += (first.getRGB(column, row) ^ shown.getRGB(column, row)) << 8 == 0 ? 0 : 1;
      }
    }
    assertTrue(different > 20 && different < 700, "pixels that differ: " + different);
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    assertTrue(text.contains("The bob is released at"));
  }

  @Test
  void aLongGifHasFewerFramesASecond() throws Exception {
    byte[] bytes = gif(animation(50));
    ImageReader reader = reader(bytes);
    // 599 steps at most: 50 s in steps of 0.09 s.
    assertEquals(557, reader.getNumImages(true));
    IIOMetadataNode root =
        (IIOMetadataNode) reader.getImageMetadata(1).getAsTree("javax_imageio_gif_image_1.0");
    Element control = (Element) root.getElementsByTagName("GraphicControlExtension").item(0);
    assertEquals("9", control.getAttribute("delayTime"));
    assertArrayEquals(bytes, gif(animation(50)));
  }

  private static byte[] gif(String url) {
    Response answer = SERVICE.given().get(url + "?format=gif");
    answer.then().statusCode(200).contentType("image/gif");
    return answer.asByteArray();
  }

  private static ImageReader reader(byte[] bytes) {
    ImageReader reader = ImageIO.getImageReadersByFormatName("gif").next();
    reader.setInput(new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes)));
    return reader;
  }
}
