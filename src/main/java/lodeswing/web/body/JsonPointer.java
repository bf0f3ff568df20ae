package lodeswing.web.body;

/** Builds JSON Pointers (RFC 6901). */
public final class JsonPointer {
  private JsonPointer() {}

  /** The pointer of an object's member. */
  public static String member(String parent, String name) {
    return parent + "/" + name.replace("~", "~0").replace("/", "~1");
  }

  /** The pointer of a list's element, counted from 0. */
  public static String element(String parent, int index) {
    return parent + "/" + index;
  }
}
