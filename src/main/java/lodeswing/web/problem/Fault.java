package lodeswing.web.problem;

/**
 * One thing that is wrong with a request.
 *
 * <p>Both texts may repeat what was sent: characters that cannot be seen, or that turn the reading
 * of a line round, are shown as question marks.
 *
 * @param pointer JSON Pointer into the body (RFC 6901), or {@code ?name} for a query parameter
 * @param detail what is wrong and what would be accepted
 */
public record Fault(String pointer, String detail) {

  public Fault {
    pointer = visible(pointer);
    detail = visible(detail);
  }

  private static String visible(String text) {
    return text.codePoints().allMatch(Fault::isVisible)
        ? text
        : text.codePoints()
            .map(c -> isVisible(c) ? c : '?')
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
            .toString();
  }

  private static boolean isVisible(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> true;
    };
  }
}
