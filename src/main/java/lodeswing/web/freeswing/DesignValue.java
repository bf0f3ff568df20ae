package lodeswing.web.freeswing;

/** The single values of a design that a cell of a spreadsheet can ask for. */
enum DesignValue {
  SENTENCE("sentence"),
  YOKE_DROP("yokeDropMm"),
  LEG("legMm"),
  HOOK_OFFSET("hookOffsetMm"),
  YOKE_DROP_HAND("yokeDropHandMm"),
  LEG_HAND("legHandMm"),
  HOOK_OFFSET_HAND("hookOffsetHandMm"),
  CLOSES_AFTER("closesAfterS"),
  TIGHT_UP_TO("tightUpToMm"),
  LAYOUT_ID("layoutId");

  private final String word;

  DesignValue(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }
}
