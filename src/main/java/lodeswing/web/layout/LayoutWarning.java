package lodeswing.web.layout;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import lodeswing.web.body.Body;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;

/**
 * Something about a layout that can be built but probably was not meant.
 *
 * @param code word for programs
 * @param detail one sentence with the figure
 * @param pointer JSON Pointer of the member in the body that was sent, or in the canonical form
 */
public record LayoutWarning(String code, String detail, String pointer) {

  private static final Shape ANY_TEXT = new TextShape(10_000);

  /** A warning in a document. */
  public static final ObjectShape SHAPE =
      ObjectShape.named(
              "LayoutWarning",
              "Something that was probably not meant, or a limit that the layout's magnets pass.")
          .open()
          .required("code", ANY_TEXT, "Word for programs.")
          .required("detail", ANY_TEXT, "One sentence with the figure.")
          .required("pointer", ANY_TEXT, "JSON Pointer of the member.")
          .build();

  /** Several as a JSON list. */
  static String json(List<LayoutWarning> warnings) {
    return warnings.stream().map(LayoutWarning::json).collect(Collectors.joining(",", "[", "]"));
  }

  /** The warning as a member of a document. */
  Body body() {
    var about = new LinkedHashMap<String, Object>();
    about.put("code", code);
    about.put("detail", detail);
    about.put("pointer", pointer);
    return Body.of(about);
  }

  private String json() {
    return body().toJson();
  }
}
