package lodeswing.web.representation;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.zip.GZIPOutputStream;

/**
 * A body in one form with its tag; its gzipped form is made when it is first asked for, and kept.
 *
 * <p>The bytes are neither copied nor written to.
 */
final class Content {

  private static final int SHORTEST_GZIPPED = 1_024;
  private static final int ENTRY_BYTES = 1_024;

  private final Representation representation;
  private final byte[] body;
  private final EntityTag tag;
  private volatile Optional<byte[]> gzipped = Optional.empty();

  Content(Representation representation, byte[] body, EntityTag tag) {
    this.representation = representation;
    this.body = body;
    this.tag = tag;
  }

  static Content of(Representation representation, byte[] body) {
    return new Content(representation, body, EntityTag.of(body));
  }

  Representation representation() {
    return representation;
  }

  byte[] body() {
    return body;
  }

  EntityTag tag() {
    return tag;
  }

  /** The same bytes under another tag. */
  Content tagged(EntityTag other) {
    return new Content(representation, body, other);
  }

  /**
   * The same document with one more member; its tag follows from the old tag and the member, so
   * that a weak one stays the tag of all that means the same.
   *
   * @param value as JSON
   * @throws IllegalArgumentException if this is no document
   */
  Content with(String member, String value) {
    byte[] longer =
        switch (representation) {
          case JSON -> longer(new String(body, StandardCharsets.UTF_8), member, value);
          case CBOR -> CborBody.with(body, member, value);
          default -> throw new IllegalArgumentException(representation + " has no members");
        };
    return new Content(representation, longer, tag.with(member + value));
  }

  private static byte[] longer(String document, String member, String value) {
    int end = document.lastIndexOf('}');
    String separator = document.startsWith("}", 1) ? "" : ",";
    return (document.substring(0, end) + separator + '"' + member + "\":" + value + "}")
        .getBytes(StandardCharsets.UTF_8);
  }

  /** Whether its gzipped form is worth sending. */
  boolean packs() {
    return !representation.binary() && body.length >= SHORTEST_GZIPPED;
  }

  byte[] gzipped() {
    Optional<byte[]> kept = gzipped;
    if (kept.isEmpty()) {
      kept = Optional.of(gzip(body));
      gzipped = kept;
    }
    return kept.get();
  }

  /** What it weighs in memory, its gzipped form included [byte]. */
  int weight() {
    long packed = packs() ? body.length / 2 : 0;
    return (int) Math.min(Integer.MAX_VALUE, ENTRY_BYTES + body.length + packed);
  }

  private static byte[] gzip(byte[] body) {
    var out = new ByteArrayOutputStream(body.length / 3);
    try (var gzip = new GZIPOutputStream(out)) {
      gzip.write(body);
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toByteArray();
  }
}
