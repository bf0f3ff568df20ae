package lodeswing.render.gif;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import lodeswing.figure.BobMotion;
import lodeswing.figure.Drawing;
import lodeswing.figure.Tint;
import lodeswing.render.Palette;
import lodeswing.render.png.PngWriter;

/**
 * Writes a drawing of a path as an animated GIF in which the bob moves along it.
 *
 * <p>The first frame is the whole picture; each further one holds only what the bob uncovers and
 * covers. All frames share one table of colours. A comment holds the alternative text; the play
 * repeats for good. Source: Graphics Interchange Format, version 89a, sections 20 (image
 * descriptor), 23 (graphic control extension), 24 (comment extension) and 26 (application
 * extension; the looping one is common practice).
 */
public final class GifWriter {

  private static final double BOB = 7;

  /** Metadata as the JDK names it. */
  private static final String FORMAT = "javax_imageio_gif_image_1.0";

  private static final String STREAM = "javax_imageio_gif_stream_1.0";

  private final BobMotion motion;
  private final BufferedImage still;
  private final ColourTable table;
  private final double radius;
  private final double[] x;
  private final double[] y;

  private GifWriter(Drawing drawing, BobMotion motion, int width) {
    this.motion = motion;
    this.still = PngWriter.picture(drawing, width);
    double zoom = width / drawing.nominalWidth();
    this.radius = Math.max(3, BOB * zoom);
    this.x = new double[motion.count()];
    this.y = new double[motion.count()];
    for (int i = 0; i < x.length; i++) {
      x[i] = drawing.pixelX(motion.places().x(i)) * zoom;
      y[i] = drawing.pixelY(motion.places().y(i)) * zoom;
    }
    this.table =
        new ColourTable(
            still,
            List.of(
                Palette.colour(Tint.Role.INK).packed(),
                Palette.colour(Tint.Role.SOFT_INK).packed(),
                Palette.colour(Tint.Role.PAPER).packed()));
  }

  /**
   * The bytes of a GIF file.
   *
   * @param width [px]
   */
  public static byte[] write(Drawing drawing, BobMotion motion, int width) {
    String words = drawing.alternative().title() + ". " + drawing.alternative().description();
    return new GifWriter(drawing, motion, width).file(words);
  }

  private byte[] file(String words) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("gif").next();
    var bytes = new ByteArrayOutputStream(1 << 17);
    try (var out = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(out);
      IIOMetadata stream = writer.getDefaultStreamMetadata(null);
      stream.mergeTree(STREAM, colours());
      writer.prepareWriteSequence(stream);
      Rectangle whole = new Rectangle(still.getWidth(), still.getHeight());
      for (int i = 0; i < x.length; i++) {
        Rectangle part = i == 0 ? whole : bob(i - 1).union(bob(i)).intersection(whole);
        if (part.isEmpty()) {
          // A bob outside the picture uncovers nothing; a frame has a pixel all the same.
          part = new Rectangle(1, 1);
        }
        BufferedImage frame = frame(i, part);
        // Not createFromRenderedImage: that puts a table of its own in the place of ours.
        IIOMetadata about = writer.getDefaultImageMetadata(new ImageTypeSpecifier(frame), null);
        about.mergeTree(FORMAT, described(i, part, words));
        writer.writeToSequence(new IIOImage(frame, null, about), null);
      }
      writer.endWriteSequence();
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  /** What the bob of a frame covers, its edge included. */
  private Rectangle bob(int i) {
    int reach = (int) Math.ceil(radius) + 3;
    return new Rectangle(
        (int) Math.floor(x[i]) - reach,
        (int) Math.floor(y[i]) - reach,
        2 * reach + 1,
        2 * reach + 1);
  }

  private BufferedImage frame(int i, Rectangle part) {
    BufferedImage drawn = new BufferedImage(part.width, part.height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = drawn.createGraphics();
    try {
      graphics.translate(-part.x, -part.y);
      graphics.drawImage(still, 0, 0, null);
      graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      graphics.setRenderingHint(
          RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      paint(graphics, i);
    } finally {
      graphics.dispose();
    }
    BufferedImage indexed =
        new BufferedImage(part.width, part.height, BufferedImage.TYPE_BYTE_INDEXED, table.model());
    for (int row = 0; row < part.height; row++) {
      for (int column = 0; column < part.width; column++) {
        indexed.getRaster().setSample(column, row, 0, table.indexOf(drawn.getRGB(column, row)));
      }
    }
    return indexed;
  }

  /** A full disc where the place is trusted, else a hollow one. */
  private void paint(Graphics2D graphics, int i) {
    var disc = new Ellipse2D.Double(x[i] - radius, y[i] - radius, 2 * radius, 2 * radius);
    boolean trusted = i < motion.trusted();
    graphics.setColor(
        new Color(Palette.colour(trusted ? Tint.Role.INK : Tint.Role.PAPER).packed()));
    graphics.fill(disc);
    graphics.setColor(
        new Color(Palette.colour(trusted ? Tint.Role.PAPER : Tint.Role.SOFT_INK).packed()));
    graphics.setStroke(new BasicStroke(2));
    graphics.draw(disc);
  }

  private IIOMetadataNode described(int i, Rectangle part, String words) {
    IIOMetadataNode root = new IIOMetadataNode(FORMAT);
    IIOMetadataNode place = new IIOMetadataNode("ImageDescriptor");
    place.setAttribute("imageLeftPosition", String.valueOf(part.x));
    place.setAttribute("imageTopPosition", String.valueOf(part.y));
    place.setAttribute("imageWidth", String.valueOf(part.width));
    place.setAttribute("imageHeight", String.valueOf(part.height));
    place.setAttribute("interlaceFlag", "FALSE");
    root.appendChild(place);
    double lasting = i == x.length - 1 ? motion.hold() : motion.frame();
    IIOMetadataNode control = new IIOMetadataNode("GraphicControlExtension");
    control.setAttribute("disposalMethod", "doNotDispose");
    control.setAttribute("userInputFlag", "FALSE");
    control.setAttribute("transparentColorFlag", "FALSE");
    control.setAttribute("transparentColorIndex", "0");
    control.setAttribute("delayTime", String.valueOf(Math.max(2, Math.round(100 * lasting))));
    root.appendChild(control);
    if (i == 0) {
      root.appendChild(looping());
      IIOMetadataNode comments = new IIOMetadataNode("CommentExtensions");
      IIOMetadataNode comment = new IIOMetadataNode("CommentExtension");
      comment.setAttribute("value", ascii(words));
      comments.appendChild(comment);
      root.appendChild(comments);
    }
    return root;
  }

  /** The table that all frames share. */
  private IIOMetadataNode colours() {
    IndexColorModel model = table.model();
    IIOMetadataNode entries = new IIOMetadataNode("GlobalColorTable");
    entries.setAttribute("sizeOfGlobalColorTable", String.valueOf(model.getMapSize()));
    entries.setAttribute("backgroundColorIndex", "0");
    entries.setAttribute("sortFlag", "FALSE");
    for (int i = 0; i < model.getMapSize(); i++) {
      IIOMetadataNode entry = new IIOMetadataNode("ColorTableEntry");
      entry.setAttribute("index", String.valueOf(i));
      entry.setAttribute("red", String.valueOf(model.getRed(i)));
      entry.setAttribute("green", String.valueOf(model.getGreen(i)));
      entry.setAttribute("blue", String.valueOf(model.getBlue(i)));
      entries.appendChild(entry);
    }
    IIOMetadataNode root = new IIOMetadataNode(STREAM);
    root.appendChild(entries);
    return root;
  }

  private static IIOMetadataNode looping() {
    IIOMetadataNode extension = new IIOMetadataNode("ApplicationExtension");
    extension.setAttribute("applicationID", "NETSCAPE");
    extension.setAttribute("authenticationCode", "2.0");
    extension.setUserObject(new byte[] {1, 0, 0});
    IIOMetadataNode extensions = new IIOMetadataNode("ApplicationExtensions");
    extensions.appendChild(extension);
    return extensions;
  }

  /** A comment has ASCII letters alone (version 89a, section 24). */
  private static String ascii(String words) {
    String plain = words.replace('\u00a0', ' ').replace('\u2212', '-');
    return new String(plain.getBytes(StandardCharsets.US_ASCII), StandardCharsets.US_ASCII);
  }
}
