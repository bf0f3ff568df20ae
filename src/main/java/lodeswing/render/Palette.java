package lodeswing.render;

import java.util.List;
import lodeswing.figure.Mark;
import lodeswing.figure.Tint;

/**
 * The colours of every picture, and the colour, pattern and mark of things told apart by number.
 *
 * <p>The twelve entries are at least 15 apart from each other and from the paper in CIEDE2000
 * (Sharma, Wu, Dalal 2005), as seen with normal vision and with full protanopia, deuteranopia and
 * tritanopia as simulated by the matrices of Machado, Oliveira and Fernandes, A
 * physiologically-based model for simulation of color vision deficiency, IEEE TVCG 15 (2009). They
 * were found by annealing on that least distance, and ordered so that the first few lie furthest
 * apart. Colour never stands alone: each entry has a mark, and a pattern too once the colours come
 * round again. Texts keep a contrast of 4.5 to 1 with paper and plate, marks 3 to 1 (WCAG 2.2,
 * 1.4.3 and 1.4.11). Tests measure all this.
 */
public final class Palette {
  private static final List<Rgb> ENTRIES =
      colours(
          0xF2CC5C, 0x3C318D, 0x914F52, 0x8887A7, 0xC8ABF4, 0x5D62C8, 0x609A80, 0x53354A, 0xA29940,
          0xB4CDA9, 0x0C4A03, 0x777000);

  private static final Rgb[][] RAMPS = {
    {Rgb.of(0x9FBDB4), Rgb.of(0x3F8088), Rgb.of(0x0D3444)},
    {Rgb.of(0xD8B38C), Rgb.of(0xA9673A), Rgb.of(0x5A2311)},
  };

  /** How far an untrusted part is mixed towards the plate. */
  private static final double UNTRUSTED = 0.3;

  private Palette() {}

  /** Filling of an area, so that equal colours can be told apart and prints in grey be read. */
  public enum Pattern {
    PLAIN,
    RISING,
    FALLING,
    LEVEL,
    UPRIGHT,
    DOTTED
  }

  /** How many entries differ by colour alone. */
  public static int colourCount() {
    return ENTRIES.size();
  }

  /** Colour of an entry; comes round after {@link #colourCount}. */
  public static Rgb colour(int index) {
    return ENTRIES.get(index % ENTRIES.size());
  }

  /** Pattern of an entry: plain for the first twelve, then the next pattern. */
  public static Pattern pattern(int index) {
    Pattern[] all = Pattern.values();
    return all[index / ENTRIES.size() % all.length];
  }

  /** Mark of an entry; the first twelve have one each. */
  public static Mark mark(int index) {
    Mark[] all = Mark.values();
    int rounds = index / (ENTRIES.size() * Pattern.values().length);
    return all[(index % ENTRIES.size() + rounds) % all.length];
  }

  /** The colour of a tint. */
  public static Rgb colour(Tint tint) {
    if (tint instanceof Tint.Age age) {
      return aged(age);
    }
    if (tint instanceof Tint.Entry entry) {
      return colour(entry.index());
    }
    return fixed((Tint.Role) tint);
  }

  private static Rgb aged(Tint.Age age) {
    Rgb[] ramp = RAMPS[age.trail() % RAMPS.length];
    double place = age.progress() * (ramp.length - 1);
    int step = Math.min(ramp.length - 2, (int) place);
    Rgb colour = ramp[step].towards(ramp[step + 1], place - step);
    return age.trusted() ? colour : colour.towards(fixed(Tint.Role.PLATE), UNTRUSTED);
  }

  private static Rgb fixed(Tint.Role role) {
    return Rgb.of(
        switch (role) {
          case PAPER -> 0xFCFBF7;
          case PLATE -> 0xF4F1E9;
          case PLATE_EDGE -> 0x8F8978;
          case INK -> 0x22262B;
          case SOFT_INK -> 0x565B62;
          case NORTH -> 0xA23A2E;
          case SOUTH -> 0x2C5C94;
          case ATTRACTING -> 0x3F6B2A;
          case REPELLING -> 0x7A3E7C;
          case NORTH_FACE -> 0xF1DAD2;
          case SOUTH_FACE -> 0xD8E3EE;
          case ATTRACTING_FACE -> 0xDDE8D3;
          case REPELLING_FACE -> 0xEADBEA;
          case SEALED -> 0xB85C0B;
          case EVENT -> 0x8C2F6B;
        });
  }

  private static List<Rgb> colours(int... packed) {
    return java.util.Arrays.stream(packed).mapToObj(Rgb::of).toList();
  }
}
