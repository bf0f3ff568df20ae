package lodeswing.safety;

/**
 * The two magnets of a rig that pinch hardest.
 *
 * @param one a magnet
 * @param other another one, or one of its kind
 * @param force their pull at contact [N]
 */
record StrongestPair(MagnetKind one, MagnetKind other, double force) {

  ContactPull pull() {
    return ContactPull.of(one.magnet(), other.magnet());
  }
}
