package lodeswing.store;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A byte flipped in the closed file: refused, absent or equal, never another result. */
class FlippedFileTest {

  private static final int TRIES = 1_000;

  @Test
  void noFlipInTheFileServesAnotherResult(@TempDir Path folder) throws Exception {
    var check = new FlippedFileCheck(folder, 20_260_302);
    check.run(TRIES);
    assertTrue(check.refused() < TRIES, check.toString());
  }
}
