package lodeswing.analysis.trace;

/**
 * Something that happened on a path.
 *
 * @param time when
 * @param kind what
 */
public record TraceEvent(double time, Kind kind) {

  /** What can happen. */
  public enum Kind {
    /** From here on only one rest point can be reached. */
    SEALED("sealed", false),
    /** The energy above the rest point fell below a hundredth of its barrier. */
    SETTLED("settled", false),
    /** Pivot friction holds the bob for good. */
    STUCK("stuck", false),
    /** From here on the computed path is not to be trusted. */
    TRUST_ENDS("trust-ends", false),
    /** From here on a hand's release cannot foretell the path. */
    FORETELLING_ENDS("foretelling-ends", false),
    /** A cord or leg no longer pulls, or the hook lifts off: the model ends here. */
    SUSPENSION_SLACK("suspension-slack", true),
    /** The bob touches a magnet: the model ends here. */
    MAGNET_CONTACT("magnet-contact", true),
    /** The bob touches the plate: the model ends here. */
    PLATE_CONTACT("plate-contact", true),
    /** An angle leaves the allowed range: the model ends here. */
    ANGLE_LIMIT("angle-limit", true);

    private final String word;
    private final boolean endsModel;

    Kind(String word, boolean endsModel) {
      this.word = word;
      this.endsModel = endsModel;
    }

    /** The word in answers. */
    public String word() {
      return word;
    }

    /** Whether the path ends here because the model no longer holds. */
    public boolean endsModel() {
      return endsModel;
    }
  }
}
