package lodeswing.web.representation;

import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.dataformat.cbor.CBORMapper;

/** The CBOR form (RFC 8949) of a JSON body: the same tree, written again. */
public final class CborBody {

  private static final JsonMapper JSON = JsonMapper.shared();
  private static final CBORMapper CBOR = CBORMapper.shared();

  private CborBody() {}

  /**
   * A CBOR body with one more member.
   *
   * @param value as JSON
   */
  static byte[] with(byte[] body, String member, String value) {
    ObjectNode tree = (ObjectNode) CBOR.readTree(body);
    tree.set(member, JSON.readTree(value));
    return CBOR.writeValueAsBytes(tree);
  }

  /** A JSON body as CBOR. */
  public static byte[] ofJson(byte[] json) {
    return CBOR.writeValueAsBytes(JSON.readTree(json));
  }
}
