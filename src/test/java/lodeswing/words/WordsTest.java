package lodeswing.words;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.ibm.icu.text.MessageFormat;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class WordsTest {

  private static final Path FOLDER = Path.of("src/main/resources/lodeswing/words");

  static Stream<String> subjects() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".properties"))
          .map(name -> name.substring(0, name.lastIndexOf('_')))
          .distinct()
          .sorted()
          .toList()
          .stream();
    }
  }

  private static Properties kept(String subject, Language language) throws IOException {
    var texts = new Properties();
    Path file = FOLDER.resolve(subject + "_" + language.tag() + ".properties");
    try (var in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      texts.load(in);
    }
    return texts;
  }

  @ParameterizedTest
  @MethodSource("subjects")
  void noTextIsMissingInAnyLanguage(String subject) throws IOException {
    var english = kept(subject, Language.ENGLISH).stringPropertyNames();
    assertFalse(english.isEmpty());
    for (Language language : Language.values()) {
      assertEquals(
          new TreeSet<>(english),
          new TreeSet<>(kept(subject, language).stringPropertyNames()),
          subject + " in " + language);
    }
  }

  @ParameterizedTest
  @MethodSource("subjects")
  void everyTextTakesTheSameArgumentsInEveryLanguage(String subject) throws IOException {
    Properties english = kept(subject, Language.ENGLISH);
    for (Language language : Language.values()) {
      Properties texts = kept(subject, language);
      assertAll(
          texts.stringPropertyNames().stream()
              .map(
                  key ->
                      () -> {
                        String text = texts.getProperty(key);
                        assertFalse(text.isBlank(), key);
                        assertEquals(text.strip(), text, key + " begins or ends with a space");
                        assertFalse(text.contains("\uFFFD"), key + " is no UTF-8");
                        assertEquals(
                            arguments(english.getProperty(key), Language.ENGLISH),
                            arguments(text, language),
                            subject + " in " + language + ": " + key);
                      }));
    }
  }

  private static Set<String> arguments(String text, Language language) {
    return new TreeSet<>(new MessageFormat(text, language.locale()).getArgumentNames());
  }

  @ParameterizedTest
  @MethodSource("subjects")
  void noKeyStandsTwiceInAFile(String subject) throws IOException {
    for (Language language : Language.values()) {
      List<String> keys =
          Files.readAllLines(FOLDER.resolve(subject + "_" + language.tag() + ".properties"))
              .stream()
              .filter(line -> line.matches("[A-Za-z0-9.-]+ *=.*"))
              .map(line -> line.substring(0, line.indexOf('=')).strip())
              .toList();
      assertEquals(keys.stream().distinct().toList(), keys, subject + " in " + language);
    }
  }

  @Test
  void textsAreReadAsTheyAreWrittenWhateverTheMachineSpeaks() {
    Locale own = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertEquals("Safety notes", Words.of("safety", Locale.ENGLISH).text("title"));
      assertEquals("Safety notes", Words.of("safety", Locale.JAPAN).text("title"));
    } finally {
      Locale.setDefault(own);
    }
    assertEquals(
        "Sicherheitshinweise", Words.of("safety", Locale.forLanguageTag("de-CH")).text("title"));
  }

  @Test
  void numbersAndRowsAreThoseOfTheReader() {
    Words german = Words.of("safety", Locale.GERMANY);
    Words swiss = Words.of("safety", Locale.forLanguageTag("de-CH"));
    Words mexican = Words.of("safety", Locale.forLanguageTag("es-MX"));
    Words japanese = Words.of("safety", Locale.JAPAN);
    assertEquals("12,3", german.number(12.345, 3));
    assertEquals("12.3", swiss.number(12.345, 3));
    assertEquals("12.3", mexican.number(12.345, 3));
    assertEquals("12.345", german.number(12345, 5));
    assertEquals("12,345", japanese.number(12345, 5));
    assertEquals("Tide, Dune und Reef", german.list(List.of("Tide", "Dune", "Reef")));
    assertEquals("Tide y Dune", mexican.list(List.of("Tide", "Dune")));
    // CLDR knows that an y before an i-sound is an e.
    assertEquals("Tide e Isla", mexican.list(List.of("Tide", "Isla")));
  }

  @Test
  void whatIsMissingIsNamed() {
    Words words = Words.of("safety", Locale.ENGLISH);
    assertThrows(MissingResourceException.class, () -> words.text("no-such-text"));
    assertThrows(MissingResourceException.class, () -> Words.of("nothing", Locale.ENGLISH));
    assertTrue(
        Arrays.stream(Language.values())
            .allMatch(l -> Words.of("safety", l.locale()).has("title")));
    assertEquals("Safety notes", words.text("title", Map.of("more", "{than} is asked")));
  }
}
