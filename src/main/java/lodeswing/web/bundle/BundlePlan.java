package lodeswing.web.bundle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.web.body.Numbers;
import lodeswing.web.worksheet.SurePlace;

/** The files of a bundle in their order, and the request that gives each of them. */
final class BundlePlan {

  private static final String LAYOUT = "/v1/layouts/{id}";

  /** Asked for its id alone, under which the legend is. */
  static final String BASIN = LAYOUT + "/basin";

  private final BundleRequest request;
  private final BundleStyle style;

  BundlePlan(BundleRequest request, BundleStyle style) {
    this.request = request;
    this.style = style;
  }

  /** Where the page shows a file. */
  enum Section {
    SHEETS("sheets"),
    SAFETY("safety"),
    PICTURES("pictures"),
    TABLES("tables"),
    DATA("data");

    private final String word;

    Section(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }
  }

  /**
   * A file that a bundle has where it can.
   *
   * @param path in the archive
   * @param section where the page shows it
   * @param group with what it can be left out
   * @param template of the address that gives it
   * @param query of that address
   */
  record Planned(
      String path, Section section, Optional<BundleGroup> group, String template, String query) {

    /** Names it in the words of the page: its name without folder and ending. */
    String key() {
      String name = path.substring(path.lastIndexOf('/') + 1);
      return name.substring(0, name.lastIndexOf('.'));
    }

    /** Whether a browser shows it as a picture on the page. */
    boolean isPicture() {
      return section == Section.PICTURES;
    }

    /** Whether it is one of a group. */
    boolean isOf(BundleGroup one) {
      return group.equals(Optional.of(one));
    }

    /** The same as one of several pages. */
    Planned page(int number) {
      return new Planned(
          path.replace(".svg", "-" + number + ".svg"),
          section,
          group,
          template,
          query + "&page=" + number);
    }

    /** Whether it stands for a picture of each page of a sheet. */
    boolean isOfPages() {
      return path.equals("sheets/placing-sheet.svg");
    }

    /** Whether it is found under the id of the map. */
    boolean isOfMap() {
      return template.startsWith("/v1/basins");
    }
  }

  /**
   * The files, as many whatever the release is; a file comes after those whose results it needs.
   *
   * @param release where the bob is let go
   */
  List<Planned> files(SurePlace release) {
    String at = "&x=" + Numbers.shortest(release.x()) + "&y=" + Numbers.shortest(release.y());
    String hand = "&spreadMm=" + Numbers.shortest(request.spreadMm());
    String sheet = style.lang() + style.paperQuery();
    // Elsewhere a worksheet is refused, and not for the size of a hand.
    boolean bench = request.layout().model().equals("bench");
    String work = sheet + style.ageQuery() + (bench ? hand : "");
    List<Planned> all = new ArrayList<>();
    all.add(sheet("placing-sheet.pdf", BundleGroup.PLACING_SHEET, "/template", "pdf", sheet));
    all.add(sheet("placing-sheet.svg", BundleGroup.PLACING_SHEET, "/template", "svg", sheet));
    all.add(sheet("outcome-sheet.pdf", BundleGroup.OUTCOME_SHEET, "/outcome-sheet", "pdf", sheet));
    all.add(sheet("worksheet.pdf", BundleGroup.WORKSHEET, "/worksheet", "pdf", work));
    all.add(
        sheet(
            "worksheet-key.pdf",
            BundleGroup.WORKSHEET,
            "/worksheet",
            "pdf",
            work + "&answers=true"));
    all.add(safety("safety-notes.html", "html"));
    all.add(safety("safety-notes.txt", "text"));
    all.add(table("rest-points.csv", BundleGroup.REST_POINTS, "/rest-points", ""));
    all.add(document("rest-points.json", BundleGroup.REST_POINTS, "/rest-points", ""));
    all.add(table("check.csv", BundleGroup.CHECK, "/check", ""));
    all.add(document("check.json", BundleGroup.CHECK, "/check", ""));
    all.add(picture("path.svg", BundleGroup.PATH, "/trace", at));
    all.add(table("path.csv", BundleGroup.PATH, "/trace", at));
    all.add(picture("odds.svg", BundleGroup.ODDS, "/odds", at + hand));
    all.add(table("odds.csv", BundleGroup.ODDS, "/odds", at + hand));
    all.add(picture("free-swing.svg", BundleGroup.FREE_SWING, "/free-swing", ""));
    all.add(picture("field-map.svg", BundleGroup.FIELD_MAP, "/field/map", ""));
    all.add(picture("weak-spots.svg", BundleGroup.WEAK_SPOTS, "/field/weak-spots", ""));
    all.add(table("weak-spots.csv", BundleGroup.WEAK_SPOTS, "/field/weak-spots", ""));
    all.add(
        new Planned(
            "pictures/basin-map.png",
            Section.PICTURES,
            Optional.of(BundleGroup.BASIN_MAP),
            BASIN,
            "format=png&width=" + request.mapPixels()));
    all.add(
        new Planned(
            "pictures/basin-map-legend.svg",
            Section.PICTURES,
            Optional.of(BundleGroup.BASIN_MAP),
            "/v1/basins/{id}/legend",
            "format=svg"));
    return List.copyOf(all);
  }

  private static Planned sheet(
      String name, BundleGroup group, String below, String form, String query) {
    return new Planned(
        "sheets/" + name,
        Section.SHEETS,
        Optional.of(group),
        LAYOUT + below,
        "format=" + form + query);
  }

  /** Notes that warn are in every bundle. */
  private Planned safety(String name, String form) {
    return new Planned(
        "safety/" + name,
        Section.SAFETY,
        Optional.empty(),
        LAYOUT + "/safety-notes",
        "format=" + form + style.lang());
  }

  private static Planned picture(String name, BundleGroup group, String below, String query) {
    return new Planned(
        "pictures/" + name,
        Section.PICTURES,
        Optional.of(group),
        LAYOUT + below,
        "format=svg" + query);
  }

  private Planned table(String name, BundleGroup group, String below, String query) {
    return new Planned(
        "tables/" + name,
        Section.TABLES,
        Optional.of(group),
        LAYOUT + below,
        "format=csv" + query + style.table());
  }

  private static Planned document(String name, BundleGroup group, String below, String query) {
    return new Planned(
        "data/" + name, Section.DATA, Optional.of(group), LAYOUT + below, "format=json" + query);
  }
}
