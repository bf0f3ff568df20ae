package lodeswing.web.layout;

import java.util.List;
import lodeswing.web.body.JsonPointer;

/**
 * Where the members of a canonical layout stood in the body that was sent.
 *
 * @param root pointer of the layout in the body, empty for the whole body
 * @param magnets for each magnet of the canonical form the pointer of the magnet or pattern it came
 *     from, without the root
 */
record SentPlaces(String root, List<String> magnets) {
  private static final String MAGNETS = "/magnets/";

  SentPlaces {
    magnets = List.copyOf(magnets);
  }

  /** The pointer of a magnet, by its place in the canonical form. */
  String magnet(int index) {
    return root + magnets.get(index);
  }

  /** The pointer of a magnet's member; of the whole pattern where it came from one. */
  String magnet(int index, String member) {
    String pointer = magnet(index);
    return magnets.get(index).startsWith(MAGNETS) ? JsonPointer.member(pointer, member) : pointer;
  }

  /** The pointer sent for a pointer into the canonical form. */
  String of(String canonical) {
    if (!canonical.startsWith(MAGNETS)) {
      return root + canonical;
    }
    int end = canonical.indexOf('/', MAGNETS.length());
    String index = canonical.substring(MAGNETS.length(), end < 0 ? canonical.length() : end);
    String member = end < 0 ? "" : canonical.substring(end);
    int magnet = Integer.parseInt(index);
    return magnets.get(magnet).startsWith(MAGNETS) ? magnet(magnet) + member : magnet(magnet);
  }
}
