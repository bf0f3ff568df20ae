package lodeswing.web.basin;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lodeswing.analysis.basin.SpecialEnd;
import lodeswing.core.motion.Limit;
import lodeswing.core.outcome.Ends;
import lodeswing.web.landscape.LimitWords;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.restpoint.RestPlace;
import lodeswing.web.restpoint.RestPointNames;

/** What the ends of releases are called. */
public final class EndNames {

  private final List<RestPlace> places;
  private final RestPointNames names;

  /**
   * Names of the ends on a layout.
   *
   * @param places all its rest points
   */
  public EndNames(LayoutDocument document, List<RestPlace> places) {
    this.places = List.copyOf(places);
    this.names = new RestPointNames(document, places);
  }

  /** How many rest points the layout has. */
  public int restPoints() {
    return places.size();
  }

  /** The special end of an index; empty for a rest point. */
  public Optional<SpecialEnd> special(int index) {
    return index < places.size()
        ? Optional.empty()
        : Optional.of(SpecialEnd.at(index - places.size()));
  }

  /** A word for programs. */
  public String kind(int index) {
    return special(index).map(SpecialEnd::word).orElse("rest-point");
  }

  /** The label of a rest point that has one. */
  public Optional<String> label(int index) {
    return index < places.size() ? names.label(index) : Optional.empty();
  }

  /** The rest point, where it is one. */
  public Optional<RestPlace> place(int index) {
    return index < places.size() ? Optional.of(places.get(index)) : Optional.empty();
  }

  /** The name of the index of an end. */
  public String name(int index) {
    return special(index).map(EndNames::text).orElseGet(() -> names.name(index));
  }

  /** The name of an end as {@link Ends} codes it. */
  public String nameOfEnd(int end) {
    return name(SpecialEnd.index(end, places.size()));
  }

  /** The special end that has a name; empty where none has. */
  public static Optional<SpecialEnd> specialNamed(String name) {
    return Arrays.stream(SpecialEnd.values()).filter(end -> text(end).equals(name)).findFirst();
  }

  private static String text(SpecialEnd end) {
    return switch (end) {
      case CANNOT_START -> "cannot be released there";
      case MAGNET_CONTACT -> LimitWords.of(Limit.Kind.MAGNET_CONTACT);
      case PLATE_CONTACT -> LimitWords.of(Limit.Kind.PLATE_CONTACT);
      case SUSPENSION_SLACK -> LimitWords.of(Limit.Kind.SUSPENSION_SLACK);
      case ANGLE_LIMIT -> LimitWords.of(Limit.Kind.ANGLE_LIMIT);
      case UNSETTLED -> "undecided";
      case HELD -> LimitWords.HELD;
    };
  }
}
