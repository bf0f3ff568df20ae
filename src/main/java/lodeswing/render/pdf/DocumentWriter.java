package lodeswing.render.pdf;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lodeswing.figure.AlternativeText;
import lodeswing.figure.Drawing;
import lodeswing.letters.Typeface;
import lodeswing.sheet.Page;
import lodeswing.sheet.PageItem;
import lodeswing.sheet.Tag;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;

/** One document while it is written. */
final class DocumentWriter implements AutoCloseable {

  /** Points of a page to the pixel of a drawing. */
  static final double POINTS = 72.0 / 96;

  private static final float VERSION = 1.7f;
  private static final COSName STROKE_ALPHA = COSName.CA;

  private final PDDocument document = new PDDocument();
  private final StructureTree tree = new StructureTree();
  private final Map<Typeface, EmbeddedTypeface> typefaces = new EnumMap<>(Typeface.class);
  private final Map<Integer, COSDictionary> opacities = new TreeMap<>();
  private final COSDictionary resources = new COSDictionary();

  /** A page that is one figure. */
  void figure(Drawing drawing) throws IOException {
    AlternativeText about = drawing.alternative();
    String words = about.title() + ". " + about.description();
    PDPage page = page(drawing);
    var ink = ink(page, drawing);
    ink.stream()
        .belongsTo(Optional.of(tree.document().child(Tag.FIGURE, words, page.getMediaBox())));
    for (var shape : drawing.shapes()) {
      ink.paint(shape);
    }
    finish(page, ink);
  }

  /** A page of a sheet. */
  void sheet(Page sheet, AlternativeText about) throws IOException {
    Drawing drawing = sheet.drawing(about);
    PDPage page = page(drawing);
    var ink = ink(page, drawing);
    for (PageItem.Block block : sheet.items()) {
      block(block, tree.document(), page, ink);
    }
    finish(page, ink);
  }

  private static void block(
      PageItem.Block block, StructureElement parent, PDPage page, ShapeInk ink) throws IOException {
    Optional<StructureElement> element =
        block.tag() == Tag.ORNAMENT
            ? Optional.empty()
            : Optional.of(parent.child(block.tag(), block.alternative(), page.getMediaBox()));
    for (PageItem item : block.items()) {
      if (item instanceof PageItem.Block part) {
        block(part, element.orElse(parent), page, ink);
      } else if (item instanceof PageItem.Marks marks) {
        ink.stream().belongsTo(element);
        for (var shape : marks.shapes()) {
          ink.paint(shape);
        }
      }
    }
  }

  private PDPage page(Drawing drawing) {
    var box =
        new PDRectangle(
            (float) (drawing.nominalWidth() * POINTS), (float) (drawing.nominalHeight() * POINTS));
    var page = new PDPage(box);
    page.getCOSObject().setItem(COSName.RESOURCES, resources);
    document.addPage(page);
    return page;
  }

  private ShapeInk ink(PDPage page, Drawing drawing) {
    return new ShapeInk(this, drawing, new ContentStream(tree.page(page.getCOSObject())));
  }

  private void finish(PDPage page, ShapeInk ink) throws IOException {
    var contents = new PDStream(document);
    try (OutputStream out = contents.createOutputStream(COSName.FLATE_DECODE)) {
      out.write(ink.stream().bytes());
    }
    page.setContents(contents);
  }

  /** A typeface of this document. */
  EmbeddedTypeface typeface(Typeface typeface) throws IOException {
    EmbeddedTypeface known = typefaces.get(typeface);
    if (known == null) {
      known = new EmbeddedTypeface(typeface);
      typefaces.put(typeface, known);
    }
    return known;
  }

  /** The name of a graphics state in which lines have an opacity. */
  String opacity(double opacity) {
    int percent = (int) Math.round(opacity * 100);
    opacities.computeIfAbsent(
        percent,
        key -> {
          var state = new COSDictionary();
          state.setItem(STROKE_ALPHA, new COSFloat(key / 100f));
          return state;
        });
    return "O" + percent;
  }

  /**
   * The bytes of the file.
   *
   * @param trueScale whether a viewer is told to print it in its own size
   */
  byte[] bytes(AlternativeText about, boolean trueScale) throws IOException {
    var fonts = new COSDictionary();
    for (EmbeddedTypeface typeface : typefaces.values()) {
      typeface.finish(document);
      fonts.setItem(COSName.getPDFName(typeface.resource()), typeface.dictionary());
    }
    resources.setItem(COSName.FONT, fonts);
    var states = new COSDictionary();
    opacities.forEach((percent, state) -> states.setItem("O" + percent, state));
    resources.setItem(COSName.EXT_G_STATE, states);
    catalog(about, trueScale);
    document.setVersion(VERSION);
    // The file's identifier comes from this and the title in place of the time.
    document.setDocumentId(0L);
    var out = new ByteArrayOutputStream();
    document.save(out);
    return out.toByteArray();
  }

  private void catalog(AlternativeText about, boolean trueScale) throws IOException {
    PDDocumentCatalog catalog = document.getDocumentCatalog();
    COSDictionary root = catalog.getCOSObject();
    root.setItem(COSName.STRUCT_TREE_ROOT, tree.root());
    var marked = new COSDictionary();
    marked.setBoolean(COSName.getPDFName("Marked"), true);
    root.setItem(COSName.getPDFName("MarkInfo"), marked);
    root.setString(COSName.LANG, about.language());
    var preferences = new COSDictionary();
    preferences.setBoolean(COSName.getPDFName("DisplayDocTitle"), true);
    if (trueScale) {
      preferences.setName(COSName.getPDFName("PrintScaling"), "None");
    }
    root.setItem(COSName.getPDFName("ViewerPreferences"), preferences);
    document.getDocumentInformation().setTitle(about.title());
    var metadata = new PDMetadata(document);
    metadata.importXMPMetadata(Metadata.of(about).getBytes(StandardCharsets.UTF_8));
    catalog.setMetadata(metadata);
    catalog.setOutputIntents(List.of(intent()));
  }

  private PDOutputIntent intent() throws IOException {
    byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
    var intent = new PDOutputIntent(document, new ByteArrayInputStream(profile));
    intent.setInfo("sRGB IEC61966-2.1");
    intent.setOutputConditionIdentifier("sRGB IEC61966-2.1");
    return intent;
  }

  @Override
  public void close() throws IOException {
    for (EmbeddedTypeface typeface : typefaces.values()) {
      typeface.close();
    }
    document.close();
  }
}
