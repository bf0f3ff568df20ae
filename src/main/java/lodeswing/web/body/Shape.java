package lodeswing.web.body;

import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * What one JSON value may be: the single place of a limit, from which both the strict reader and
 * the OpenAPI schema come.
 *
 * <p>Shapes are immutable. Values read are {@link Double}, {@link String}, {@link Boolean}, {@link
 * java.util.List} and {@link Body}.
 */
public sealed interface Shape
    permits NumberShape,
        TextShape,
        TableShape,
        FigureShape,
        CellShape,
        ChoiceShape,
        FlagShape,
        ListShape,
        MapShape,
        RecordShape {

  /**
   * Reads one value; every fault goes to {@code faults}.
   *
   * @param node the value as parsed
   * @param pointer JSON Pointer of the value
   * @param faults receives what is wrong
   * @return the value, empty where it has a fault
   */
  Optional<Object> read(JsonNode node, String pointer, FaultList faults);

  /** What is accepted, as the end of a sentence that begins "must be". */
  String accepted();

  /**
   * The JSON Schema (draft 2020-12) of this shape.
   *
   * @param components receives the schemas of named shapes, by name
   */
  Map<String, Object> schema(SchemaComponents components);
}
