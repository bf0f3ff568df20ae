package lodeswing.render.pdf;

import java.util.Optional;
import lodeswing.sheet.Tag;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** An element of the structure tree (ISO 32000-1:2008, 14.7.2). */
final class StructureElement {

  private static final COSName SCOPE = COSName.getPDFName("Scope");
  private static final COSName BOX = COSName.getPDFName("BBox");

  private final String type;
  private final COSDictionary dictionary = new COSDictionary();
  private final COSArray kids = new COSArray();

  StructureElement(String type, COSBase parent) {
    this.type = type;
    dictionary.setItem(COSName.TYPE, COSName.getPDFName("StructElem"));
    dictionary.setItem(COSName.S, COSName.getPDFName(type));
    dictionary.setItem(COSName.P, parent);
    dictionary.setItem(COSName.K, kids);
  }

  String type() {
    return type;
  }

  COSDictionary dictionary() {
    return dictionary;
  }

  /** A new element within this one. */
  StructureElement child(Tag tag, String alternative, PDRectangle page) {
    var child = new StructureElement(tag.type(), dictionary);
    kids.add(child.dictionary);
    if (!alternative.isEmpty()) {
      child.dictionary.setString(COSName.ALT, alternative);
    }
    attributes(tag, page).ifPresent(found -> child.dictionary.setItem(COSName.A, found));
    return child;
  }

  private static Optional<COSDictionary> attributes(Tag tag, PDRectangle page) {
    var attributes = new COSDictionary();
    switch (tag) {
      case COLUMN_HEAD -> {
        attributes.setName(COSName.O, "Table");
        attributes.setName(SCOPE, "Column");
      }
      case ROW_HEAD -> {
        attributes.setName(COSName.O, "Table");
        attributes.setName(SCOPE, "Row");
      }
      case FIGURE -> {
        attributes.setName(COSName.O, "Layout");
        var box = new COSArray();
        box.add(COSInteger.ZERO);
        box.add(COSInteger.ZERO);
        box.add(new COSFloat(page.getWidth()));
        box.add(new COSFloat(page.getHeight()));
        attributes.setItem(BOX, box);
      }
      default -> {
        return Optional.empty();
      }
    }
    return Optional.of(attributes);
  }

  /** A part of a page's content. */
  void mark(COSDictionary page, int number) {
    dictionary.setItem(COSName.PG, page);
    kids.add(COSInteger.get(number));
  }
}
