package lodeswing.core.geometry;

/**
 * A point or vector in space.
 *
 * @param x towards +x in the plate [m]
 * @param y towards +y in the plate [m]
 * @param z upwards from the plate's top surface [m]
 */
public record Vec3(double x, double y, double z) {

  /** The sum of two vectors. */
  public Vec3 plus(Vec3 other) {
    return new Vec3(x + other.x, y + other.y, z + other.z);
  }

  /** The difference of two vectors. */
  public Vec3 minus(Vec3 other) {
    return new Vec3(x - other.x, y - other.y, z - other.z);
  }

  /** This vector stretched by a factor. */
  public Vec3 times(double factor) {
    return new Vec3(x * factor, y * factor, z * factor);
  }

  /** The scalar product. */
  public double dot(Vec3 other) {
    return x * other.x + y * other.y + z * other.z;
  }

  /** The length of this vector. */
  public double length() {
    return Math.sqrt(dot(this));
  }
}
