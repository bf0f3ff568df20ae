package lodeswing.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class RealmTest {

  private static final Optional<String> TIDE = Optional.of("tide");
  private static final Optional<String> DUNE = Optional.of("dune");
  private static final Realm REALM = Realm.of("tide", "a layout");

  @Test
  void oneContentOfOneOwnerHasOneRealm() {
    assertEquals(REALM, Realm.of("tide", "a layout"));
    assertNotEquals(REALM, Realm.of("tide", "another layout"));
    assertNotEquals(REALM, Realm.of("dune", "a layout"));
    assertTrue(REALM.text().matches("prv-[a-z2-7]{42}"));
    assertTrue(REALM.text().startsWith(Realm.beginningOf("tide")));
  }

  @Test
  void belongsToItsOwnerAlone() {
    assertTrue(REALM.belongsTo(TIDE));
    assertFalse(REALM.belongsTo(DUNE));
    assertFalse(REALM.belongsTo(Optional.empty()));
  }

  @Test
  void everyIdWithinItNamesIt() {
    var key = new ComputationKey("trc", "trace|" + REALM.text() + "|{}");
    var computation = new Computation(key, "trace", "/", progress -> new byte[0]);

    assertEquals(Optional.of(REALM), Realm.in(key.id()));
    assertEquals(Optional.of(REALM), Realm.in(computation.jobId()));
    assertTrue(key.id().endsWith("." + REALM.text()));
    assertTrue(key.id().matches("trc-[a-z2-7]{26}\\." + REALM.text()));
    // What is made of a result within it is within it too.
    assertEquals(
        Optional.of(REALM),
        Realm.in(new ComputationKey("til", "tile|" + key.id() + "|0/0/0").id()));
  }

  @Test
  void whatIsPublicNamesNone() {
    String id = new ComputationKey("trc", "trace|lay-abc|{}").id();

    assertTrue(id.matches("trc-[a-z2-7]{26}"));
    assertEquals(Optional.empty(), Realm.in(id));
    assertFalse(Realm.foreignIn("/v1/layouts/lay-abc?title=prv-", Optional.empty()));
  }

  @Test
  void foreignOneIsFoundBehindAnOwnOne() {
    String own = Realm.of("dune", "x").text();

    assertFalse(Realm.foreignIn("/v1/" + own, DUNE));
    assertTrue(Realm.foreignIn("/v1/" + own + "/" + REALM.text(), DUNE));
    assertTrue(Realm.foreignIn("/v1/" + own, Optional.empty()));
  }
}
