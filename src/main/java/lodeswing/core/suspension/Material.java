package lodeswing.core.suspension;

/**
 * Materials that bars, weights and magnets are made of, each with a density good to a few percent.
 *
 * <p>Wood and plastics vary most; a weighed part is always better than one from its material.
 */
public enum Material {
  STEEL(7850, "EN 1991-1-1:2002, Table A.4 (77.0 to 78.5 kN/m^3, upper end)"),
  STAINLESS_STEEL(7900, "EN 10088-1, annex of physical properties, grade 1.4301 (7.9 kg/dm^3)"),
  BRASS(8470, "common practice, free-cutting brass CuZn39Pb3"),
  COPPER(8960, "CRC Handbook of Chemistry and Physics, density of the elements"),
  ALUMINIUM(2700, "EN 1999-1-1:2007, 3.2.5"),
  ZINC(7140, "CRC Handbook of Chemistry and Physics, density of the elements"),
  LEAD(11340, "CRC Handbook of Chemistry and Physics, density of the elements"),
  SOFTWOOD(420, "EN 338, mean density of class C24"),
  BEECH(710, "common practice, air-dry"),
  PLYWOOD(680, "common practice, birch"),
  ACRYLIC(1190, "common practice, cast PMMA"),
  NYLON(1140, "common practice, PA 6.6"),
  ABS(1050, "common practice"),
  PLA(1240, "common practice"),
  PVC(1400, "common practice, rigid"),
  POLYSTYRENE(1050, "common practice, solid"),
  GLASS(2500, "EN 572-1, soda lime silicate"),
  NEODYMIUM(7400, "MMPA 0100-00, sintered Nd-Fe-B, 7.4 g/cm^3"),
  SAMARIUM_COBALT(8400, "MMPA 0100-00, sintered Sm-Co, 8.2 to 8.4 g/cm^3, upper end"),
  ALNICO(7300, "MMPA 0100-00, cast Alnico 5, 7.3 g/cm^3"),
  FERRITE(4900, "MMPA 0100-00, ceramic, 4.9 g/cm^3");

  private final double density;
  private final String source;

  Material(double density, String source) {
    this.density = density;
    this.source = source;
  }

  /** Density [kg/m^3]. */
  public double density() {
    return density;
  }

  /** Where the figure comes from. */
  public String source() {
    return source;
  }

  /**
   * Mass of a solid of this material [kg].
   *
   * @param volume [m^3]
   */
  public double massOf(double volume) {
    return density * volume;
  }
}
