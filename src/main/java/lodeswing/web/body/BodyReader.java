package lodeswing.web.body;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonReadFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * Reads a body strictly and reports every fault at once.
 *
 * <p>Two steps: bytes to a tree within stated limits (UTF-8, depth, lengths), where what is not
 * JSON at all is refused at its first fault; then the tree by a {@link Shape}. Members given twice
 * are found in the first step and reported with the faults of the second.
 */
public final class BodyReader {

  /** Deepest nesting of lists and objects. */
  public static final int DEEPEST = 32;

  /** Most characters of one text. */
  public static final int LONGEST_TEXT = 2_000_000;

  /** Most characters of one number. */
  public static final int LONGEST_NUMBER = 100;

  /** Most characters of one member's name. */
  public static final int LONGEST_NAME = 200;

  /** Editors and sheets put it first; a reader may pass it over (RFC 8259, section 8.1). */
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(DEEPEST)
                  .maxStringLength(LONGEST_TEXT)
                  .maxNumberLength(LONGEST_NUMBER)
                  .maxNameLength(LONGEST_NAME)
                  .build())
          .build();

  private BodyReader() {}

  /**
   * Reads a JSON object.
   *
   * @param bytes the body as sent, UTF-8
   * @param shape what is accepted
   * @return the object with defaults filled in
   * @throws ProblemException {@code malformed-body} where the bytes are not JSON, {@code
   *     invalid-request} with every fault otherwise
   */
  public static Body read(byte[] bytes, RecordShape shape) {
    var faults = new FaultList();
    JsonNode tree = parse(bytes, faults);
    return read(tree, shape, faults);
  }

  /**
   * Reads a tree that is at hand already.
   *
   * @param tree the values
   * @param shape what is accepted
   * @throws ProblemException {@code invalid-request} with every fault
   */
  public static Body read(JsonNode tree, RecordShape shape) {
    return read(tree, shape, new FaultList());
  }

  private static Body read(JsonNode tree, RecordShape shape, FaultList faults) {
    Optional<Object> value = shape.read(tree, "", faults);
    faults.refuseIfAny(ProblemCode.INVALID_REQUEST, "The request");
    return (Body) value.orElseThrow(() -> new IllegalStateException("no value and no fault"));
  }

  private static JsonNode parse(byte[] bytes, FaultList faults) {
    String text = decode(bytes);
    if (text.isBlank()) {
      throw malformed("The body is empty; a JSON object is expected.", "is empty");
    }
    try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), text)) {
      parser.nextToken();
      JsonNode tree = value(parser, "", faults);
      if (parser.nextToken() != null) {
        throw malformed("The body goes on after the end of its JSON value.", "has a second value");
      }
      return tree;
    } catch (JacksonException e) {
      TokenStreamLocation at = e.getLocation();
      String where =
          at == null ? "" : " at line " + at.getLineNr() + ", column " + at.getColumnNr();
      throw malformed("The body cannot be read as JSON" + where + ".", reason(e) + where);
    }
  }

  /** Why reading stopped, in words that lead on to the place. */
  private static String reason(JacksonException e) {
    if (e instanceof UnexpectedEndOfInputException) {
      return "ends too early: a bracket, a quotation mark or a value is missing";
    }
    if (e instanceof StreamConstraintsException) {
      return "goes beyond a limit (nesting "
          + DEEPEST
          + " levels, a text "
          + LONGEST_TEXT
          + " characters, a number "
          + LONGEST_NUMBER
          + ", a name "
          + LONGEST_NAME
          + ")";
    }
    return "is no JSON any more: look for a missing or spare comma, colon, quotation mark or bracket";
  }

  private static String decode(byte[] bytes) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw malformed("The body is not text in UTF-8.", "must be JSON text in UTF-8");
    }
  }

  private static JsonNode value(JsonParser parser, String pointer, FaultList faults) {
    JsonToken token = parser.currentToken();
    if (token == null) {
      throw malformed("The body ends too early.", "ends too early");
    }
    return switch (token) {
      case START_OBJECT -> object(parser, pointer, faults);
      case START_ARRAY -> array(parser, pointer, faults);
      case VALUE_STRING -> NODES.stringNode(parser.getString());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> NODES.numberNode(parser.getDoubleValue());
      case VALUE_TRUE -> NODES.booleanNode(true);
      case VALUE_FALSE -> NODES.booleanNode(false);
      default -> NODES.nullNode();
    };
  }

  private static JsonNode object(JsonParser parser, String pointer, FaultList faults) {
    var node = NODES.objectNode();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      String at = JsonPointer.member(pointer, name);
      parser.nextToken();
      JsonNode value = value(parser, at, faults);
      if (node.has(name)) {
        faults.add(at, "is given twice; give it once");
      } else {
        node.set(name, value);
      }
    }
    return node;
  }

  private static JsonNode array(JsonParser parser, String pointer, FaultList faults) {
    var node = NODES.arrayNode();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      node.add(value(parser, JsonPointer.element(pointer, node.size()), faults));
    }
    return node;
  }

  private static ProblemException malformed(String detail, String fault) {
    return new ProblemException(ProblemCode.MALFORMED_BODY, detail, List.of(new Fault("", fault)));
  }
}
