package lodeswing.web.odds;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lodeswing.web.hand.HandByAddress;
import lodeswing.web.jobs.Answerable;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.landscape.PreparingCost;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.limits.Limits;
import lodeswing.web.openapi.OperationDescription.ParameterText;
import lodeswing.web.posted.PostedAnswers;
import lodeswing.web.posted.PostedRequests;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import org.springframework.stereotype.Component;

/** Odds for other resources that show them beside labels, asked by the same parameters. */
@Component
public final class LabelOdds {

  /** Those without which there are no odds. */
  private static final List<Parameter<Double>> NEEDED =
      List.of(HandByAddress.X, HandByAddress.Y, HandByAddress.SPREAD);

  private final PostedRequests<OddsRequest> odds;
  private final OddsComputations computations;
  private final PreparingCost cost;
  private final PostedAnswers answers;
  private final Limits limits;

  LabelOdds(
      PostedRequests<OddsRequest> odds,
      OddsComputations computations,
      PreparingCost cost,
      PostedAnswers answers,
      Limits limits) {
    this.odds = odds;
    this.computations = computations;
    this.cost = cost;
    this.answers = answers;
    this.limits = limits;
  }

  /**
   * How likely a label is.
   *
   * @param low of its 95 % interval
   * @param high of its 95 % interval
   */
  public record Chance(double chance, double low, double high) {}

  /** The chances of labels; one that never came has chance 0 with its interval. */
  public interface Chances {

    /** The chance of a label. */
    Chance of(String label);
  }

  /** The parameters of odds, none of them needed. */
  public static List<Parameter<?>> parameters() {
    return OddsByAddress.all().stream().<Parameter<?>>map(LabelOdds::unneeded).toList();
  }

  /** What they say about themselves. */
  public static List<ParameterText> texts() {
    return OddsByAddress.texts().stream()
        .map(own -> ParameterText.optional(own.name(), own.shape(), own.text(), own.example()))
        .toList();
  }

  private static Parameter<?> unneeded(Parameter<?> parameter) {
    return NEEDED.contains(parameter) ? parameter.unneeded() : parameter;
  }

  /**
   * Whether a query asks for odds.
   *
   * @throws ProblemException {@code invalid-request} where it asks for half of them
   */
  public static boolean asked(QueryParameters query) {
    List<Fault> missing =
        NEEDED.stream()
            .filter(parameter -> query.find(parameter.unneeded()).isEmpty())
            .map(
                parameter ->
                    new Fault(
                        "?" + parameter.name(),
                        "is missing: chances need x, y and spreadMm; leave out all three for labels"
                            + " alone"))
            .toList();
    if (!missing.isEmpty() && missing.size() < NEEDED.size()) {
      throw new ProblemException(
          ProblemCode.INVALID_REQUEST, "Half a hand has no chances.", missing);
    }
    return missing.isEmpty();
  }

  /** An answer made of a layout's odds, which are computed or wait as a job first. */
  public Answerable asked(
      QueryParameters query, LayoutDocument layout, Function<Chances, Reply> writer) {
    var sent = OddsByAddress.body(query);
    OddsRequest asked = OddsRequest.of(layout, sent);
    new OddsReview(asked, LayoutPlace.ADDRESS).check(sent, limits);
    cost.check(layout, LayoutPlace.ADDRESS);
    return answers.addressed(
        query,
        odds,
        asked,
        computations.of(asked, LayoutPlace.ADDRESS),
        (own, result) ->
            writer.apply(chances(new OddsTable(own, StoredOdds.read(result.bytes())))));
  }

  private static Chances chances(OddsTable table) {
    return label -> {
      Optional<OddsLine> found =
          table.all().stream().filter(line -> line.label().equals(Optional.of(label))).findFirst();
      return found
          .map(line -> new Chance(line.chance(), line.interval().low(), line.interval().high()))
          .orElseGet(() -> new Chance(0, table.none().low(), table.none().high()));
    };
  }
}
