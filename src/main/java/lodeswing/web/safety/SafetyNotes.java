package lodeswing.web.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import lodeswing.safety.SafetyReview;
import lodeswing.safety.Severity;
import lodeswing.web.layout.LayoutDocument;

/** The safety notes of a layout in a reader's language, as lines to print. */
public final class SafetyNotes {

  private final LayoutDocument layout;
  private final SafetyReview review;
  private final SafetyWords words;

  private SafetyNotes(LayoutDocument layout, SafetyReview review, SafetyWords words) {
    this.layout = layout;
    this.review = review;
    this.words = words;
  }

  /** The notes of a layout for a reader. */
  public static SafetyNotes of(LayoutDocument layout, Locale locale) {
    return new SafetyNotes(layout, LayoutSafety.review(layout), new SafetyWords(locale));
  }

  LayoutDocument layout() {
    return layout;
  }

  SafetyReview review() {
    return review;
  }

  SafetyWords words() {
    return words;
  }

  /**
   * What every sheet about the layout prints: the cautions in short, the gravest first, and to whom
   * they defer at the end.
   */
  public List<String> shortLines() {
    List<String> lines = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      review.notes().stream()
          .filter(note -> note.severity() == severity)
          .map(words::line)
          .forEach(lines::add);
    }
    lines.add(words.briefDeferral());
    return List.copyOf(lines);
  }

  /** The notes in full, with rules, sources and what is not covered. */
  List<String> fullLines() {
    Stream<String> notes =
        review.notes().stream()
            .flatMap(
                note ->
                    Stream.of(
                        "",
                        words.severity(note.severity()) + ": " + words.title(note),
                        words.text(note),
                        words.label("label.rule") + ": " + words.rule(note),
                        words.label("label.source") + ": " + words.source(note),
                        words.label("label.not-covered") + ": " + words.notCovered(note)));
    Stream<String> needs = needs().isEmpty() ? Stream.of() : Stream.of("", words.needs(needs()));
    return Stream.of(
            Stream.of(words.heading(layout.title())),
            notes,
            magnets(),
            needs,
            Stream.of("", words.deferral()))
        .flatMap(lines -> lines)
        .toList();
  }

  /** Pointers of all that would tell more. */
  List<String> needs() {
    return Stream.concat(
            review.notes().stream().flatMap(note -> note.needs().stream()), review.needs().stream())
        .distinct()
        .toList();
  }

  private Stream<String> magnets() {
    MagnetTable table = new MagnetTable(this);
    return table.rows().isEmpty()
        ? Stream.of()
        : Stream.concat(
            Stream.of("", words.label("label.magnets")), table.rows().stream().map(table::line));
  }
}
