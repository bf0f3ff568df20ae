package lodeswing.core.magnet;

/** How the bob feels a source: by its charged faces, or as a point dipole. */
sealed interface BobProbe permits FaceProbe, PointProbe {

  /**
   * Energy in the field of a source with its north face up [J].
   *
   * @param work holds the bob's pose as seen from the source at {@link Work#POSE}
   */
  double energy(SourceKernel source, double[] work);

  /** As {@link #energy}, and writes force [N] and torque [N m] to {@link Work#SUM}. */
  double energyAndLoad(SourceKernel source, double[] work);

  /** The probe for a magnet with the named pole on the t side. */
  static BobProbe of(Magnet bob, Pole poleDown) {
    int sign = poleDown.sign();
    if (bob instanceof Disc disc) {
      return new FaceProbe(
          sign * disc.remanence(), BobFaces.ofAnnulus(0, disc.radius(), disc.halfHeight()));
    }
    if (bob instanceof Ring ring) {
      return new FaceProbe(
          sign * ring.remanence(),
          BobFaces.ofAnnulus(ring.innerRadius(), ring.outerRadius(), ring.halfHeight()));
    }
    if (bob instanceof Block block) {
      return new FaceProbe(
          sign * block.remanence(),
          BobFaces.ofRectangle(block.length() / 2, block.width() / 2, block.halfHeight()));
    }
    return new PointProbe(sign * bob.moment());
  }
}
