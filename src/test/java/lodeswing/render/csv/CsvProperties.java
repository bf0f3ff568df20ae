package lodeswing.render.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class CsvProperties {

  @Property(tries = 3000)
  void everyFiniteDoubleComesBackToTheBit(@ForAll long bits) {
    double value = Double.longBitsToDouble(bits);
    Assume.that(Double.isFinite(value) && value != 0);
    String written = Decimal.shortest(value);
    assertEquals(value, Double.parseDouble(written));
    assertTrue(new BigDecimal(written).precision() <= 17);
  }

  @Property(tries = 2000)
  void decimalsOfAFewDigitsComeBackAsTheyWere(
      @ForAll @IntRange(min = -999_999_999, max = 999_999_999) int digits,
      @ForAll @IntRange(min = 0, max = 12) int scale) {
    BigDecimal decimal = BigDecimal.valueOf(digits, scale);
    String written = Decimal.shortest(decimal.doubleValue());
    assertEquals(0, decimal.compareTo(new BigDecimal(written)), written);
    assertTrue(written.length() <= decimal.toPlainString().length(), written);
  }

  @Property(tries = 1000)
  void everyTextComesBackButForTheGuardingApostrophe(
      @ForAll String text, @ForAll boolean decimalComma) throws IOException {
    StringBuilder out = new StringBuilder();
    CsvDialect dialect = new CsvDialect(decimalComma, false);
    new CsvWriter(out, dialect, "a", "b").text(text).number(-0.5).endRow();
    List<List<String>> table = CsvReader.read(out.toString(), dialect.separator());
    String back = table.get(1).get(0);
    assertTrue(back.equals(text) || back.equals("'" + text), back);
    assertEquals(decimalComma ? "-0,5" : "-0.5", table.get(1).get(1));
  }
}
