package lodeswing.render;

import java.util.List;
import lodeswing.figure.Mark;
import lodeswing.figure.Pattern;
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
          0xE2B042, 0x660C15, 0x5684E6, 0x173180, 0x43283A, 0x849263, 0x62DCFB, 0xAD9AA6, 0x686459,
          0xB2CAA5, 0x9D5A8F, 0x477602);

  private static final List<Pattern> PATTERNS = List.of(Pattern.values());

  private static final List<Lab> LABS = ENTRIES.stream().map(Lab::of).toList();

  private static final List<String> WORDS =
      List.of(
          "amber",
          "maroon",
          "cornflower blue",
          "navy",
          "dark plum",
          "sage green",
          "sky blue",
          "pale mauve",
          "taupe",
          "pale green",
          "orchid",
          "leaf green");

  /** How far lightness goes up and down from an entry's own [CIELAB L*]. */
  static final double SHADING = 9;

  /** Contrast of a pattern's ink with its ground (WCAG 2.2, 1.4.11 asks for 3 to 1). */
  private static final double INK_CONTRAST = 3.1;

  /** Patterns of the neutral greys stay quiet. */
  private static final double NEUTRAL_INK_CONTRAST = 1.6;

  /** Lightness of the neutral greys [CIELAB L*]. */
  private static final double[] NEUTRALS = {90, 66, 56, 76, 82, 34, 47};

  private static final List<Pattern> NEUTRAL_PATTERNS =
      List.of(
          Pattern.DASHED,
          Pattern.CROSSED,
          Pattern.GRID,
          Pattern.LEVEL,
          Pattern.UPRIGHT,
          Pattern.PLAIN,
          Pattern.DOTTED);

  private static final Rgb[][] RAMPS = {
    {Rgb.of(0x9FBDB4), Rgb.of(0x3F8088), Rgb.of(0x0D3444)},
    {Rgb.of(0xD8B38C), Rgb.of(0xA9673A), Rgb.of(0x5A2311)},
  };

  /** Amounts from little to much; each step is darker than the one before. */
  private static final Rgb[][] LEVELS = {
    {Rgb.of(0xF3F0E4), Rgb.of(0xA9C9B4), Rgb.of(0x4F93A0), Rgb.of(0x2A5683), Rgb.of(0x1C1F4E)},
    {Rgb.of(0xF6F0E2), Rgb.of(0xE3BE8C), Rgb.of(0xC07A4C), Rgb.of(0x7E3A35), Rgb.of(0x3A1526)},
  };

  /** Paper that glows, from the dark to the brightest; lightness rises evenly with the place. */
  private static final Rgb[] GLOW = {
    Rgb.of(0x0D1220),
    Rgb.of(0x163A45),
    Rgb.of(0x1F6B62),
    Rgb.of(0x3FA071),
    Rgb.of(0x8CD07F),
    Rgb.of(0xF1F7BF)
  };

  /** How far an untrusted part is mixed towards the plate. */
  private static final double UNTRUSTED = 0.3;

  private Palette() {}

  /** How many entries differ by colour alone. */
  public static int colourCount() {
    return ENTRIES.size();
  }

  /** Colour of an entry; comes round after {@link #colourCount}. */
  public static Rgb colour(int index) {
    return ENTRIES.get(index % ENTRIES.size());
  }

  /**
   * Pattern that an entry needs so that no other of its colour looks alike: none for the first
   * twelve, then another each round.
   */
  public static Pattern pattern(int index) {
    int round = index / ENTRIES.size() % PATTERNS.size();
    int turn = index % ENTRIES.size() + round - 1;
    return round == 0 ? Pattern.PLAIN : PATTERNS.get(1 + turn % (PATTERNS.size() - 1));
  }

  /**
   * Pattern of an entry where colour does not count, in print or to a screen reader: each of the
   * first twelve has its own.
   */
  public static Pattern hatch(int index) {
    return index < ENTRIES.size() ? PATTERNS.get(index) : pattern(index);
  }

  /** The pattern of the neutral greys, each its own. */
  public static Pattern neutralPattern(int place) {
    return NEUTRAL_PATTERNS.get(place % NEUTRAL_PATTERNS.size());
  }

  /** Colour of an entry in a word or two. */
  public static String word(int index) {
    return WORDS.get(index % WORDS.size());
  }

  /** Mark of an entry; the first twelve have one each. */
  public static Mark mark(int index) {
    Mark[] all = Mark.values();
    int rounds = index / (ENTRIES.size() * PATTERNS.size());
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
    if (tint instanceof Tint.Shade shade) {
      Rgb ground = shade(shade.index(), shade.depth());
      return shade.ink() ? ground.contrasting(INK_CONTRAST) : ground;
    }
    if (tint instanceof Tint.Level level) {
      return ramp(LEVELS[level.ramp() % LEVELS.length], level.value());
    }
    if (tint instanceof Tint.Neutral neutral) {
      Rgb ground = neutral(neutral.place());
      return neutral.ink() ? ground.contrasting(NEUTRAL_INK_CONTRAST) : ground;
    }
    return fixed((Tint.Role) tint);
  }

  /**
   * An entry's colour by how late it was decided: lightness alone carries it, even in steps of
   * CIELAB's L*, about {@link #SHADING} to either side; hue stays.
   *
   * @param depth 0 decided at once (lightest) to 1 never (darkest)
   */
  public static Rgb shade(int index, double depth) {
    Lab base = LABS.get(index % LABS.size());
    return base.withLightness(base.lightness() + SHADING * (1 - 2 * depth)).rgb();
  }

  /** One of the greys of what has no colour. */
  public static Rgb neutral(int place) {
    double lightness = NEUTRALS[place % NEUTRALS.length];
    return new Lab(lightness, 0, 0).rgb();
  }

  /**
   * Paper that glows.
   *
   * @param shade 0 in the dark to 1 as bright as can be
   */
  public static Rgb glow(double shade) {
    return ramp(GLOW, shade);
  }

  private static Rgb ramp(Rgb[] ramp, double progress) {
    double place = progress * (ramp.length - 1);
    int step = Math.min(ramp.length - 2, (int) place);
    return ramp[step].towards(ramp[step + 1], place - step);
  }

  private static Rgb aged(Tint.Age age) {
    Rgb colour = ramp(RAMPS[age.trail() % RAMPS.length], age.progress());
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
          case GLOW_PAPER -> GLOW[0].packed();
          case GLOW_GUIDE -> 0x5F6B80;
          case GLOW_LETTERS -> 0x9AA6B8;
        });
  }

  private static List<Rgb> colours(int... packed) {
    return java.util.Arrays.stream(packed).mapToObj(Rgb::of).toList();
  }
}
