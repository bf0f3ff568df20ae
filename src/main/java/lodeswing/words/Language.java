package lodeswing.words;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A language in which texts are kept, and how one is chosen.
 *
 * <p>A reader's locale may name a country too: the texts are those of the language, the decimal
 * sign is that of the country (in Mexico 1.5, in Spain 1,5).
 */
public enum Language {
  ENGLISH("en"),
  GERMAN("de"),
  SPANISH("es");

  private final String tag;

  Language(String tag) {
    this.tag = tag;
  }

  /** Its tag (BCP 47, RFC 5646). */
  public String tag() {
    return tag;
  }

  /** The language of no country. */
  public Locale locale() {
    return Locale.forLanguageTag(tag);
  }

  /** The language of a locale; English where no texts are kept in its own. */
  public static Language of(Locale locale) {
    return known(locale).orElse(ENGLISH);
  }

  private static Optional<Language> known(Locale locale) {
    return Arrays.stream(values())
        .filter(language -> language.tag.equals(locale.getLanguage()))
        .findFirst();
  }

  /**
   * The locale that a tag names, by language and country alone; English where no texts are kept in
   * that language or the tag is none.
   */
  public static Locale named(String tag) {
    return known(Locale.forLanguageTag(tag), tag).orElse(ENGLISH.locale());
  }

  private static Optional<Locale> known(Locale asked, String tag) {
    // An ill-formed tag loses its end; such a one names nothing.
    return known(asked)
        .filter(language -> asked.toLanguageTag().equalsIgnoreCase(tag))
        .map(language -> withCountry(language, asked.getCountry()));
  }

  private static Locale withCountry(Language language, String country) {
    return new Locale.Builder().setLanguage(language.tag).setRegion(country).build();
  }

  /**
   * The locale that a reader likes best of those whose language is kept (lookup by RFC 4647,
   * section 3.4); English where there is none or the field is no list of languages.
   *
   * @param accepted the value of an Accept-Language field (RFC 9110, section 12.5.4)
   */
  public static Locale preferred(String accepted) {
    List<Locale.LanguageRange> ranges;
    try {
      ranges = Locale.LanguageRange.parse(accepted);
    } catch (IllegalArgumentException e) {
      return ENGLISH.locale();
    }
    return ranges.stream()
        .filter(range -> range.getWeight() > 0)
        .flatMap(range -> known(Locale.forLanguageTag(range.getRange()), range.getRange()).stream())
        .findFirst()
        .orElse(ENGLISH.locale());
  }
}
