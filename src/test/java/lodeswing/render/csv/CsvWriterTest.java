package lodeswing.render.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

class CsvWriterTest {

  @Test
  void tableHasAHeaderWithUnitsAndLinesEndInCrLf() throws IOException {
    StringBuilder out = new StringBuilder();
    new CsvWriter(out, CsvDialect.STANDARD, "t_s", "x_mm", "outcome")
        .number(0.05)
        .number(-12.25)
        .text("Tide")
        .endRow()
        .integer(1)
        .empty()
        .text("")
        .endRow();
    assertEquals("t_s,x_mm,outcome\r\n0.05,-12.25,Tide\r\n1,,\r\n", out.toString());
  }

  @Test
  void decimalCommasGoWithSemicolonsAndAByteOrderMark() throws IOException {
    StringBuilder out = new StringBuilder();
    new CsvWriter(out, new CsvDialect(true, true), "t_s", "note")
        .number(1.5e-9)
        .text("a,b;c")
        .endRow();
    assertEquals("\uFEFFt_s;note\r\n1,5E-9;\"a,b;c\"\r\n", out.toString());
  }

  @Test
  void textsThatWouldRunAsFormulasAreEscapedAndNumbersAreNot() throws IOException {
    // OWASP, CSV Injection: = + - @ tab CR LF and the full-width forms.
    for (String text :
        List.of("=1+1", "+1", "-1", "@SUM(1)", "\tx", "\rx", "\nx", "＝1", "  =1", "\u00a0-2")) {
      assertEquals("'" + text, readBack(text));
    }
    for (String text : List.of("Tide", "a=b", "7-up", "", "'quoted", "1e5", "Ünder")) {
      assertEquals(text, readBack(text));
    }
    StringBuilder out = new StringBuilder();
    new CsvWriter(out, CsvDialect.STANDARD, "a").number(-3.5).endRow().integer(-7).endRow();
    assertEquals("a\r\n-3.5\r\n-7\r\n", out.toString());
  }

  @Test
  void aLoneEmptyCellIsNotAnEmptyLine() throws IOException {
    StringBuilder out = new StringBuilder();
    new CsvWriter(out, CsvDialect.STANDARD, "a").empty().endRow().text("").endRow();
    assertEquals("a\r\n\"\"\r\n\"\"\r\n", out.toString());
  }

  @Test
  void rowsOfAnotherLengthAndNumbersThatAreNoneAreRefused() throws IOException {
    CsvWriter table = new CsvWriter(new StringBuilder(), CsvDialect.STANDARD, "a", "b");
    assertThrows(IllegalArgumentException.class, () -> table.number(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> table.number(1, 0));
    table.number(1);
    assertThrows(IllegalStateException.class, table::endRow);
    table.number(2);
    assertThrows(IllegalStateException.class, () -> table.number(3));
    assertThrows(
        IllegalArgumentException.class,
        () -> new CsvWriter(new StringBuilder(), CsvDialect.STANDARD));
  }

  @Test
  void statedDigitsAreRoundedHalfToEvenOfTheExactValue() throws IOException {
    assertEquals("3.142", Decimal.rounded(Math.PI, 4));
    assertEquals("0.0001235", Decimal.rounded(1.23451e-4, 4));
    assertEquals("120000", Decimal.rounded(123456, 2));
    assertEquals("0", Decimal.rounded(-0.0, 3));
    assertEquals("-1.5E30", Decimal.rounded(-1.5e30, 5));
  }

  private static String readBack(String text) throws IOException {
    StringBuilder out = new StringBuilder();
    new CsvWriter(out, CsvDialect.STANDARD, "a", "b").text(text).integer(5).endRow();
    List<List<String>> table = CsvReader.read(out.toString(), ',');
    assertEquals(List.of("a", "b"), table.get(0));
    assertEquals("5", table.get(1).get(1));
    return table.get(1).get(0);
  }
}
