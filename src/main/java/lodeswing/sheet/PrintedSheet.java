package lodeswing.sheet;

import java.util.List;
import lodeswing.figure.AlternativeText;

/**
 * A document to print.
 *
 * @param about language, title and what it is, in words
 * @param pages its pages, one or more
 */
public record PrintedSheet(AlternativeText about, List<Page> pages) {

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException where there is no page
   */
  public PrintedSheet {
    if (pages.isEmpty()) {
      throw new IllegalArgumentException("A sheet has a page.");
    }
    pages = List.copyOf(pages);
  }
}
