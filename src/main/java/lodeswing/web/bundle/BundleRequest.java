package lodeswing.web.bundle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lodeswing.job.ComputationKey;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.worksheet.SurePlace;

/**
 * What a bundle computes; how it is written is asked at each request.
 *
 * @param layout the layout
 * @param release where the bob is let go; empty for the surest place of the worksheet
 * @param spreadMm standard deviation of the hand, in millimetres or the layout's own unit
 * @param mapPixels side of the basin map [px]
 * @param without the groups that are not wanted
 */
record BundleRequest(
    LayoutDocument layout,
    Optional<SurePlace> release,
    double spreadMm,
    int mapPixels,
    Set<BundleGroup> without) {

  static final String KIND = "bundle";

  /** Raised with every change of what is computed or how it is stored. */
  private static final String FORM = "form=1";

  private static final String NONE = "-";

  BundleRequest {
    without = Set.copyOf(without);
  }

  /** Names the result. Of the layout itself: the check needs more of it than what moves. */
  ComputationKey key() {
    return new ComputationKey("bnd", KIND + "|" + FORM + "|" + String.join("|", words()));
  }

  /** All of it in words without blanks, the layout's id first. */
  List<String> words() {
    return List.of(
        layout.layoutId(),
        release.map(place -> Numbers.shortest(place.x())).orElse(NONE),
        release.map(place -> Numbers.shortest(place.y())).orElse(NONE),
        Numbers.shortest(spreadMm),
        Integer.toString(mapPixels),
        without.isEmpty() ? NONE : named());
  }

  /** The request that such words tell. */
  static BundleRequest of(LayoutDocument layout, List<String> words) {
    return new BundleRequest(
        layout,
        words.get(1).equals(NONE)
            ? Optional.empty()
            : Optional.of(
                new SurePlace(Double.parseDouble(words.get(1)), Double.parseDouble(words.get(2)))),
        Double.parseDouble(words.get(3)),
        Integer.parseInt(words.get(4)),
        words.get(5).equals(NONE)
            ? Set.of()
            : Stream.of(words.get(5).split(","))
                .map(word -> BundleGroup.of(word).orElseThrow())
                .collect(Collectors.toSet()));
  }

  private String named() {
    return new TreeSet<>(without).stream().map(BundleGroup::word).collect(Collectors.joining(","));
  }

  /** The query that asks for these figures. */
  String query() {
    List<String> query = new ArrayList<>();
    release.ifPresent(
        place -> {
          query.add("x=" + Numbers.shortest(place.x()));
          query.add("y=" + Numbers.shortest(place.y()));
        });
    query.add("spreadMm=" + Numbers.shortest(spreadMm));
    query.add("mapPixels=" + mapPixels);
    if (!without.isEmpty()) {
      query.add("without=" + named());
    }
    return String.join("&", query);
  }

  /** Where a bundle of these figures is answered. */
  String url() {
    return path() + "?" + query();
  }

  String path() {
    return "/v1/layouts/" + layout.layoutId() + "/bundle";
  }
}
