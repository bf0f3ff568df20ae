package lodeswing.web.representation;

/** How long an answer may be kept by others. */
public enum CachePolicy {
  /** Reached by a result's id: never changes. */
  IMMUTABLE("public, max-age=31536000, immutable"),
  /** Lies below a layout: may be computed better one day. */
  SHORT("public, max-age=300, stale-while-revalidate=86400"),
  /** May be kept, to be asked about each time. */
  REVALIDATE("no-cache"),
  /** Errors and answers that are not ready. */
  NO_STORE("no-store");

  private final String directives;

  CachePolicy(String directives) {
    this.directives = directives;
  }

  /** The value of Cache-Control. */
  public String directives() {
    return directives;
  }
}
