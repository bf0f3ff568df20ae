package lodeswing.web.representation;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lodeswing.job.Answer;
import lodeswing.job.ComputationKey;
import lodeswing.render.csv.CellText;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.ResponseEntity;

/**
 * A body on its way out: tag, conditional answer, range, compression and caching, alike everywhere.
 *
 * <p>Text forms are gzipped here and not by the server, which leaves everything with a strong tag
 * uncompressed; the gzipped form has a strong tag of its own (RFC 9110, section 8.8.3.3). Binary
 * forms are sent as they are. Whatever others may keep is also sent in ranges.
 *
 * <p>Immutable: each method gives a changed copy. The bytes are not copied and not written to.
 */
public final class Reply {

  /** Fields about a body that is not sent with 304 (RFC 9110, section 15.4.5). */
  private static final List<String> ABOUT_THE_BODY =
      List.of(
          HttpHeaders.CONTENT_TYPE,
          HttpHeaders.CONTENT_LANGUAGE,
          HttpHeaders.CONTENT_DISPOSITION,
          HttpHeaders.ACCEPT_RANGES);

  private final Content content;
  private final int status;
  private final HttpHeaders headers;
  private final boolean told;

  private Reply(Content content, int status, HttpHeaders headers, boolean told) {
    this.content = content;
    this.status = status;
    this.headers = headers;
    this.told = told;
  }

  /** An answer with status 200 that nobody may keep, until told otherwise. */
  public static Reply of(Representation representation, byte[] body) {
    return new Reply(Content.of(representation, body), 200, new HttpHeaders(), false)
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

  /**
   * A figure as the whole of an answer, with a decimal comma where the query wants one and else as
   * it stands: the sign of a number is no formula.
   */
  public static Reply ofFigure(String figure, QueryParameters query) {
    boolean comma = query.get(GeneralParameters.DECIMAL).equals("comma");
    String written = comma ? figure.replace('.', ',') : figure;
    return of(Representation.TEXT, written.getBytes(StandardCharsets.UTF_8));
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
    return reply.with(reply.content.tagged(earlier.content.tag().weak()));
  }

  /** This answer with another status. */
  public Reply status(int other) {
    return new Reply(content, other, headers, told);
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

  /** This answer as what is read at the address of what it made (RFC 9110, section 8.7). */
  public Reply readAt(String url) {
    return location(url).header(HttpHeaders.CONTENT_LOCATION, url);
  }

  /** This answer with one more link (RFC 8288). */
  public Reply link(String relation, String url) {
    return linked("<" + url + ">; rel=\"" + relation + "\"");
  }

  /** This answer with a link to another form of what it is, in a media type. */
  public Reply alternate(String url, String mediaType) {
    return linked("<" + url + ">; rel=\"alternate\"; type=\"" + mediaType + "\"");
  }

  private Reply linked(String value) {
    HttpHeaders more = copy();
    more.add(HttpHeaders.LINK, value);
    return new Reply(content, status, more, told);
  }

  /**
   * This answer as one about something: its warnings are a member of every document, and every form
   * links to its safety notes. Added here, when an answer is made, and not to what is stored; an
   * answer that has been told what it is about stays as it is.
   */
  public Reply about(Subject subject) {
    if (told) {
      return this;
    }
    boolean document =
        content.representation() == Representation.JSON
            || content.representation() == Representation.CBOR;
    Content warned =
        subject
            .warnings()
            .filter(warnings -> document)
            .map(warnings -> content.with(Subject.WARNINGS, warnings))
            .orElse(content);
    Reply about = new Reply(warned, status, headers, true);
    return subject
        .notes()
        .map(
            notes ->
                about.linked(
                    "<%s>; rel=\"%s\"; title=\"%s\""
                        .formatted(notes.url(), Subject.RELATION, notes.title())))
        .orElse(about);
  }

  private Reply with(Content other) {
    return new Reply(other, status, headers, told);
  }

  /** This answer with a name under which a browser saves it. */
  public Reply fileName(String name) {
    return header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"" + name + "\"");
  }

  /**
   * This answer as one in the language that was asked for ({@link Negotiation#language}); answers
   * that do not say so are in English whatever is asked for. Not for what {@link KeptReplies}
   * holds, which knows no languages.
   */
  public Reply language(Locale locale) {
    return header(HttpHeaders.CONTENT_LANGUAGE, locale.toLanguageTag());
  }

  /** This answer with a header in place of any of its name. */
  public Reply header(String name, String value) {
    HttpHeaders more = copy();
    more.set(name, value);
    return new Reply(content, status, more, told);
  }

  private HttpHeaders copy() {
    return HttpHeaders.copyOf(headers);
  }

  /**
   * The bytes that are sent where nothing is compressed or left out, for an answer that holds this
   * one. Not copied and not to be written to.
   *
   * @param subject what the answer is about: {@link #about}
   */
  public byte[] bytes(Subject subject) {
    return about(subject).content.body();
  }

  /** The form in which it is. */
  public Representation representation() {
    return content.representation();
  }

  /** What it weighs in memory [byte]. */
  int weight() {
    return content.weight();
  }

  /**
   * What is sent to a request; its conditions are judged in the order of RFC 9110, section 13.2.2.
   *
   * @param subject what the answer is about: {@link #about}
   * @throws ProblemException {@code precondition-failed} or {@code range-not-satisfiable}
   */
  public ResponseEntity<byte[]> to(HttpServletRequest request, Subject subject) {
    return about(subject).to(request);
  }

  private ResponseEntity<byte[]> to(HttpServletRequest request) {
    Optional<ByteRange> range = range(request);
    // Ranges are of the bytes as they are, so that whoever asks for one gets no other coding.
    boolean gzip = range.isEmpty() && gzips(request);
    EntityTag tag = gzip ? content.tag().gzipped() : content.tag();
    HttpHeaders sent = described(request, tag);
    if (isRead(request) && status == 200) {
      refuseUnlessMatched(request, tag);
      if (tag.isNamedBy(request.getHeaders(HttpHeaders.IF_NONE_MATCH))) {
        ABOUT_THE_BODY.forEach(sent::remove);
        return finished(request, null, sent, 304);
      }
    }
    if (range.isPresent()) {
      return ranged(request, range.get(), sent);
    }
    if (gzip) {
      sent.set(HttpHeaders.CONTENT_ENCODING, "gzip");
      return finished(request, content.gzipped(), sent, status);
    }
    return finished(request, content.body(), sent, status);
  }

  /** The fields of the whole answer. */
  private HttpHeaders described(HttpServletRequest request, EntityTag tag) {
    HttpHeaders sent = copy();
    sent.setContentType(content.representation().mediaType());
    Set<String> asked = RawQuery.parse(request.getQueryString()).keySet();
    if (!asked.contains(GeneralParameters.FORMAT.name())) {
      sent.add(HttpHeaders.VARY, HttpHeaders.ACCEPT);
    }
    if (!sent.containsHeader(HttpHeaders.CONTENT_LANGUAGE)) {
      sent.set(HttpHeaders.CONTENT_LANGUAGE, GeneralParameters.LANGUAGE);
    } else if (!asked.contains(GeneralParameters.LANG.name())) {
      sent.add(HttpHeaders.VARY, HttpHeaders.ACCEPT_LANGUAGE);
    }
    if (!content.representation().binary()) {
      sent.add(HttpHeaders.VARY, HttpHeaders.ACCEPT_ENCODING);
    }
    if (isRead(request) || headers.getFirst(HttpHeaders.CONTENT_LOCATION) != null) {
      // Of anything else a tag would be taken for that of the resource (section 15.3.2).
      sent.set(HttpHeaders.ETAG, tag.value());
    }
    if (comesInRanges()) {
      sent.set(HttpHeaders.ACCEPT_RANGES, "bytes");
    }
    return sent;
  }

  private static ResponseEntity<byte[]> finished(
      HttpServletRequest request, byte @Nullable [] body, HttpHeaders sent, int status) {
    ServerTiming.of(request).ifPresent(timing -> sent.set(ServerTiming.FIELD, timing.field()));
    return new ResponseEntity<>(body, sent, HttpStatusCode.valueOf(status));
  }

  private static boolean isRead(HttpServletRequest request) {
    return request.getMethod().equals("GET") || request.getMethod().equals("HEAD");
  }

  private static void refuseUnlessMatched(HttpServletRequest request, EntityTag tag) {
    boolean conditional = request.getHeader(HttpHeaders.IF_MATCH) != null;
    if (conditional && !tag.isExactlyNamedBy(request.getHeaders(HttpHeaders.IF_MATCH))) {
      throw new ProblemException(
          ProblemCode.PRECONDITION_FAILED,
          "The tag is " + tag.value() + ", which If-Match does not name.",
          List.of(),
          Map.of(HttpHeaders.ETAG, tag.value()));
    }
  }

  /** Whether others may keep it, so that they may need a part of it. */
  private boolean comesInRanges() {
    return status == 200 && !CachePolicy.NO_STORE.directives().equals(headers.getCacheControl());
  }

  private Optional<ByteRange> range(HttpServletRequest request) {
    String asked = request.getHeader(HttpHeaders.RANGE);
    String condition = request.getHeader(HttpHeaders.IF_RANGE);
    boolean applies =
        asked != null
            && comesInRanges()
            && request.getMethod().equals("GET")
            && (condition == null || content.tag().isExactly(condition));
    return applies ? ByteRange.parse(asked, content.body().length) : Optional.empty();
  }

  private ResponseEntity<byte[]> ranged(
      HttpServletRequest request, ByteRange range, HttpHeaders sent) {
    int length = content.body().length;
    if (range.isEmpty()) {
      throw new ProblemException(
          ProblemCode.RANGE_NOT_SATISFIABLE,
          "The content has " + length + " bytes.",
          List.of(),
          Map.of(HttpHeaders.CONTENT_RANGE, "bytes */" + length));
    }
    sent.set(HttpHeaders.CONTENT_RANGE, range.contentRange(length));
    return finished(request, range.of(content.body()), sent, 206);
  }

  private boolean gzips(HttpServletRequest request) {
    return content.packs()
        && AcceptedCoding.gzip(Collections.list(request.getHeaders(HttpHeaders.ACCEPT_ENCODING)));
  }
}
