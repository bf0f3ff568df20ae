package lodeswing.web.embed;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * One version of the script that makes the figure, as it is served for ever.
 *
 * <p>A page that was copied years ago names a version and the digest of its bytes, so a version
 * that was given out never changes: a change is a new folder under {@code lodeswing/embed}, and
 * {@link #NEWEST} counts it.
 */
final class FigureScript {

  /** The version that pages and snippets name. */
  static final int NEWEST = 1;

  private static final String NAME = "lodeswing-figure.js";

  private final int version;
  private final byte[] bytes;

  private FigureScript(int version) {
    this.version = version;
    String resource = "/lodeswing/embed/" + version + "/" + NAME;
    try (InputStream in = FigureScript.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("no resource " + resource);
      }
      this.bytes = in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + resource, e);
    }
  }

  /** Every version there is, in order. */
  static Versions versions() {
    return new Versions(
        IntStream.rangeClosed(1, NEWEST).mapToObj(FigureScript::new).toArray(FigureScript[]::new));
  }

  /** The versions by their numbers. */
  static final class Versions {

    private final FigureScript[] all;

    private Versions(FigureScript... all) {
      this.all = all;
    }

    FigureScript newest() {
      return all[all.length - 1];
    }

    /** The version of a number as it stands in an address. */
    Optional<FigureScript> find(String number) {
      return number.matches("[1-9]\\d{0,5}") && Integer.parseInt(number) <= all.length
          ? Optional.of(all[Integer.parseInt(number) - 1])
          : Optional.empty();
    }
  }

  /** Its bytes; not to be written to. */
  byte[] bytes() {
    return bytes;
  }

  /** Its address, without the host. */
  String path() {
    return "/embed/" + version + "/" + NAME;
  }

  /** What a browser holds the bytes against (W3C, Subresource Integrity, section 3.5). */
  String integrity() {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-384").digest(bytes);
      return "sha384-" + Base64.getEncoder().encodeToString(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-384", e);
    }
  }
}
