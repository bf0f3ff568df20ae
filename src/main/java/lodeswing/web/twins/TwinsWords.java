package lodeswing.web.twins;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lodeswing.analysis.twins.Cut;
import lodeswing.analysis.twins.TwinsResult;
import lodeswing.web.body.Numbers;
import lodeswing.web.trace.TracedPath;

/** Twins in words. */
final class TwinsWords {

  private final TwinsRequest request;
  private final TracedPath first;
  private final TracedPath second;
  private final TwinsResult pair;

  TwinsWords(TwinsRequest request, TracedPath first, TracedPath second, TwinsResult pair) {
    this.request = request;
    this.first = first;
    this.second = second;
    this.pair = pair;
  }

  /** The result in one sentence or two. */
  String sentence() {
    return start() + ends() + growth() + parting();
  }

  private String start() {
    List<Double> shift = request.shift();
    double place = Math.hypot(shift.get(0), shift.get(1));
    double push = Math.hypot(shift.get(2), shift.get(3));
    List<String> parts = new ArrayList<>();
    if (place > 0) {
      parts.add(length(place) + " apart");
    }
    if (push > 0) {
      parts.add("with pushes that differ by " + length(push) + (bench() ? "/s" : ""));
    }
    return "Let go " + String.join(" and ", parts) + ", ";
  }

  private String ends() {
    if (!first.decided() || !second.decided()) {
      return "the two bobs swing on: the first ends "
          + undecidedOr(first)
          + ", the second "
          + undecidedOr(second)
          + ".";
    }
    if (first.endsLike(second)) {
      return first.path().restPoint().isPresent()
          ? "both bobs come to rest " + first.where() + "."
          : "both bobs end alike: " + first.outcomeWords() + ".";
    }
    return "the first bob " + end(first) + ", the second " + end(second) + ".";
  }

  private static String end(TracedPath path) {
    return path.path().restPoint().isPresent()
        ? "comes to rest " + path.where()
        : "does not come to rest (" + path.outcomeWords() + ")";
  }

  private static String undecidedOr(TracedPath path) {
    return path.decided() ? path.where() : "nowhere that is known";
  }

  private String growth() {
    if (pair.growth().isEmpty()) {
      return "";
    }
    TwinsResult.Growth growth = pair.growth().get();
    double rate = growth.rate().value();
    double low = growth.rate().interval().low();
    double high = growth.rate().interval().high();
    String window = " Up to " + time(growth.until()) + " their separation ";
    String figures =
        " (rate " + perTime(rate) + ", between " + digits(low) + " and " + perTime(high) + ").";
    if (low > 0) {
      return window + "grows twofold every " + time(Math.log(2) / rate) + figures;
    }
    if (high < 0) {
      return window + "halves every " + time(Math.log(2) / -rate) + figures;
    }
    return window + "neither grows nor shrinks beyond doubt" + figures;
  }

  private String parting() {
    String spacing = length(pair.partedDistance() * request.layout().shownPerUnit());
    return pair.partedAt().isPresent()
        ? " They are first " + spacing + " apart at " + time(pair.partedAt().getAsDouble()) + "."
        : " They are never " + spacing + " apart up to " + time(pair.shownUntil()) + ".";
  }

  /** Names of the figures that there are none of. */
  List<String> notReached() {
    List<String> names = new ArrayList<>();
    if (pair.growth().isEmpty()) {
      names.add("growthRatePerS");
    }
    if (pair.partedAt().isEmpty()) {
      names.add("partedAtS");
    }
    return names;
  }

  /** What to know, in sentences. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(shown());
    notes.add(window());
    outcomes().ifPresent(notes::add);
    return notes;
  }

  private String shown() {
    String until = "The separation is shown until " + time(pair.shownUntil());
    return switch (pair.shownEnd()) {
      case TRUST ->
          until
              + ": from then on one of the two computed paths is not to be trusted, nor is what"
              + " is told of the pair.";
      case MODEL -> until + ": there the model of one of them ends, and so does its path.";
      case RESOLUTION ->
          until + ": from then on the two are nearer to each other than computing can tell.";
      case PARTING, SEALED, HELD, DURATION -> until + ", as long as was asked for.";
    };
  }

  private String window() {
    if (pair.growth().isEmpty()) {
      return "There is no growth rate: for want of half a small swing in which the separation was"
          + " small beside the magnets' spacing and known.";
    }
    TwinsResult.Growth growth = pair.growth().get();
    return "The growth rate holds from the release to "
        + time(growth.until())
        + ", where "
        + reason(growth.end())
        + "; over this window the finite-time Lyapunov exponents are "
        + perTime(growth.first())
        + " beside the first path and "
        + perTime(growth.second())
        + " beside the second.";
  }

  private String reason(Cut end) {
    return switch (end) {
      case PARTING -> "the two are a sixth of the magnets' spacing apart, velocities included";
      case SEALED -> "the end of one of them is decided";
      case HELD -> "friction holds one of the bobs";
      case TRUST -> "one of the computed paths is not to be trusted any more";
      case RESOLUTION -> "the two are nearer to each other than computing can tell";
      case MODEL -> "the model of one of them ends";
      case DURATION -> "the asked duration is over";
    };
  }

  private Optional<String> outcomes() {
    boolean unsure = !first.path().sure() || !second.path().sure();
    return unsure && first.decided() && second.decided()
        ? Optional.of(
            "Not both outcomes are sure: computed ten times more exactly, one of them ends"
                + " elsewhere or undecided.")
        : Optional.empty();
  }

  private boolean bench() {
    return request.first().bench();
  }

  private String length(double shown) {
    return digits(shown) + (bench() ? " mm" : "");
  }

  private String perTime(double rate) {
    return digits(rate) + (bench() ? "/s" : " a unit of time");
  }

  private String time(double seconds) {
    return bench() ? digits(seconds) + " s" : "t = " + digits(seconds);
  }

  private static String digits(double value) {
    return Numbers.shortest(Double.parseDouble(String.format(Locale.ROOT, "%.3g", value)) + 0.0);
  }
}
