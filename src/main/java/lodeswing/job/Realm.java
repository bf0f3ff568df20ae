package lodeswing.job;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A private layout with all that is computed of it: what its owner alone may read, and what goes
 * with it when it is deleted.
 *
 * <p>Its text is the layout's id, {@code prv-}, 16 characters that stand for the owner and 26 that
 * nobody can guess, and is part of every id that belongs to it, so that an id alone tells whose it
 * is.
 *
 * @param text the private layout's id
 */
public record Realm(String text) {

  private static final String PREFIX = "prv-";
  private static final int OWNER_CHARACTERS = 16;
  private static final Pattern TEXT = Pattern.compile("prv-[a-z2-7]{42}");

  /** The realm of a layout's content; one content of one owner always has the same. */
  public static Realm of(String owner, String content) {
    return new Realm(beginningOf(owner) + ComputationKey.digest(content));
  }

  /** What stands for an owner: 80 bits of a digest. */
  private static String tag(String owner) {
    return ComputationKey.digest("owner|" + owner).substring(0, OWNER_CHARACTERS);
  }

  /** What all realms of an owner begin with. */
  public static String beginningOf(String owner) {
    return PREFIX + tag(owner);
  }

  /** The first realm that a text names: an id, a path, a canonical request. */
  public static Optional<Realm> in(String text) {
    Matcher matcher = TEXT.matcher(text);
    return matcher.find() ? Optional.of(new Realm(matcher.group())) : Optional.empty();
  }

  /** Whether a text names a realm that is not the owner's; nobody owns any without a name. */
  public static boolean foreignIn(String text, Optional<String> owner) {
    Matcher matcher = TEXT.matcher(text);
    while (matcher.find()) {
      if (!new Realm(matcher.group()).belongsTo(owner)) {
        return true;
      }
    }
    return false;
  }

  /** Whether it is this owner's. */
  public boolean belongsTo(Optional<String> owner) {
    return owner.filter(name -> text.startsWith(beginningOf(name))).isPresent();
  }

  /** The end of every id within it. */
  public String ending() {
    return "." + text;
  }

  /** The end of the ids that belong to what a text names: nothing where that is public. */
  static String endingOf(String text) {
    return in(text).map(Realm::ending).orElse("");
  }
}
