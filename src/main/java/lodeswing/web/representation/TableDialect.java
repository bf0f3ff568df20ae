package lodeswing.web.representation;

import lodeswing.render.csv.CsvDialect;

/** The dialect of a table that a query asks for. */
public final class TableDialect {

  private TableDialect() {}

  /** Decimal sign and byte-order mark as the query has them. */
  public static CsvDialect of(QueryParameters query) {
    return new CsvDialect(
        query.get(GeneralParameters.DECIMAL).equals("comma"), query.get(GeneralParameters.BOM));
  }
}
