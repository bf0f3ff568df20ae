package lodeswing.web.bundle;

import java.util.Locale;
import java.util.Optional;
import lodeswing.sheet.Paper;

/**
 * How a bundle is written, which computes nothing.
 *
 * @param locale of the reader
 * @param paper of the sheets
 * @param age of the youngest; empty for the age that the layout is for
 * @param decimalComma whether the tables have a decimal comma
 * @param bom whether the tables begin with a byte-order mark
 */
record BundleStyle(
    Locale locale, Paper paper, Optional<Integer> age, boolean decimalComma, boolean bom) {

  /** The part of the query that chooses the language. */
  String lang() {
    return "&lang=" + locale.toLanguageTag();
  }

  String paperQuery() {
    return "&paper=" + paper.word();
  }

  String ageQuery() {
    return age.map(years -> "&age=" + years).orElse("");
  }

  /** The part of the query that chooses how tables are written. */
  String table() {
    return (decimalComma ? "&decimal=comma" : "") + (bom ? "&bom=true" : "");
  }

  /** All of it, after the figures of a bundle. */
  String query() {
    return lang() + paperQuery() + ageQuery() + table();
  }
}
