package lodeswing.web.layout;

/**
 * Something about a layout that can be built but probably was not meant.
 *
 * @param code word for programs
 * @param detail one sentence with the figure
 * @param pointer JSON Pointer of the member in the body that was sent
 */
public record LayoutWarning(String code, String detail, String pointer) {}
