package lodeswing.web.representation;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.words.Language;
import org.springframework.http.InvalidMediaTypeException;
import org.springframework.http.MediaType;

/**
 * Chooses the form of an answer: {@code format} wins over Accept, and of forms that are equally
 * welcome the one that the resource names first (RFC 9110, section 12.5.1).
 */
public final class Negotiation {

  private Negotiation() {}

  /**
   * The form to answer in.
   *
   * @param offered what the resource offers, the usual form first
   * @throws ProblemException {@code not-acceptable}, naming what is offered
   */
  public static Representation choose(
      HttpServletRequest request, QueryParameters query, List<Representation> offered) {
    return choose(Asking.of(request), query, offered);
  }

  /**
   * The same of what was asked for without HTTP.
   *
   * @throws ProblemException {@code not-acceptable}, naming what is offered
   */
  public static Representation choose(
      Asking request, QueryParameters query, List<Representation> offered) {
    Optional<Representation> format = query.find(GeneralParameters.FORMAT);
    if (format.isPresent()) {
      return format.filter(offered::contains).orElseThrow(() -> notAcceptable(offered));
    }
    List<MediaType> accepted = accepted(request, offered);
    if (accepted.isEmpty()) {
      return offered.get(0);
    }
    Representation best = offered.get(0);
    double bestQuality = 0;
    for (Representation candidate : offered) {
      double quality = quality(candidate.mediaType(), accepted);
      if (quality > bestQuality) {
        best = candidate;
        bestQuality = quality;
      }
    }
    if (bestQuality == 0) {
      throw notAcceptable(offered);
    }
    return best;
  }

  /**
   * The same for a resource with single values for a cell: a value alone is text unless the address
   * asks for another form.
   *
   * @param value the parameter that names the value
   */
  public static Representation chooseForCell(
      HttpServletRequest request,
      QueryParameters query,
      List<Representation> offered,
      Parameter<?> value) {
    return chooseForCell(Asking.of(request), query, offered, value);
  }

  /** The same of what was asked for without HTTP. */
  public static Representation chooseForCell(
      Asking request, QueryParameters query, List<Representation> offered, Parameter<?> value) {
    boolean cell = offered.contains(Representation.TEXT) && query.find(value).isPresent();
    return cell && query.find(GeneralParameters.FORMAT).isEmpty()
        ? Representation.TEXT
        : choose(request, query, offered);
  }

  /**
   * The language and country to answer in: {@code lang} wins over Accept-Language; English where
   * neither names one that is kept. Whoever uses it says so by {@link Reply#language}.
   */
  public static Locale language(HttpServletRequest request, QueryParameters query) {
    return language(Asking.of(request), query);
  }

  /** The same of what was asked for without HTTP. */
  public static Locale language(Asking request, QueryParameters query) {
    return query
        .find(GeneralParameters.LANG)
        .map(Language::named)
        .orElseGet(() -> Language.preferred(String.join(",", request.acceptLanguage())));
  }

  private static List<MediaType> accepted(Asking request, List<Representation> offered) {
    try {
      return MediaType.parseMediaTypes(request.accept());
    } catch (InvalidMediaTypeException e) {
      throw notAcceptable(offered);
    }
  }

  /** The quality that the most specific matching range gives, 0 where none matches. */
  private static double quality(MediaType candidate, List<MediaType> accepted) {
    double quality = 0;
    int specificity = -1;
    for (MediaType range : accepted) {
      int own = range.isWildcardType() ? 0 : range.isWildcardSubtype() ? 1 : 2;
      if (range.includes(candidate) && own > specificity) {
        specificity = own;
        quality = range.getQualityValue();
      }
    }
    return quality;
  }

  private static ProblemException notAcceptable(List<Representation> offered) {
    String forms =
        offered.stream()
            .map(one -> one.word() + " (" + bare(one.mediaType()) + ")")
            .collect(Collectors.joining(", "));
    return new ProblemException(
        ProblemCode.NOT_ACCEPTABLE, "Offered here: " + forms + ".", List.of());
  }

  private static String bare(MediaType type) {
    return type.getType() + "/" + type.getSubtype();
  }
}
