package lodeswing.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LanguageTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "de | de",
        "de-AT | de-AT",
        "DE-at | de-AT",
        "fr, es-MX;q=0.8, en;q=0.5 | es-MX",
        "en;q=0.2, es;q=0.9, de;q=0.3 | es",
        "de;q=0, es;q=0.1 | es",
        "fr, it | en",
        "* | en",
        "de-DE-u-nu-arab | de-DE",
        "'' | en",
        "de;q=many | en",
        "</script> | en",
      })
  void readersGetWhatTheyLikeBestOfWhatIsKept(String accepted, String chosen) {
    assertEquals(chosen, Language.preferred(accepted).toLanguageTag());
  }

  @ParameterizedTest
  @CsvSource({"de, de", "es-419, es-419", "en-GB, en-GB", "fr, en", "de-, en", "x, en", "d, en"})
  void tagsNameALocaleOrEnglish(String tag, String named) {
    assertEquals(named, Language.named(tag).toLanguageTag());
  }

  @Test
  void localesOfOtherLanguagesAreAnsweredInEnglish() {
    assertEquals(Language.ENGLISH, Language.of(Locale.JAPANESE));
    assertEquals(Language.GERMAN, Language.of(Locale.forLanguageTag("de-CH")));
  }
}
