package lodeswing.web.layout;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import lodeswing.core.suspension.Material;

/** The words for materials on the wire: lower case, words joined by hyphens. */
final class PartMaterials {
  private PartMaterials() {}

  /** Every word. */
  static List<String> names() {
    return Arrays.stream(Material.values()).map(PartMaterials::name).toList();
  }

  /** The material of a word that a shape has let through. */
  static Material named(String word) {
    return Material.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  private static String name(Material material) {
    return material.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
