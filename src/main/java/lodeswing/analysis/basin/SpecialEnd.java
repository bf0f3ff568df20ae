package lodeswing.analysis.basin;

import java.util.List;
import lodeswing.core.outcome.Ends;

/** Ends that are no rest point, in the order in which maps number them after the rest points. */
public enum SpecialEnd {
  CANNOT_START(Ends.CANNOT_START, "cannot-start"),
  MAGNET_CONTACT(Ends.MAGNET_CONTACT, "magnet-contact"),
  PLATE_CONTACT(Ends.PLATE_CONTACT, "plate-contact"),
  SUSPENSION_SLACK(Ends.SUSPENSION_SLACK, "suspension-slack"),
  ANGLE_LIMIT(Ends.ANGLE_LIMIT, "angle-limit"),
  UNSETTLED(Ends.UNSETTLED, "unsettled"),
  HELD(Ends.HELD, "held");

  private static final List<SpecialEnd> ALL = List.of(values());

  private final int code;
  private final String word;

  SpecialEnd(int code, String word) {
    this.code = code;
    this.word = word;
  }

  /** Its place among the special ends, from 0. */
  public int place() {
    return ALL.indexOf(this);
  }

  /** The special end of a place. */
  public static SpecialEnd at(int place) {
    return ALL.get(place);
  }

  /** Its code among {@link Ends}. */
  public int code() {
    return code;
  }

  /** The word in answers. */
  public String word() {
    return word;
  }

  /**
   * The number of an end in a map.
   *
   * @param end as {@link Ends} codes it
   * @param restPoints how many rest points the layout has
   */
  public static int index(int end, int restPoints) {
    if (end >= 0) {
      return end;
    }
    for (SpecialEnd special : ALL) {
      if (special.code == end) {
        return restPoints + special.place();
      }
    }
    throw new IllegalArgumentException("no end has the code " + end);
  }
}
