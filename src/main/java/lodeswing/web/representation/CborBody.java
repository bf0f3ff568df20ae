package lodeswing.web.representation;

import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.cbor.CBORMapper;

/** The CBOR form (RFC 8949) of a JSON body: the same tree, written again. */
public final class CborBody {

  private static final JsonMapper JSON = JsonMapper.shared();
  private static final CBORMapper CBOR = CBORMapper.shared();

  private CborBody() {}

  /** A JSON body as CBOR. */
  public static byte[] ofJson(byte[] json) {
    return CBOR.writeValueAsBytes(JSON.readTree(json));
  }
}
