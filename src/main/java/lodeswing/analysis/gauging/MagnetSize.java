package lodeswing.analysis.gauging;

import java.util.ArrayList;
import java.util.List;
import lodeswing.core.magnet.Block;
import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.Ring;

/**
 * Form and size of a magnet whose strength is sought.
 *
 * @param form its form
 * @param lengths as a ruler has them [m]: height first, then diameter; or height, outer and inner
 *     diameter; or height, length and width
 */
public record MagnetSize(Form form, List<Double> lengths) {

  /** A kind of magnet that can be gauged. */
  public enum Form {
    DISC,
    RING,
    BLOCK
  }

  public MagnetSize {
    lengths = List.copyOf(lengths);
    if (lengths.size() != (form == Form.DISC ? 2 : 3)) {
      throw new IllegalArgumentException(form + " does not have " + lengths.size() + " lengths");
    }
  }

  /** The magnet with a remanence of 1 T. */
  public Magnet unit() {
    double height = lengths.get(0);
    double across = lengths.get(1);
    return switch (form) {
      case DISC -> new Disc(across / 2, height, 1);
      case RING -> new Ring(lengths.get(2) / 2, across / 2, height, 1);
      case BLOCK -> new Block(across, lengths.get(2), height, 1);
    };
  }

  /** The same with one length changed by some metres. */
  public MagnetSize changed(int length, double by) {
    List<Double> changed = new ArrayList<>(lengths);
    changed.set(length, changed.get(length) + by);
    return new MagnetSize(form, changed);
  }
}
