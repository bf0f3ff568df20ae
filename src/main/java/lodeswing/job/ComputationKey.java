package lodeswing.job;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/**
 * What names a result: its kind, the canonical form of the request and the engine's revision.
 *
 * @param prefix short word before the digest, such as {@code trc}
 * @param canonicalRequest the request in its one canonical form
 * @param revision of the engine, from 1 to {@link #ENGINE_REVISION}
 */
public record ComputationKey(String prefix, String canonicalRequest, int revision) {

  private static final char[] ALPHABET = "abcdefghijklmnopqrstuvwxyz234567".toCharArray();

  /** Raised with every change of any result; part of every result's id. */
  public static final int ENGINE_REVISION = 5;

  /** The name of today's result. */
  public ComputationKey(String prefix, String canonicalRequest) {
    this(prefix, canonicalRequest, ENGINE_REVISION);
  }

  /** Whether today's engine gives the result; an older one can be looked up only. */
  public boolean current() {
    return revision == ENGINE_REVISION;
  }

  /** The revision under which the same request has an id; today's where it has it under none. */
  public int revisionOf(String id) {
    for (int earlier = ENGINE_REVISION; earlier > 0; earlier--) {
      if (new ComputationKey(prefix, canonicalRequest, earlier).id().equals(id)) {
        return earlier;
      }
    }
    return ENGINE_REVISION;
  }

  /**
   * The id: prefix, hyphen and 26 base32 characters (130 bits) of the SHA-256, and the realm of
   * what is private.
   */
  public String id() {
    return prefix
        + "-"
        + digest(canonicalRequest + "|engine=" + revision)
        + Realm.endingOf(canonicalRequest);
  }

  /** 26 lower-case base32 characters (RFC 4648) of the SHA-256 of a text in UTF-8. */
  public static String digest(String text) {
    byte[] hash;
    try {
      hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-256", e);
    }
    var out = new StringBuilder(26);
    long bits = 0;
    int held = 0;
    for (int i = 0; out.length() < 26; i++) {
      bits = (bits << 8 | (hash[i] & 0xff)) & 0xffffffL;
      held += 8;
      while (held >= 5 && out.length() < 26) {
        held -= 5;
        out.append(ALPHABET[(int) (bits >> held) & 31]);
      }
    }
    return out.toString();
  }
}
