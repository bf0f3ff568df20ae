package lodeswing.safety;

/** What a caution is about. */
public enum SafetyCode {
  SWALLOWING("swallowing"),
  PINCHING("pinching"),
  SPLINTERS("splinters"),
  IMPLANTS("implants"),
  CARDS_AND_WATCHES("cards-and-watches"),
  SWINGING_BOB("swinging-bob"),
  SUPPORT("support"),
  FIXING("fixing"),
  LASER("laser"),
  FILINGS("filings"),
  STORAGE_AND_TRANSPORT("storage-and-transport"),
  /** Said of a textbook layout, of which no real magnet is known. */
  NO_RIG("no-rig");

  private final String word;

  SafetyCode(String word) {
    this.word = word;
  }

  /** Its name in answers, and before the dot in the keys of its texts. */
  public String word() {
    return word;
  }
}
