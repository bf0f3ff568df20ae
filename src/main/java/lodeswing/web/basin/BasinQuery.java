package lodeswing.web.basin;

import java.util.List;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Representation;

/** The query parameters of maps. */
final class BasinQuery {

  static final int LEAST_SIDE = 16;
  static final int GREATEST_SIDE = 8_192;
  private static final int USUAL_SIDE = 512;

  static final Parameter<Boolean> PATTERNS = Parameter.flag("patterns").orElse(false);
  static final Parameter<Boolean> SETTLED = Parameter.flag("settled").orElse(false);
  static final Parameter<String> SIZE = Parameter.oneOf("size", "256", "512").orElse("256");
  static final Parameter<Integer> WIDTH = Parameter.integer("width", LEAST_SIDE, GREATEST_SIDE);
  static final Parameter<Integer> HEIGHT = Parameter.integer("height", LEAST_SIDE, GREATEST_SIDE);

  /** Revision of the pictures' look: in addresses that are kept for ever, without effect. */
  static final Parameter<Integer> LOOK = Parameter.integer("look", 1, 1_000_000);

  private BasinQuery() {}

  /**
   * Whether settling times are asked for.
   *
   * @throws ProblemException {@code invalid-request} for a picture, which cannot show them
   */
  static boolean settled(QueryParameters query, Representation form) {
    boolean settled = query.get(SETTLED);
    if (settled && form == Representation.PNG) {
      throw new ProblemException(
          ProblemCode.INVALID_REQUEST,
          "A picture is shaded by sealing times; settling times are in the other forms.",
          List.of(new Fault("?settled", "goes with format=csv and format=binary")));
    }
    return settled;
  }

  /**
   * The size of a picture: one side given means a square.
   *
   * @param width columns
   * @param height rows
   */
  record Size(int width, int height) {

    /**
     * Reads it.
     *
     * @throws ProblemException {@code too-costly}
     */
    static Size of(QueryParameters query, Limits limits) {
      int width = query.find(WIDTH).or(() -> query.find(HEIGHT)).orElse(USUAL_SIDE);
      int height = query.find(HEIGHT).orElse(width);
      if ((long) width * height > limits.previewPixels()) {
        int side = (int) Math.sqrt(limits.previewPixels());
        throw new ProblemException(
            ProblemCode.TOO_COSTLY,
            "The picture has more pixels than " + limits.previewPixels() + ".",
            List.of(
                new Fault("?width", "is " + width + "; lower both to " + side),
                new Fault("?height", "is " + height + "; lower both to " + side)));
      }
      return new Size(width, height);
    }
  }
}
