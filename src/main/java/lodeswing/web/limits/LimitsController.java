package lodeswing.web.limits;

import jakarta.servlet.http.HttpServletRequest;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import lodeswing.web.body.BodyReader;
import lodeswing.web.body.FaultList;
import lodeswing.web.layout.LayoutShapes;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.Subject;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.json.JsonMapper;

/** States every limit. */
@RestController
final class LimitsController {

  private static final List<Representation> OFFERED =
      List.of(Representation.JSON, Representation.CBOR);

  /** Part of the contract, so that a layout accepted here is accepted everywhere. */
  private static final List<LimitLine> FIXED =
      List.of(
          new LimitLine(
              "nestingLevels", BodyReader.DEEPEST, "level", "deepest nesting of a JSON body"),
          new LimitLine("faults", FaultList.LISTED, "fault", "most faults that one problem lists"),
          new LimitLine(
              "titleCharacters",
              LayoutShapes.TITLE_CHARACTERS,
              "character",
              "longest title of a layout"),
          new LimitLine(
              "labelCharacters",
              LayoutShapes.LABEL_CHARACTERS,
              "character",
              "longest label of a magnet"),
          new LimitLine(
              "magnets", LayoutShapes.MOST_MAGNETS, "magnet", "most magnets on one plate"),
          new LimitLine(
              "barParts", LayoutShapes.MOST_BAR_PARTS, "part", "most parts along one bar"));

  private final Limits limits;
  private final JsonMapper json;

  LimitsController(Limits limits, JsonMapper json) {
    this.limits = limits;
    this.json = json;
  }

  /**
   * One limit.
   *
   * @param name names it
   * @param value the limit
   * @param unit what is counted
   * @param meaning what it means
   */
  record LimitLine(String name, Number value, String unit, String meaning) {}

  /**
   * All of them.
   *
   * @param limits in a fixed order
   */
  record LimitList(List<LimitLine> limits) {}

  @GetMapping("/v1/limits")
  ResponseEntity<byte[]> getLimits(HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request);
    Representation form = Negotiation.choose(request, query, OFFERED);
    List<LimitLine> lines =
        Stream.concat(
                Arrays.stream(Limits.class.getRecordComponents()).map(this::line), FIXED.stream())
            .toList();
    return Reply.ofJson(form, json.writeValueAsBytes(new LimitList(lines)))
        .cache(CachePolicy.REVALIDATE)
        .to(request, Subject.NONE);
  }

  private LimitLine line(RecordComponent component) {
    Stated stated = Objects.requireNonNull(component.getAnnotation(Stated.class));
    try {
      Number value = (Number) component.getAccessor().invoke(limits);
      return new LimitLine(
          component.getName(), Objects.requireNonNull(value), stated.unit(), stated.meaning());
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("a public record's accessors can be called", e);
    }
  }
}
