package lodeswing.core.magnet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GradeTest {

  /**
   * N and Y codes: common practice, as makers' data sheets print them. C codes and alnico 5:
   * nominal Br in MMPA Standard 0100-00, tables III-1 and II-1 (2300, 3800, 3850 and 12,800 gauss).
   */
  @ParameterizedTest
  @CsvSource({
    "N35, 1.195",
    "N42, 1.30",
    "N52, 1.455",
    "Y30, 0.385",
    "C1, 0.230",
    "C5, 0.380",
    "C8, 0.385",
    "AlNiCo5, 1.28"
  })
  void middleOfTheRangeIsTheUsualFigure(String code, double tesla) {
    assertEquals(tesla, Grade.find(code).orElseThrow().remanence(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"n42sh, N42", "N35 M, N35", "y30bh, Y30BH", "N48-H, N48", "alnico 5, AlNiCo5"})
  void codesAreReadAsPeopleWriteThem(String written, String code) {
    assertEquals(code, Grade.find(written).orElseThrow().code());
  }

  @Test
  void unknownCodesHaveNoGrade() {
    assertTrue(Grade.find("N99").isEmpty());
    assertTrue(Grade.find("N42XX").isEmpty());
    assertTrue(Grade.find("").isEmpty());
  }

  @Test
  void rangesAreOrderedAndCodesAreUnique() {
    Set<String> codes = new HashSet<>();
    for (Grade grade : Grade.all()) {
      assertTrue(grade.remanenceLow() < grade.remanenceHigh(), grade.code());
      assertTrue(codes.add(grade.code()), grade.code());
      assertTrue(grade.density() > 4000 && grade.density() < 9000, grade.code());
    }
  }
}
