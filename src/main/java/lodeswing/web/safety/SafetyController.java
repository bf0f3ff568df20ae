package lodeswing.web.safety;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Locale;
import lodeswing.web.jobs.Answerable;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.representation.Asking;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Representation;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** The safety notes of a layout; made at each request, since that takes a tenth of a second. */
@RestController
final class SafetyController {

  static final List<Representation> OFFERED =
      List.of(
          Representation.JSON,
          Representation.CSV,
          Representation.CBOR,
          Representation.TEXT,
          Representation.HTML);

  static final Parameter<Boolean> SHORT = Parameter.flag("short").orElse(false);
  static final Parameter<SafetyValue> VALUE =
      Parameter.constant("value", SafetyValue.class, SafetyValue::word);

  private final LayoutStore layouts;
  private final ComputedAnswers answers;

  SafetyController(LayoutStore layouts, ComputedAnswers answers) {
    this.layouts = layouts;
    this.answers = answers;
  }

  @GetMapping("/v1/layouts/{layoutId}/safety-notes")
  ResponseEntity<byte[]> getSafetyNotes(@PathVariable String layoutId, HttpServletRequest request) {
    return answers.reply(request, asked(layoutId, Asking.of(request)));
  }

  /** What is asked for, without HTTP. */
  Answerable asked(String layoutId, Asking request) {
    LayoutQuery asked = LayoutQuery.read(request, layouts, layoutId, SHORT, VALUE);
    QueryParameters query = asked.parameters();
    LayoutDocument layout = asked.layout();
    Representation form = Negotiation.chooseForCell(request, query, OFFERED, VALUE);
    Locale locale = Negotiation.language(request, query);
    layouts.save(layout);
    return Answerable.atOnce(
        query,
        layout.subject(),
        () ->
            new SafetyAnswers(SafetyNotes.of(layout, locale))
                .in(form, query)
                .language(locale)
                .cache(CachePolicy.SHORT));
  }
}
