package lodeswing.web.representation;

import lodeswing.job.Answer;

/** Where an answer came from, as a value of the Cache-Status field (RFC 9211). */
public final class CacheStatus {

  /** The name of the field. */
  public static final String FIELD = "Cache-Status";

  private CacheStatus() {}

  /** The field's value for where a result came from. */
  public static String of(Answer.Source source) {
    return switch (source) {
      case MEMORY -> "lodeswing; hit; detail=memory";
      case STORE -> "lodeswing; hit; detail=store";
      case COMPUTED -> "lodeswing; fwd=miss; stored";
      case JOINED -> "lodeswing; fwd=miss; collapsed";
    };
  }
}
