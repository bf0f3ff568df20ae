package lodeswing.web.field;

import java.util.ArrayList;
import java.util.List;
import lodeswing.analysis.field.PlateField;
import lodeswing.core.magnet.Block;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.Ring;
import lodeswing.core.rig.BenchLayout;
import lodeswing.job.ComputationKey;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/**
 * What is asked about a layout's field, in millimetres, with every default filled in.
 *
 * @param layout the layout, one of the bench
 * @param view where it is looked at
 * @param subject what is shown
 */
record FieldRequest(LayoutDocument layout, FieldView view, FieldSubject subject) {

  /** The one computation of all pictures of the field. */
  static final String KIND = "field";

  private static final String FORM = "form=1";

  /** A block's logarithms and angles take as long as so many discs on lanes. */
  private static final double BLOCK = 20;

  /** The rig. */
  BenchLayout bench() {
    return (BenchLayout) layout.layout();
  }

  /** The field of its magnets. */
  PlateField plate() {
    return PlateField.of(bench());
  }

  /** How many evaluations of one magnet's field at one point it takes, about. */
  double evaluations() {
    double sources = 0;
    for (PlacedMagnet placed : bench().magnets()) {
      sources += placed.magnet() instanceof Block ? BLOCK : placed.magnet() instanceof Ring ? 2 : 1;
    }
    double points = subject.points(view.halfWidth(), bench().magnets().size());
    return sources * (bench().backing().isPresent() ? 2 : 1) * points;
  }

  /**
   * Refuses what costs too much, saying what to ask instead.
   *
   * @throws ProblemException {@code too-costly}
   */
  void checkCost(Limits limits) {
    double evaluations = evaluations();
    if (evaluations <= limits.fieldEvaluations()) {
      return;
    }
    double share = limits.fieldEvaluations() / evaluations;
    String asked =
        "takes about "
            + Math.round(evaluations)
            + " evaluations of at most "
            + Math.round(limits.fieldEvaluations());
    Fault fault =
        switch (subject.word()) {
          case "map" ->
              new Fault(
                  "?side",
                  asked
                      + "; lower it to "
                      + (int) (((FieldSubject.Strength) subject).side() * Math.sqrt(share)));
          case "lines" ->
              new Fault(
                  "?apartMm",
                  asked
                      + "; raise it to "
                      + Numbers.plain(
                          ((FieldSubject.Lines) subject).apartMm() / Math.sqrt(share) * 1.01));
          case "filings" ->
              new Fault(
                  "?count",
                  asked
                      + "; lower it to "
                      + (int) (((FieldSubject.Strewn) subject).count() * share));
          default -> new Fault("?halfWidth", asked + "; take a plate of fewer magnets");
        };
    throw new ProblemException(
        ProblemCode.TOO_COSTLY, "The picture asks for the field too often.", List.of(fault));
  }

  /** Names the result: labels do not change it. */
  ComputationKey key() {
    List<String> words = words();
    return new ComputationKey(
        "fld",
        KIND
            + "|"
            + FORM
            + "|"
            + layout.physicsKey()
            + "|"
            + String.join(" ", words.subList(1, words.size())));
  }

  /** All of it in words without blanks, the layout's id first. */
  List<String> words() {
    List<String> words = new ArrayList<>();
    words.add(layout.layoutId());
    words.add(subject.word());
    words.addAll(view.words());
    words.addAll(subject.words());
    return words;
  }

  /** The request that such words tell. */
  static FieldRequest of(LayoutDocument layout, List<String> words) {
    return new FieldRequest(
        layout,
        FieldView.of(words.subList(2, 6)),
        FieldSubject.of(words.get(1), words.subList(6, words.size())));
  }

  /** Where the same is answered again, with all that was asked. */
  String url() {
    return base() + "/field/" + subject.word() + "?" + view.query() + subject.query();
  }

  /** The layout's own address. */
  String base() {
    return "/v1/layouts/" + layout.layoutId();
  }
}
