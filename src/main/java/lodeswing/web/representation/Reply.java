package lodeswing.web.representation;

import jakarta.servlet.http.HttpServletRequest;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.zip.GZIPOutputStream;
import lodeswing.job.Answer;
import lodeswing.job.ComputationKey;
import lodeswing.render.csv.CellText;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.ResponseEntity;

/**
 * A body on its way out: tag, conditional answer, range, compression and caching, alike everywhere.
 *
 * <p>Text forms are gzipped here and not by the server, which leaves everything with a strong tag
 * uncompressed; the gzipped form has a strong tag of its own (RFC 9110, section 8.8.3.3). Binary
 * forms are sent as they are and in ranges.
 *
 * <p>Immutable: each method gives a changed copy. The bytes are not copied and not written to.
 */
public final class Reply {

  private static final int SHORTEST_GZIPPED = 1_024;

  private final Representation representation;
  private final byte[] body;
  private final int status;
  private final HttpHeaders headers;
  private final EntityTag tag;

  private Reply(
      Representation representation, byte[] body, int status, HttpHeaders headers, EntityTag tag) {
    this.representation = representation;
    this.body = body;
    this.status = status;
    this.headers = headers;
    this.tag = tag;
  }

  /** An answer with status 200 that nobody may keep, until told otherwise. */
  public static Reply of(Representation representation, byte[] body) {
    return new Reply(representation, body, 200, new HttpHeaders(), EntityTag.of(body))
        .cache(CachePolicy.NO_STORE);
  }

  /** Words as the whole of an answer, safe in a cell of a sheet: {@link CellText#line}. */
  public static Reply ofWords(String words) {
    return of(Representation.TEXT, CellText.line(words).getBytes(StandardCharsets.UTF_8));
  }

  /** Lines of words, each as {@link #ofWords} would write it. */
  public static Reply ofLines(List<String> lines) {
    String all = lines.stream().map(CellText::line).collect(Collectors.joining("\n", "", "\n"));
    return of(Representation.TEXT, all.getBytes(StandardCharsets.UTF_8));
  }

  /** A figure as the whole of an answer, as it stands: the sign of a number is no formula. */
  public static Reply ofFigure(String figure) {
    return of(Representation.TEXT, figure.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * The answer for a JSON body, in JSON or as CBOR of the same tree.
   *
   * @throws IllegalArgumentException if the form is another one
   */
  public static Reply ofJson(Representation form, byte[] json) {
    return switch (form) {
      case JSON -> of(form, json);
      case CBOR -> of(form, CborBody.ofJson(json));
      default -> throw new IllegalArgumentException(form + " is not made from JSON");
    };
  }

  /**
   * The answer for a JSON body that names the revision of the engine behind it; that of an older
   * one says so. It keeps the tag that it had before the engine was changed, as a weak one, since
   * it means the same and is longer by this member (RFC 9110, section 8.8.1).
   */
  public static Reply ofResult(Representation form, byte[] json, int revision) {
    if (revision == ComputationKey.ENGINE_REVISION) {
      return ofJson(form, json);
    }
    String document = new String(json, StandardCharsets.UTF_8);
    String marked = document.substring(0, document.lastIndexOf('}')) + ",\"olderEngine\":true}";
    Reply earlier = ofJson(form, json);
    Reply reply = ofJson(form, marked.getBytes(StandardCharsets.UTF_8));
    return new Reply(form, reply.body, reply.status, reply.headers, earlier.tag.weak());
  }

  /** This answer with another status. */
  public Reply status(int other) {
    return new Reply(representation, body, other, headers, tag);
  }

  /** This answer with how long it may be kept. */
  public Reply cache(CachePolicy policy) {
    return header(HttpHeaders.CACHE_CONTROL, policy.directives());
  }

  /** This answer with where it came from. */
  public Reply source(Answer.Source source) {
    return header(CacheStatus.FIELD, CacheStatus.of(source));
  }

  /** This answer with the address of what it made. */
  public Reply location(String url) {
    return header(HttpHeaders.LOCATION, url);
  }

  /** This answer with one more link (RFC 8288). */
  public Reply link(String relation, String url) {
    HttpHeaders more = copy();
    more.add(HttpHeaders.LINK, "<" + url + ">; rel=\"" + relation + "\"");
    return new Reply(representation, body, status, more, tag);
  }

  /** This answer with a name under which a browser saves it. */
  public Reply fileName(String name) {
    return header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"" + name + "\"");
  }

  /** This answer with a header in place of any of its name. */
  public Reply header(String name, String value) {
    HttpHeaders more = copy();
    more.set(name, value);
    return new Reply(representation, body, status, more, tag);
  }

  private HttpHeaders copy() {
    return HttpHeaders.copyOf(headers);
  }

  /**
   * What is sent to a request.
   *
   * @throws ProblemException {@code range-not-satisfiable}
   */
  public ResponseEntity<byte[]> to(HttpServletRequest request) {
    HttpHeaders sent = copy();
    sent.setContentType(representation.mediaType());
    sent.set(HttpHeaders.CONTENT_LANGUAGE, GeneralParameters.LANGUAGE);
    sent.add(HttpHeaders.VARY, "Accept");
    Optional<ByteRange> range = range(request);
    boolean gzip = gzips(request);
    if (!representation.binary()) {
      sent.add(HttpHeaders.VARY, "Accept-Encoding");
    } else {
      sent.set(HttpHeaders.ACCEPT_RANGES, "bytes");
    }
    EntityTag sentTag = gzip ? tag.gzipped() : tag;
    sent.set(HttpHeaders.ETAG, sentTag.value());
    if (isRead(request) && status == 200 && isKnown(request, sentTag)) {
      sent.remove(HttpHeaders.CONTENT_TYPE);
      return new ResponseEntity<>(sent, HttpStatusCode.valueOf(304));
    }
    if (range.isPresent()) {
      sent.set(HttpHeaders.CONTENT_RANGE, range.get().contentRange(body.length));
      return new ResponseEntity<>(range.get().of(body), sent, HttpStatusCode.valueOf(206));
    }
    if (gzip) {
      sent.set(HttpHeaders.CONTENT_ENCODING, "gzip");
      return new ResponseEntity<>(gzipped(), sent, HttpStatusCode.valueOf(status));
    }
    return new ResponseEntity<>(body, sent, HttpStatusCode.valueOf(status));
  }

  private static boolean isRead(HttpServletRequest request) {
    return request.getMethod().equals("GET") || request.getMethod().equals("HEAD");
  }

  private static boolean isKnown(HttpServletRequest request, EntityTag tag) {
    return tag.isNamedBy(request.getHeaders(HttpHeaders.IF_NONE_MATCH));
  }

  private Optional<ByteRange> range(HttpServletRequest request) {
    String asked = request.getHeader(HttpHeaders.RANGE);
    String condition = request.getHeader(HttpHeaders.IF_RANGE);
    boolean applies =
        asked != null
            && representation.binary()
            && status == 200
            && request.getMethod().equals("GET")
            && !isKnown(request, tag)
            && (condition == null || condition.equals(tag.value()));
    if (!applies) {
      return Optional.empty();
    }
    Optional<ByteRange> range = ByteRange.parse(asked, body.length);
    if (range.isPresent() && range.get().isEmpty()) {
      throw new ProblemException(
          ProblemCode.RANGE_NOT_SATISFIABLE,
          "The content has " + body.length + " bytes.",
          List.of(),
          Map.of(HttpHeaders.CONTENT_RANGE, "bytes */" + body.length));
    }
    return range;
  }

  private boolean gzips(HttpServletRequest request) {
    return !representation.binary()
        && body.length >= SHORTEST_GZIPPED
        && AcceptedCoding.gzip(Collections.list(request.getHeaders(HttpHeaders.ACCEPT_ENCODING)));
  }

  private byte[] gzipped() {
    var out = new ByteArrayOutputStream(body.length / 3);
    try (var gzip = new GZIPOutputStream(out)) {
      gzip.write(body);
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toByteArray();
  }
}
