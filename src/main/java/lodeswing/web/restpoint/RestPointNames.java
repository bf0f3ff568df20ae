package lodeswing.web.restpoint;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lodeswing.core.rest.RestPoint.NearMagnet;
import lodeswing.web.layout.LayoutDocument;

/**
 * What rest points are called: by the label of the magnet they lie over, else by their place in
 * words.
 *
 * <p>Names are unique in a layout; where two would be alike, their places are added.
 */
public final class RestPointNames {

  /**
   * The second nearest magnet counts as a neighbour up to this many times the nearest's distance.
   */
  private static final double NEIGHBOUR = 1.3;

  /**
   * A place this near to the middle, as a share of the nearest magnet's distance, is the middle.
   */
  private static final double MIDDLE = 0.15;

  private final LayoutDocument document;
  private final List<RestPlace> places;
  private final List<String> names;
  private final double shownPerUnit;

  /**
   * Names for a layout's rest points.
   *
   * @param document the layout with its labels
   * @param places all of its rest points
   */
  public RestPointNames(LayoutDocument document, List<RestPlace> places) {
    this.document = document;
    this.places = List.copyOf(places);
    this.shownPerUnit = document.shownPerUnit();
    List<String> plain = places.stream().map(this::plain).toList();
    List<String> unique = new ArrayList<>();
    for (int i = 0; i < plain.size(); i++) {
      boolean alike = Collections.frequency(plain, plain.get(i)) > 1;
      unique.add(alike ? plain.get(i) + " at " + at(places.get(i)) : plain.get(i));
    }
    this.names = List.copyOf(unique);
  }

  /** All rest points. */
  public List<RestPlace> places() {
    return places;
  }

  /** The name of a rest point. */
  public String name(int index) {
    return names.get(index);
  }

  /** The label that a rest point stands for; empty where it lies over no labelled magnet. */
  public Optional<String> label(int index) {
    RestPlace place = places.get(index);
    return place.owner().isPresent()
        ? document.labels().get(place.owner().getAsInt())
        : Optional.empty();
  }

  /** Its name to follow the word "rest": "at Tide", "beside Tide" or "in the middle". */
  public String where(int index) {
    RestPlace place = places.get(index);
    boolean thing = place.owner().isPresent() || place.near().isEmpty();
    return thing ? "at " + names.get(index) : names.get(index);
  }

  /** One sentence about how a bob rests there. */
  public String sentence(int index) {
    RestPlace place = places.get(index);
    if (place.ring()) {
      return "The bob comes to rest somewhere "
          + ring(place)
          + ": no place of it is lower than another"
          + (place.overWeakField() ? ", and the magnet pushes the bob away." : ".");
    }
    if (place.owner().isPresent()) {
      return "The bob comes to rest " + where(index) + ".";
    }
    if (place.overWeakField()) {
      return "The bob comes to rest over weak field, "
          + where(index)
          + ", not over a magnet: the magnets about it push it away.";
    }
    return place.near().isEmpty()
        ? "The bob comes to rest at the lowest point of its swing."
        : "The bob comes to rest " + where(index) + ", not over a magnet.";
  }

  private String plain(RestPlace place) {
    return place.owner().isPresent() ? magnet(place.owner().getAsInt()) : words(place);
  }

  private String ring(RestPlace place) {
    return "on the ring " + length(place.radius()) + " from the middle";
  }

  private String words(RestPlace place) {
    if (place.ring()) {
      return ring(place);
    }
    if (place.near().isEmpty()) {
      return "the lowest point";
    }
    NearMagnet nearest = place.near().get(0);
    if (Math.hypot(place.x(), place.y()) < MIDDLE * nearest.distance()) {
      return "in the middle";
    }
    if (place.near().size() > 1
        && place.near().get(1).distance() < NEIGHBOUR * nearest.distance()) {
      int one = nearest.magnet();
      int other = place.near().get(1).magnet();
      return "between " + magnet(Math.min(one, other)) + " and " + magnet(Math.max(one, other));
    }
    return "beside " + magnet(nearest.magnet());
  }

  private String magnet(int index) {
    return document.labels().get(index).orElse("magnet " + (index + 1));
  }

  private String at(RestPlace place) {
    return "x=" + number(place.x()) + " y=" + number(place.y()) + unit();
  }

  private String length(double length) {
    return number(length) + unit();
  }

  private String number(double length) {
    return String.format(Locale.ROOT, shownPerUnit == 1 ? "%.2f" : "%.0f", length * shownPerUnit);
  }

  private String unit() {
    return shownPerUnit == 1 ? "" : " mm";
  }
}
