package lodeswing.web.twins;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.job.ComputationKey;
import lodeswing.web.body.Body;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.posted.Posted;
import lodeswing.web.posted.PostedKind;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.trace.TraceRequest;

/**
 * Two releases as they are asked for, in the layout's own units, with every default filled in.
 *
 * @param first the trace of the first one
 * @param shift {@code x, y, vx, vy} from the first release to the second, not all 0
 */
record TwinsRequest(TraceRequest first, List<Double> shift) implements Posted<TwinsRequest> {

  static final PostedKind KIND =
      new PostedKind(
          "twn",
          "twins",
          "/v1/twins/",
          TwinsShapes.STORED,
          "No twins of this id are stored; post them again at /v1/twins.");

  /** Raised with every change of the form in which twins are stored. */
  private static final String FORM = "form=1";

  TwinsRequest {
    shift = List.copyOf(shift);
  }

  /**
   * From a body that {@link TwinsShapes#REQUEST} has read.
   *
   * @throws ProblemException {@code invalid-request} where the shift moves nothing
   */
  static TwinsRequest of(LayoutDocument layout, Body body, boolean fromQuery) {
    Body shift = body.object("shift");
    TwinsRequest twins =
        new TwinsRequest(
            TraceRequest.of(layout, body),
            List.of(shift.number("x"), shift.number("y"), shift.number("vx"), shift.number("vy")));
    if (twins.second().release().equals(twins.first().release())) {
      throw new ProblemException(
          ProblemCode.INVALID_REQUEST,
          "Twins are let go at two places, or with two pushes.",
          List.of(
              new Fault(
                  fromQuery ? "?shiftX" : "/shift",
                  "moves the release by nothing; give a shift of at least one of its components"
                      + " that is not 0")));
    }
    return twins;
  }

  @Override
  public LayoutDocument layout() {
    return first.layout();
  }

  /** The trace of the second release. */
  TraceRequest second() {
    return first.shifted(shift);
  }

  @Override
  public int revision() {
    return first.revision();
  }

  @Override
  public Body canonical() {
    Map<String, Object> moved = new LinkedHashMap<>();
    moved.put("x", shift.get(0));
    moved.put("y", shift.get(1));
    moved.put("vx", shift.get(2));
    moved.put("vy", shift.get(3));
    return first.canonical().with("shift", Body.of(moved));
  }

  /** The shift as a body. */
  Body shiftBody() {
    return canonical().object("shift");
  }

  @Override
  public PostedKind kind() {
    return KIND;
  }

  @Override
  public TwinsRequest of(int other) {
    return new TwinsRequest(first.of(other), shift);
  }

  /** Names the two paths alone: labels and thinning do not change them. */
  ComputationKey pathsKey() {
    Body physics = canonical().without("thin").without("between");
    return new ComputationKey(
        "twp",
        KIND.word() + "|" + FORM + "|" + layout().physicsKey() + "|" + physics.toJson(),
        revision());
  }
}
