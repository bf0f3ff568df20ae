package lodeswing.web.basin;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lodeswing.analysis.basin.BasinMap;
import lodeswing.figure.AlternativeText;
import lodeswing.web.body.Numbers;
import lodeswing.web.restpoint.RestPointNames;

/** A map in words. */
final class BasinWords {

  private static final int MOST_NAMES = 8;

  /** Below this share of steady labels a note says so. */
  private static final double STEADY = 0.98;

  private final BasinRequest request;
  private final StoredSurvey survey;
  private final EndNames names;

  BasinWords(BasinRequest request, StoredSurvey survey) {
    this.request = request;
    this.survey = survey;
    this.names = new EndNames(request.layout(), survey.places());
  }

  /** What light and dark mean. */
  String scale() {
    return "Lighter: the end was certain soon after the release. Darker: it was certain late;"
        + " halfway at "
        + shownTime(survey.survey().halfTime())
        + ".";
  }

  /** What to know, in sentences. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    var places = new RestPointNames(request.layout(), survey.places());
    for (int i = 0; i < Math.min(MOST_NAMES, names.restPoints()); i++) {
      notes.add(places.sentence(i));
    }
    chance().ifPresent(notes::add);
    notes.add(scale());
    return notes;
  }

  /** How much of the map is chance, where it is enough to speak of. */
  Optional<String> chance() {
    double steady = survey.survey().steadyShare();
    return steady < STEADY
        ? Optional.of(
            String.format(
                Locale.ROOT,
                "At %.0f %% of the places in this window the end is chance: the bob swings so long"
                    + " that the last digit of the arithmetic decides, as a breath of air would on"
                    + " the table. The map shows one of the ends that can happen there.",
                100 * (1 - steady)))
        : Optional.empty();
  }

  /** The map in words, without its shares. */
  AlternativeText alternative() {
    return new AlternativeText("en", title(), "Each place is coloured by " + meaning());
  }

  /** The map in words, with the share of each end. */
  AlternativeText alternative(BasinMap map) {
    int[] counts = map.counts();
    List<String> shares = new ArrayList<>();
    for (int index = 0; index < counts.length; index++) {
      if (counts[index] > 0 && shares.size() < MOST_NAMES) {
        shares.add(
            names.name(index)
                + String.format(
                    Locale.ROOT, " %.0f %%", 100.0 * counts[index] / map.width() / map.height()));
      }
    }
    return new AlternativeText(
        "en",
        title(),
        "Each place is coloured by " + meaning() + " Shares: " + String.join(", ", shares) + ".");
  }

  private String title() {
    return request.layout().title().map(title -> title + ": ").orElse("")
        + "where every release ends";
  }

  private String meaning() {
    String unit = request.bench() ? " mm" : "";
    return String.format(
            Locale.ROOT,
            "where a bob let go there at rest ends. The window reaches from (%s, %s) to (%s, %s)%s. ",
            Numbers.plain(request.x() - request.halfWidth()),
            Numbers.plain(request.y() - request.halfWidth()),
            Numbers.plain(request.x() + request.halfWidth()),
            Numbers.plain(request.y() + request.halfWidth()),
            unit)
        + scale();
  }

  private String shownTime(double time) {
    return String.format(Locale.ROOT, request.bench() ? "%.3g s" : "t = %.3g", time);
  }

  /** Nanoseconds are the last digit. */
  static double time(double time) {
    return Math.rint(time * 1e9) / 1e9;
  }
}
