package lodeswing.web.representation;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * A query parameter that a resource knows: its name, what it takes, and its default.
 *
 * <p>Immutable; meant to be a constant of the controller.
 *
 * @param <T> type of the value
 */
public final class Parameter<T> {

  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d{1,40}(\\.\\d{0,40})?|\\.\\d{1,40})([eE][+-]?\\d{1,3})?");
  private static final Pattern INTEGER = Pattern.compile("[+-]?\\d{1,18}");

  private final String name;
  private final String expected;
  private final Function<String, Optional<T>> reader;
  private final boolean required;
  private final Optional<T> fallback;
  private final boolean numeric;

  private Parameter(
      String name,
      String expected,
      Function<String, Optional<T>> reader,
      boolean required,
      Optional<T> fallback,
      boolean numeric) {
    this.name = name;
    this.expected = expected;
    this.reader = reader;
    this.required = required;
    this.fallback = fallback;
    this.numeric = numeric;
  }

  private static <T> Parameter<T> optional(
      String name, String expected, Function<String, Optional<T>> reader, boolean numeric) {
    return new Parameter<>(name, expected, reader, false, Optional.empty(), numeric);
  }

  /** A finite number from {@code low} to {@code high}, both included. */
  public static Parameter<Double> number(String name, double low, double high) {
    return optional(
        name,
        "a number from " + plain(low) + " to " + plain(high),
        text ->
            NUMBER.matcher(text).matches()
                ? Optional.of(Double.valueOf(text)).filter(value -> value >= low && value <= high)
                : Optional.empty(),
        true);
  }

  /** A whole number from {@code low} to {@code high}, both included. */
  public static Parameter<Integer> integer(String name, int low, int high) {
    return optional(
        name,
        "a whole number from " + low + " to " + high,
        text ->
            INTEGER.matcher(text).matches()
                ? Optional.of(Long.valueOf(text))
                    .filter(value -> value >= low && value <= high)
                    .map(Long::intValue)
                : Optional.empty(),
        false);
  }

  /** Text of 1 to {@code longest} characters. */
  public static Parameter<String> text(String name, int longest) {
    return optional(
        name,
        "text of 1 to " + longest + " characters",
        text -> Optional.of(text).filter(value -> !value.isEmpty() && value.length() <= longest),
        false);
  }

  /** {@code true} or {@code false}. */
  public static Parameter<Boolean> flag(String name) {
    return optional(
        name,
        "true or false",
        text ->
            text.equals("true")
                ? Optional.of(true)
                : Optional.of(false).filter(no -> text.equals("false")),
        false);
  }

  /** One of some words. */
  public static Parameter<String> oneOf(String name, String... words) {
    List<String> known = List.of(words);
    return optional(
        name,
        "one of " + String.join(", ", known),
        text -> Optional.of(text).filter(known::contains),
        false);
  }

  /** One of the constants of an enum, each under its word. */
  public static <E extends Enum<E>> Parameter<E> constant(
      String name, Class<E> type, Function<E, String> word) {
    List<E> constants = Arrays.asList(type.getEnumConstants());
    return optional(
        name,
        "one of " + String.join(", ", constants.stream().map(word).toList()),
        text -> constants.stream().filter(one -> word.apply(one).equals(text)).findFirst(),
        false);
  }

  /**
   * A parameter with a reader of its own.
   *
   * @param expected what it takes, to follow the words "give"
   * @param reader the value, or nothing where the text is not one
   */
  public static <T> Parameter<T> of(
      String name, String expected, Function<String, Optional<T>> reader) {
    return optional(name, expected, reader, false);
  }

  /** This parameter, a fault where it is missing. */
  public Parameter<T> required() {
    return new Parameter<>(name, expected, reader, true, fallback, numeric);
  }

  /** This parameter, which may be missing, without a value then. */
  public Parameter<T> unneeded() {
    return new Parameter<>(name, expected, reader, false, Optional.empty(), numeric);
  }

  /** This parameter with the value that it has where it is missing. */
  public Parameter<T> orElse(T value) {
    return new Parameter<>(name, expected, reader, false, Optional.of(value), numeric);
  }

  /** Its name in the query. */
  public String name() {
    return name;
  }

  /** What it takes, in words. */
  public String expected() {
    return expected;
  }

  boolean isRequired() {
    return required;
  }

  boolean isNumeric() {
    return numeric;
  }

  Optional<T> fallback() {
    return fallback;
  }

  /** The value that a text is, or nothing. */
  public Optional<T> read(String text) {
    return reader.apply(text);
  }

  private static String plain(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? Long.toString((long) value)
        : Double.toString(value);
  }
}
