package lodeswing.web.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lodeswing.sheet.Paper;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.openapi.OperationDescription.ParameterText;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;

/** What every sheet may be asked for: the paper, how it lies, and the page of an SVG. */
public final class SheetQuery {

  static final int MOST_PAGES = 999;

  /** The paper. */
  public static final Parameter<Paper> PAPER =
      Parameter.constant("paper", Paper.class, Paper::word).orElse(Paper.A4);

  static final Parameter<String> ORIENTATION =
      Parameter.oneOf("orientation", "portrait", "landscape");

  /** The page of an SVG. */
  public static final Parameter<Integer> PAGE = Parameter.integer("page", 1, MOST_PAGES).orElse(1);

  private SheetQuery() {}

  /** Whether the paper lies across; empty where the sheet may choose. */
  static Optional<Boolean> landscape(QueryParameters query) {
    return query.find(ORIENTATION).map("landscape"::equals);
  }

  /** What the parameters say about themselves. */
  static List<ParameterText> texts() {
    return List.of(
        paperText(),
        ParameterText.optional(
            "orientation",
            ChoiceShape.of("portrait", "landscape"),
            "How the paper lies; where it is left out, as it takes fewer pages.",
            "portrait"),
        pageText());
  }

  /** What the paper says about itself. */
  public static ParameterText paperText() {
    return ParameterText.optional(
        "paper",
        ChoiceShape.of(Arrays.stream(Paper.values()).map(Paper::word).toArray(String[]::new)),
        "The paper: A4 or A3 (ISO 216), or Letter.",
        "a4");
  }

  /** What the page says about itself. */
  public static ParameterText pageText() {
    return ParameterText.optional(
        "page",
        NumberShape.count(1, MOST_PAGES),
        "The page of an SVG, which holds one; a PDF holds them all.",
        "1");
  }
}
