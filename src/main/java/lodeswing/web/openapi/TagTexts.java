package lodeswing.web.openapi;

import java.util.Map;

/** What the groups of operations are about, each in a sentence. */
final class TagTexts {

  private static final Map<String, String> TEXTS =
      Map.ofEntries(
          Map.entry("Check", "Whether a rig will swing, stick, slip or tip, and what mends it."),
          Map.entry("Comparisons", "A recording from the bench against the foretold path."),
          Map.entry("Embedding", "The figure for pages of other sites, and how to embed it."),
          Map.entry("Field", "The magnets' field: at points, as maps, lines, filings, weak spots."),
          Map.entry("Fits", "What a recording tells of the rig's parts."),
          Map.entry("Free swing", "The rig without its magnets: periods, figures, decay."),
          Map.entry("Layouts", "Rigs: pendulum, magnets, gap and loss; samples and variants."),
          Map.entry("Magnet estimates", "A magnet's remanence from what a bench can measure."),
          Map.entry("Maps", "Where every release ends: maps in tiles, lists, summaries."),
          Map.entry("Occupancy", "Where the bob spends its time beside the field's strength."),
          Map.entry(
              "Odds", "Chances of ends for a hand that wanders and parts that are not exact."),
          Map.entry("Rest points", "Where the bob can rest, and what keeps it there."),
          Map.entry("Safety notes", "Cautions for a rig, with their figures and sources."),
          Map.entry("Service", "The service itself: limits, problems, jobs."),
          Map.entry("Sheets", "What is printed: placing sheets, labels, worksheets."),
          Map.entry("Sweeps", "One or two quantities varied, and what comes of it."),
          Map.entry("Traces", "The path of one release, as numbers and pictures."),
          Map.entry("Tunings", "Which moves of the magnets give the wanted odds."),
          Map.entry("Twins", "Two releases a shift apart, and when they part."));

  private TagTexts() {}

  /**
   * What a group is about.
   *
   * @throws IllegalArgumentException if nothing is said about it
   */
  static String of(String tag) {
    String text = TEXTS.get(tag);
    if (text == null) {
      throw new IllegalArgumentException("No text tells what the group " + tag + " is about");
    }
    return text;
  }
}
