package lodeswing.web.sheet;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import lodeswing.render.pdf.PdfWriter;
import lodeswing.render.svg.SvgWriter;
import lodeswing.sheet.PrintedSheet;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;

/** A sheet as an answer: all of it as PDF, or one page as SVG. */
public final class SheetReply {

  /** The forms of a sheet. */
  public static final List<Representation> OFFERED =
      List.of(Representation.PDF, Representation.SVG);

  private SheetReply() {}

  /**
   * The answer.
   *
   * @param name under which a browser saves it, without its ending
   * @throws ProblemException {@code invalid-request} where the query asks for a page that the sheet
   *     has not
   */
  public static Reply of(
      Representation form, PrintedSheet sheet, QueryParameters query, String name, Locale locale) {
    Reply reply =
        form == Representation.PDF
            ? Reply.of(form, PdfWriter.write(sheet))
            : Reply.of(form, page(sheet, query).getBytes(StandardCharsets.UTF_8));
    return reply.fileName(name + "." + form.word()).language(locale);
  }

  private static String page(PrintedSheet sheet, QueryParameters query) {
    int page = query.get(SheetQuery.PAGE);
    if (page > sheet.pages().size()) {
      throw new ProblemException(
          ProblemCode.INVALID_REQUEST,
          "The sheet has fewer pages.",
          List.of(
              new Fault(
                  "?page", "is beyond the last page: this sheet has " + sheet.pages().size())));
    }
    return SvgWriter.printed(sheet.pages().get(page - 1).drawing(sheet.about()));
  }
}
