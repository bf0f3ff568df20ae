package lodeswing.render.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import lodeswing.figure.Drawing;
import lodeswing.sheet.Page;
import lodeswing.sheet.PrintedSheet;

/**
 * Writes sheets and drawings as PDF: lines and text, no pixels; every part tagged, typefaces inside
 * as subsets; made to keep to PDF/A-2a and PDF/UA-1 (ISO 19005-2:2011, ISO 14289-1:2014).
 *
 * <p>Holds no time and asks for no system font: the same sheet gives the same bytes on the same
 * Java version.
 */
public final class PdfWriter {

  private PdfWriter() {}

  /** A sheet, page by page in its true size. */
  public static byte[] write(PrintedSheet sheet) {
    try (var writer = new DocumentWriter()) {
      for (Page page : sheet.pages()) {
        writer.sheet(page, sheet.about());
      }
      return writer.bytes(sheet.about(), true);
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
  }

  /** A drawing as one page of its nominal size, 96 pixels to the inch. */
  public static byte[] write(Drawing drawing) {
    try (var writer = new DocumentWriter()) {
      writer.figure(drawing);
      return writer.bytes(drawing.alternative(), false);
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
  }
}
