package lodeswing.web.posted;

import lodeswing.web.body.Body;
import lodeswing.web.body.BodyReader;
import lodeswing.web.body.RecordShape;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.problem.ProblemException;
import org.jspecify.annotations.Nullable;

/**
 * The body of a post that is about a layout.
 *
 * @param body as it was read
 * @param layout sent whole, or stored under the id that was sent
 * @param place which of the two, for what is told of its faults
 */
public record SentRequest(Body body, LayoutDocument layout, LayoutPlace place) {

  /**
   * Reads a body; none at all is an empty one.
   *
   * @throws ProblemException with every fault of the body, or {@code not-found} for its layout
   */
  public static SentRequest read(byte @Nullable [] bytes, RecordShape shape, LayoutStore layouts) {
    Body body = BodyReader.read(bytes == null ? new byte[0] : bytes, shape);
    return body.findObject("layout")
        .map(whole -> new SentRequest(body, layouts.read(whole), LayoutPlace.WHOLE))
        .orElseGet(
            () -> new SentRequest(body, layouts.get(body.text("layoutId")), LayoutPlace.STORED));
  }
}
