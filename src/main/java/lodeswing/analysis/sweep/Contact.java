package lodeswing.analysis.sweep;

import java.util.List;
import lodeswing.core.rest.UnsafeZone;

/** Whether the bob can come to touch a magnet or the plate. */
public enum Contact {
  /** Nowhere within the angles that are computed. */
  NONE("none"),
  /** There are places where it touches, and it leaves them by itself. */
  TOUCH("touch"),
  /** There are places where it touches and the forces hold it there. */
  STICK("stick");

  private final String word;

  Contact(String word) {
    this.word = word;
  }

  /** The word in answers. */
  public String word() {
    return word;
  }

  /**
   * The contact that a layout allows, whatever its releases.
   *
   * @param zones the regions in which the model does not hold
   */
  static Contact of(List<UnsafeZone> zones) {
    Contact found = NONE;
    for (UnsafeZone zone : zones) {
      boolean touches =
          zone.border() == UnsafeZone.Border.MAGNET_CONTACT
              || zone.border() == UnsafeZone.Border.PLATE_CONTACT;
      if (touches) {
        found = zone.catches() ? STICK : found == STICK ? STICK : TOUCH;
      }
    }
    return found;
  }
}
