package lodeswing.web.odds;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import lodeswing.web.representation.GeneralParameters;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Representation;

/** Chooses the form of an answer: a value alone is text unless the address asks for another. */
final class OddsForm {

  private OddsForm() {}

  static Representation choose(
      HttpServletRequest request, QueryParameters query, List<Representation> offered) {
    return offered.contains(Representation.TEXT)
            && query.find(OddsReplies.VALUE).isPresent()
            && query.find(GeneralParameters.FORMAT).isEmpty()
        ? Representation.TEXT
        : Negotiation.choose(request, query, offered);
  }
}
