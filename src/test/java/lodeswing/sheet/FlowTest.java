package lodeswing.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import lodeswing.figure.Shape;
import org.junit.jupiter.api.Test;

/** What stays together where a page ends, at every place where it can end. */
class FlowTest {

  private static final Paper.Format A4 = Paper.A4.lying(false);

  /** As many lines of text before a part as fill a page and more: pages for each number. */
  private static List<List<List<PageItem.Block>>> pages(Consumer<Flow> part) {
    List<List<List<PageItem.Block>>> all = new ArrayList<>();
    for (int filled = 0; filled < 270; filled += 2) {
      var flow = new Flow(A4, 15e-3, 3e-3, Locale.ENGLISH);
      flow.heading("Title").gap(filled * 1e-3);
      part.accept(flow);
      all.add(flow.pages());
    }
    return all;
  }

  private static List<Integer> lines(List<List<PageItem.Block>> pages, Tag tag) {
    List<Integer> counts = new ArrayList<>();
    for (List<PageItem.Block> page : pages) {
      int count = page.stream().filter(block -> block.tag() == tag).mapToInt(FlowTest::texts).sum();
      if (count > 0) {
        counts.add(count);
      }
    }
    return counts;
  }

  private static int texts(PageItem.Block block) {
    return block.items().stream()
        .mapToInt(
            item ->
                item instanceof PageItem.Block own
                    ? texts(own)
                    : (int)
                        ((PageItem.Marks) item)
                            .shapes().stream().filter(Shape.Text.class::isInstance).count())
        .sum();
  }

  @Test
  void noLineOfAParagraphIsLeftAlone() {
    for (int sentences = 1; sentences < 9; sentences++) {
      String text =
          "Let go at the very same place, as alike as you can, and look. ".repeat(sentences);
      boolean broken = false;
      for (List<List<PageItem.Block>> pages : pages(flow -> flow.paragraph(text))) {
        List<Integer> counts = lines(pages, Tag.PARAGRAPH);
        broken |= counts.size() > 1;
        assertTrue(
            counts.size() == 1 || counts.stream().allMatch(count -> count >= 2), counts.toString());
      }
      // Seven sentences are five lines, which are parted where the page ends between them.
      assertTrue(sentences < 7 || broken, sentences + " sentences");
    }
  }

  @Test
  void noRowOfATableIsLeftAlone() {
    List<List<String>> rows =
        List.of(List.of("one"), List.of("two"), List.of("three"), List.of("four"));
    Table table = new Table(List.of(new Table.Column("number", false)), rows);
    for (List<List<PageItem.Block>> pages : pages(flow -> flow.table(table))) {
      // The head stands over the rows of each page.
      List<Integer> counts = lines(pages, Tag.TABLE).stream().map(count -> count - 1).toList();
      assertEquals(4, counts.stream().mapToInt(Integer::intValue).sum());
      assertTrue(counts.stream().allMatch(count -> count >= 2), counts.toString());
    }
  }

  @Test
  void partsThatBelongTogetherStayOnAPage() {
    Consumer<Flow> part =
        flow ->
            flow.together(
                parts ->
                    parts
                        .subheading("Check square")
                        .paragraph("Each side must measure 50 mm.")
                        .figure("A square.", 50e-3, (left, bottom) -> List.of()));
    for (List<List<PageItem.Block>> pages : pages(part)) {
      for (List<PageItem.Block> page : pages) {
        boolean named = page.stream().anyMatch(block -> block.tag() == Tag.SUBHEADING);
        boolean shown = page.stream().anyMatch(block -> block.tag() == Tag.FIGURE);
        assertEquals(named, shown);
      }
    }
  }

  @Test
  void aQuestionStaysWithItsLines() {
    for (List<List<PageItem.Block>> pages : pages(flow -> flow.question("Is it fair?", 2))) {
      for (List<PageItem.Block> page : pages) {
        boolean asked = page.stream().anyMatch(block -> block.tag() == Tag.PARAGRAPH);
        boolean lined = page.stream().anyMatch(block -> block.tag() == Tag.ORNAMENT);
        assertEquals(asked, lined);
      }
    }
  }
}
