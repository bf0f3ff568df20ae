package lodeswing.web.limits;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What a limit counts and means, as /v1/limits states it. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
@interface Stated {

  /** What is counted, such as {@code byte} or {@code s}. */
  String unit();

  /** What the limit means. */
  String meaning();
}
