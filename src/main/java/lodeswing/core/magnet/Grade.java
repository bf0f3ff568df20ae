package lodeswing.core.magnet;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A trade grade of magnet material.
 *
 * <p>Where a public standard lists the very code, its figure is in the range: MMPA Standard 0100-00
 * (ceramic 1, 5, 7, 8; cast alnico; samarium cobalt, named there by energy product and coercivity).
 * Trade codes of neodymium (N35 ...) and of Chinese ferrite (Y30 ...) stand in no IEC or MMPA
 * standard under that name; their ranges are common practice among makers and lie inside the
 * classes of IEC 60404-8-1 (REFeB; hard ferrite). A temperature suffix (M, H, SH, UH, EH, AH) says
 * how hard the material is to demagnetise and leaves the remanence as it is.
 *
 * @param code the code as it is written on a bag of magnets
 * @param material what it is made of
 * @param remanenceLow lowest Br in the trade [T]
 * @param remanenceHigh highest Br in the trade [T]
 * @param source where the range is from
 */
public record Grade(
    String code, Material material, double remanenceLow, double remanenceHigh, Source source) {

  /** A family of magnet materials, with its density. */
  public enum Material {
    /** Sintered NdFeB; density: common practice (IEC 60404-8-1 gives 7.4 to 7.7 Mg/m^3). */
    NEODYMIUM(7500),
    /** Sintered hard ferrite; density MMPA 0100-00, table III-3 (4.9 g/cm^3). */
    FERRITE(4900),
    /** Sintered samarium cobalt; density common practice (8.2 to 8.4 Mg/m^3). */
    SAMARIUM_COBALT(8300),
    /** Cast alnico; density MMPA 0100-00, table II-3 (7.3 g/cm^3 for alnico 5). */
    ALNICO(7300);

    private final double density;

    Material(double density) {
      this.density = density;
    }

    /** Typical density [kg/m^3]. */
    public double density() {
      return density;
    }
  }

  /** What a range of remanence rests on. */
  public enum Source {
    /** Nominal value of MMPA Standard 0100-00, with 3 % either side. */
    MMPA_0100_00,
    /** Makers' data sheets agree on it within a few hundredths of a tesla. */
    COMMON_PRACTICE
  }

  private static final Pattern SUFFIXED = Pattern.compile("(N\\d\\d)(M|H|SH|UH|EH|AH|VH|TH)");

  private static final List<Grade> ALL =
      List.of(
          neodymium("N27", 1.03, 1.08),
          neodymium("N28", 1.04, 1.09),
          neodymium("N30", 1.08, 1.13),
          neodymium("N33", 1.13, 1.17),
          neodymium("N35", 1.17, 1.22),
          neodymium("N38", 1.22, 1.25),
          neodymium("N40", 1.25, 1.28),
          neodymium("N42", 1.28, 1.32),
          neodymium("N45", 1.32, 1.38),
          neodymium("N48", 1.38, 1.42),
          neodymium("N50", 1.40, 1.45),
          neodymium("N52", 1.43, 1.48),
          neodymium("N55", 1.47, 1.52),
          ferrite("Y10", 0.200, 0.235),
          ferrite("Y20", 0.320, 0.380),
          ferrite("Y25", 0.360, 0.400),
          ferrite("Y30", 0.370, 0.400),
          ferrite("Y30BH", 0.380, 0.400),
          ferrite("Y32", 0.400, 0.420),
          ferrite("Y33", 0.410, 0.430),
          ferrite("Y35", 0.430, 0.450),
          ferrite("Y40", 0.440, 0.460),
          mmpa("C1", Material.FERRITE, 0.230),
          mmpa("C5", Material.FERRITE, 0.380),
          mmpa("C7", Material.FERRITE, 0.340),
          mmpa("C8", Material.FERRITE, 0.385),
          mmpa("SmCo18", Material.SAMARIUM_COBALT, 0.870),
          mmpa("SmCo20", Material.SAMARIUM_COBALT, 0.900),
          mmpa("SmCo24", Material.SAMARIUM_COBALT, 1.020),
          mmpa("SmCo26", Material.SAMARIUM_COBALT, 1.050),
          mmpa("SmCo28", Material.SAMARIUM_COBALT, 1.090),
          mmpa("AlNiCo2", Material.ALNICO, 0.750),
          mmpa("AlNiCo5", Material.ALNICO, 1.280),
          mmpa("AlNiCo6", Material.ALNICO, 1.050),
          mmpa("AlNiCo8", Material.ALNICO, 0.820),
          mmpa("AlNiCo9", Material.ALNICO, 1.060));

  private static Grade neodymium(String code, double low, double high) {
    return new Grade(code, Material.NEODYMIUM, low, high, Source.COMMON_PRACTICE);
  }

  private static Grade ferrite(String code, double low, double high) {
    return new Grade(code, Material.FERRITE, low, high, Source.COMMON_PRACTICE);
  }

  private static Grade mmpa(String code, Material material, double nominal) {
    return new Grade(code, material, 0.97 * nominal, 1.03 * nominal, Source.MMPA_0100_00);
  }

  /** All grades, in the order of their families. */
  public static List<Grade> all() {
    return ALL;
  }

  /** The grade with a code, read without regard to case, spaces and a temperature suffix. */
  public static Optional<Grade> find(String code) {
    String wanted = code.replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT);
    var suffixed = SUFFIXED.matcher(wanted);
    String plain = suffixed.matches() ? suffixed.group(1) : wanted;
    return ALL.stream()
        .filter(grade -> grade.code.toUpperCase(Locale.ROOT).equals(plain))
        .findFirst();
  }

  /** The middle of the range [T]. */
  public double remanence() {
    return (remanenceLow + remanenceHigh) / 2;
  }

  /** Typical density [kg/m^3]. */
  public double density() {
    return material.density();
  }
}
