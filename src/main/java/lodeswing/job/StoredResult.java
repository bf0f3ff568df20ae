package lodeswing.job;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HexFormat;

/**
 * A body kept under its content's id, with the digest that tells whether it is still whole.
 *
 * <p>Immutable: the bytes are copied on the way in; {@link #bytes()} hands out the kept array,
 * which callers must not write to.
 */
public final class StoredResult {

  private final String id;
  private final String kind;
  private final String canonicalRequest;
  private final byte[] bytes;
  private final int engineRevision;
  private final Instant createdAt;

  private StoredResult(
      String id,
      String kind,
      String canonicalRequest,
      byte[] bytes,
      int engineRevision,
      Instant createdAt) {
    this.id = id;
    this.kind = kind;
    this.canonicalRequest = canonicalRequest;
    this.bytes = bytes.clone();
    this.engineRevision = engineRevision;
    this.createdAt = createdAt.truncatedTo(ChronoUnit.MILLIS);
  }

  /**
   * The result of a computation under today's engine revision.
   *
   * @param key names the result
   * @param kind the resource it belongs to, such as {@code trace}
   * @param bytes the body, copied
   * @param createdAt when it was computed
   */
  public static StoredResult computed(
      ComputationKey key, String kind, byte[] bytes, Instant createdAt) {
    return new StoredResult(
        key.id(), kind, key.canonicalRequest(), bytes, ComputationKey.ENGINE_REVISION, createdAt);
  }

  /**
   * A document that does not depend on the engine, such as a layout; its revision is 0.
   *
   * @param id the content's id
   * @param kind the resource it belongs to
   * @param canonicalRequest the request in its canonical form
   * @param bytes the body, copied
   * @param createdAt when it was stored
   */
  public static StoredResult document(
      String id, String kind, String canonicalRequest, byte[] bytes, Instant createdAt) {
    return new StoredResult(id, kind, canonicalRequest, bytes, 0, createdAt);
  }

  /** A result as it was read back, of any revision. */
  public static StoredResult readBack(
      String id,
      String kind,
      String canonicalRequest,
      byte[] bytes,
      int engineRevision,
      Instant createdAt) {
    return new StoredResult(id, kind, canonicalRequest, bytes, engineRevision, createdAt);
  }

  /** The content's id. */
  public String id() {
    return id;
  }

  /** The resource it belongs to. */
  public String kind() {
    return kind;
  }

  /** The request in its canonical form. */
  public String canonicalRequest() {
    return canonicalRequest;
  }

  /** The body; not to be written to. */
  public byte[] bytes() {
    return bytes;
  }

  /** The revision of the engine that computed it, 0 for documents. */
  public int engineRevision() {
    return engineRevision;
  }

  /** When it was computed or stored, to the millisecond. */
  public Instant createdAt() {
    return createdAt;
  }

  /** SHA-256 in hexadecimal over everything above, each part with its length. */
  public String digest() {
    var sealed = new ByteArrayOutputStream(bytes.length + canonicalRequest.length() + 128);
    try (var out = new DataOutputStream(sealed)) {
      for (String part : new String[] {id, kind, canonicalRequest}) {
        byte[] utf8 = part.getBytes(StandardCharsets.UTF_8);
        out.writeInt(utf8.length);
        out.write(utf8);
      }
      out.writeInt(engineRevision);
      out.writeLong(createdAt.toEpochMilli());
      out.writeInt(bytes.length);
      out.write(bytes);
      return HexFormat.of()
          .formatHex(MessageDigest.getInstance("SHA-256").digest(sealed.toByteArray()));
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-256", e);
    }
  }
}
