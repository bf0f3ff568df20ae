package lodeswing.render.pdf;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;

/** The structure of a document, and which part of which page belongs to which element. */
final class StructureTree {

  private static final COSName PARENT_TREE = COSName.getPDFName("ParentTree");
  private static final COSName NEXT_KEY = COSName.getPDFName("ParentTreeNextKey");
  private static final COSName STRUCT_PARENTS = COSName.getPDFName("StructParents");

  private final COSDictionary root = new COSDictionary();
  private final StructureElement document;
  private final COSArray numbers = new COSArray();
  private int pages;

  StructureTree() {
    document = new StructureElement("Document", root);
    var kids = new COSArray();
    kids.add(document.dictionary());
    var parents = new COSDictionary();
    parents.setItem(COSName.NUMS, numbers);
    root.setItem(COSName.TYPE, COSName.getPDFName("StructTreeRoot"));
    root.setItem(COSName.K, kids);
    root.setItem(PARENT_TREE, parents);
  }

  /** The element that holds all others. */
  StructureElement document() {
    return document;
  }

  /** Numbers of the marked parts of a new page. */
  PageMarks page(COSDictionary page) {
    page.setInt(STRUCT_PARENTS, pages);
    page.setName(COSName.getPDFName("Tabs"), "S");
    var owners = new COSArray();
    numbers.add(COSInteger.get(pages));
    numbers.add(owners);
    pages++;
    root.setInt(NEXT_KEY, pages);
    return new PageMarks(page, owners);
  }

  COSDictionary root() {
    return root;
  }

  /** The marked parts of one page, counted from 0. */
  static final class PageMarks {

    private final COSDictionary page;
    private final COSArray owners;

    private PageMarks(COSDictionary page, COSArray owners) {
      this.page = page;
      this.owners = owners;
    }

    /** The number of a new part of an element. */
    int next(StructureElement element) {
      int number = owners.size();
      owners.add(element.dictionary());
      element.mark(page, number);
      return number;
    }
  }
}
