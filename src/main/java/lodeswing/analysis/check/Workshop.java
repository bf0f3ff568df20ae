package lodeswing.analysis.check;

import java.util.Optional;

/** Where rigs are changed, by the rules of every layout. */
public interface Workshop {

  /**
   * A figure that can be set.
   *
   * @param knob which one
   * @param magnet of which magnet, where it is a magnet's
   * @return empty where the rig has no such figure
   */
  Optional<Setting> setting(Knob knob, int magnet);

  /**
   * A word that can be changed, changed.
   *
   * @param knob which one
   * @param magnet of which magnet, where it is a magnet's
   * @return empty where the rig has no such word or has it already
   */
  Optional<Change> word(Knob knob, int magnet);

  /** The rig with a member changed; empty where nobody could build that. */
  Optional<CheckedRig> with(Change change);
}
