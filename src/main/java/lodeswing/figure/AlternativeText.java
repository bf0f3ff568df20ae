package lodeswing.figure;

/**
 * What a picture says to those who do not see it.
 *
 * @param language its language as a BCP 47 tag, such as {@code en}
 * @param title a short name
 * @param description whole sentences that say what the picture shows
 */
public record AlternativeText(String language, String title, String description) {

  /** Clears both texts of anything that is not text. */
  public AlternativeText {
    title = PlainText.of(title);
    description = PlainText.of(description);
  }
}
