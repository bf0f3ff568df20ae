package lodeswing.web.landscape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.rig.TextbookLayout;
import org.junit.jupiter.api.Test;

class LatestLandscapesTest {

  private static final Landscape ONE =
      Landscape.of(
          new TextbookLayout(0.5, 0.2, 0.3, List.of(new TextbookLayout.Attractor(0.4, 0, 1))));

  private final LatestLandscapes held = new LatestLandscapes(3 * ONE.bytes());

  private void put(String key) {
    CompletableFuture<Landscape> mine = new CompletableFuture<>();
    assertEquals(Optional.empty(), held.seat(key, mine));
    held.made(key, ONE);
    mine.complete(ONE);
  }

  @Test
  void newestIsHeldHoweverOftenOthersWereAskedFor() {
    for (String key : List.of("a", "b", "c")) {
      put(key);
      for (int i = 0; i < 50; i++) {
        assertTrue(held.seat(key, new CompletableFuture<>()).isPresent());
      }
    }
    put("new");
    assertTrue(held.holds("new"));
    assertFalse(held.holds("a"), "longest unused");
    assertTrue(held.holds("b") && held.holds("c"));
  }

  @Test
  void whatIsBeingMadeStaysAndWhatFailedLeaves() {
    CompletableFuture<Landscape> slow = new CompletableFuture<>();
    assertEquals(Optional.empty(), held.seat("slow", slow));
    for (String key : List.of("a", "b", "c", "d", "e")) {
      put(key);
    }
    assertEquals(Optional.of(slow), held.seat("slow", new CompletableFuture<>()));
    held.failed("slow");
    assertFalse(held.holds("slow"));
    assertFalse(held.holds("b"));
    assertTrue(held.holds("c") && held.holds("d") && held.holds("e"));
  }
}
