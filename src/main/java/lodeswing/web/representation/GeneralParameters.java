package lodeswing.web.representation;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The query parameters that every resource, or every post, knows. */
public final class GeneralParameters {

  /** The form of the answer; wins over Accept. */
  public static final Parameter<Representation> FORMAT =
      Parameter.constant("format", Representation.class, Representation::word);

  /** The language of answers that come in one language alone, whatever is asked for. */
  public static final String LANGUAGE = "en";

  /** The language that is asked for; wins over Accept-Language: {@link Negotiation#language}. */
  public static final Parameter<String> LANG =
      Parameter.of(
          "lang",
          "a language tag such as en",
          text ->
              Optional.of(text)
                  .filter(tag -> tag.matches("[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8}){0,3}")));

  /** {@code inline}: errors as a line of text with status 200. */
  public static final Parameter<String> ERRORS = Parameter.oneOf("errors", "inline", "status");

  /** The decimal sign of numbers in CSV and text, and of numbers in the query. */
  public static final Parameter<String> DECIMAL =
      Parameter.oneOf("decimal", "point", "comma").orElse("point");

  /** Whether CSV begins with a byte-order mark. */
  public static final Parameter<Boolean> BOM = Parameter.flag("bom").orElse(false);

  /** Seconds to wait for a result before a pending answer. */
  public static final Parameter<Integer> WAIT = Parameter.integer("wait", 0, 3600);

  /** Has no effect and is in no key: lets a sheet force a refresh. */
  public static final Parameter<String> CB = Parameter.of("cb", "anything", Optional::of);

  /** Whether a post tells its cost alone; known to posts that compute. */
  public static final Parameter<Boolean> DRY_RUN = Parameter.flag("dry-run").orElse(false);

  /** Names of those that leave the bytes of an answer in a given form as they are. */
  static final Set<String> WITHOUT_EFFECT_ON_BYTES =
      Set.of(FORMAT.name(), LANG.name(), ERRORS.name(), WAIT.name(), CB.name());

  private GeneralParameters() {}

  /** Names of those that every resource knows. */
  public static List<String> names() {
    return all().stream().map(Parameter::name).toList();
  }

  /** Those that every resource knows. */
  public static List<Parameter<?>> all() {
    return List.of(FORMAT, LANG, ERRORS, DECIMAL, BOM, WAIT, CB);
  }
}
