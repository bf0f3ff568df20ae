package lodeswing.web.access;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import lodeswing.job.Realm;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import org.springframework.web.servlet.HandlerInterceptor;

/**
 * Answers an address that names what is another's as if nothing were there, before anything is
 * looked up: the same, whether it exists or not.
 */
public final class ForeignRealms implements HandlerInterceptor {

  @Override
  public boolean preHandle(
      HttpServletRequest request, HttpServletResponse response, Object handler) {
    if (Realm.foreignIn(AddressedText.of(request), Caller.of(request).owner())) {
      throw new ProblemException(
          ProblemCode.NOT_FOUND,
          "Nothing of this id is stored, or it is private and the request comes from somebody"
              + " else.",
          List.of());
    }
    return true;
  }
}
