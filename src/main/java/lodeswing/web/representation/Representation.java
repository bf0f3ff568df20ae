package lodeswing.web.representation;

import org.springframework.http.MediaType;

/** The forms in which resources come; each resource offers some of them. */
public enum Representation {
  JSON("json", "application/json", false),
  /** A set of links, of the profile that names a catalogue of interfaces (RFC 9264, RFC 9727). */
  LINKSET(
      "linkset",
      "application/linkset+json;profile=\"https://www.rfc-editor.org/info/rfc9727\"",
      false),
  CSV("csv", "text/csv;charset=UTF-8", false),
  TEXT("text", "text/plain;charset=UTF-8", false),
  CBOR("cbor", "application/cbor", true),
  HTML("html", "text/html;charset=UTF-8", false),
  /** Answers of oEmbed, which names this type (oEmbed 1.0, section 2.3). */
  XML("xml", "text/xml;charset=UTF-8", false),
  /** Scripts of the web (RFC 9239). */
  SCRIPT("script", "text/javascript;charset=UTF-8", false),
  SVG("svg", "image/svg+xml", false),
  PNG("png", "image/png", true),
  GIF("gif", "image/gif", true),
  PDF("pdf", "application/pdf", true),
  /** Files in one (APPNOTE of the ZIP file format, 6.3). */
  ZIP("zip", "application/zip", true),
  /** The contract in YAML (OpenAPI Initiative's media type, not registered). */
  YAML("yaml", "application/vnd.oai.openapi", false),
  /** Server-sent events (WHATWG HTML, section 9.2). */
  EVENTS("events", "text/event-stream", false),
  /** A map of ends, pixel by pixel; its layout is told by the operation that offers it. */
  BINARY("binary", "application/vnd.lodeswing.basin-tile", true);

  private final String word;
  private final String mediaType;
  private final boolean binary;

  Representation(String word, String mediaType, boolean binary) {
    this.word = word;
    this.mediaType = mediaType;
    this.binary = binary;
  }

  /** The word in the query parameter {@code format}. */
  public String word() {
    return word;
  }

  /** The media type in Content-Type. */
  public MediaType mediaType() {
    return MediaType.parseMediaType(mediaType);
  }

  /** Whether compression is left out. */
  public boolean binary() {
    return binary;
  }
}
