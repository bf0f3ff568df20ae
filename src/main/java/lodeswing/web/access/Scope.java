package lodeswing.web.access;

import java.util.Locale;

/** What a caller may do. */
public enum Scope {
  /** Read what is stored and what costs next to nothing. */
  READ,
  /** Have something computed or stored. */
  COMPUTE,
  /** Manage keys and remove what others have stored. */
  ADMIN;

  /** The word that a key or a token names it by. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
