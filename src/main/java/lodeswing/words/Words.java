package lodeswing.words;

import com.ibm.icu.number.NumberFormatter;
import com.ibm.icu.number.Precision;
import com.ibm.icu.text.ListFormatter;
import com.ibm.icu.text.MessageFormat;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.TreeSet;

/**
 * The texts of one subject in one language.
 *
 * <p>A text is a message of ICU (named arguments, plurals, number skeletons), so that numbers,
 * units and plurals follow CLDR. What is given as an argument is never read as a message.
 *
 * <p>Immutable.
 */
public final class Words {

  /** No fallback to the machine's own language, whatever that is. */
  private static final ResourceBundle.Control THIS_LANGUAGE_ALONE =
      ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

  private final String subject;
  private final ResourceBundle texts;
  private final Locale locale;

  private Words(String subject, ResourceBundle texts, Locale locale) {
    this.subject = subject;
    this.texts = texts;
    this.locale = locale;
  }

  /**
   * The texts of a subject for a reader.
   *
   * @param subject name of the property files before the language, such as {@code safety}
   * @param locale of the reader; English where no texts are kept in its language
   * @throws java.util.MissingResourceException if there is no such subject
   */
  public static Words of(String subject, Locale locale) {
    Language language = Language.of(locale);
    ResourceBundle texts =
        ResourceBundle.getBundle(
            "lodeswing.words." + subject,
            language.locale(),
            Words.class.getClassLoader(),
            THIS_LANGUAGE_ALONE);
    return new Words(subject, texts, language == Language.ENGLISH ? english(locale) : locale);
  }

  /** A locale of another language that is answered in English is not to have its own numbers. */
  private static Locale english(Locale locale) {
    return locale.getLanguage().equals(Language.ENGLISH.tag()) ? locale : Language.ENGLISH.locale();
  }

  /** The locale by which numbers are written. */
  public Locale locale() {
    return locale;
  }

  /** Whether there is a text under a key. */
  public boolean has(String key) {
    return texts.containsKey(key);
  }

  /**
   * A text without arguments.
   *
   * @throws java.util.MissingResourceException if there is no text under the key
   * @throws IllegalArgumentException if the text has arguments
   */
  public String text(String key) {
    return text(key, Map.of());
  }

  /**
   * A text.
   *
   * @param arguments numbers and words by name; more than the text has are left out
   * @throws java.util.MissingResourceException if there is no text under the key
   * @throws IllegalArgumentException if an argument is missing
   */
  public String text(String key, Map<String, ?> arguments) {
    var message = new MessageFormat(texts.getString(key), locale);
    var missing = new TreeSet<String>(message.getArgumentNames());
    missing.removeAll(arguments.keySet());
    if (!missing.isEmpty()) {
      throw new IllegalArgumentException(subject + ": " + key + " needs " + missing);
    }
    return message.format(arguments);
  }

  /** A number to so many significant digits, without zeros at its end that say nothing. */
  public String number(double value, int digits) {
    return NumberFormatter.withLocale(locale)
        .precision(Precision.maxSignificantDigits(digits))
        .format(value)
        .toString();
  }

  /**
   * A number with the symbol of its unit, which no line end parts (BIPM, The International System
   * of Units, 9th ed. (2019), section 5.4.3); symbols are the same in every language.
   *
   * @param symbol such as {@code mm}
   */
  public String quantity(double value, int digits, String symbol) {
    return number(value, digits) + '\u00a0' + symbol;
  }

  /** Several things in a row, such as {@code Tide, Dune and Reef}. */
  public String list(Collection<String> things) {
    return ListFormatter.getInstance(locale).format(things);
  }
}
