package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;

/** Says what each kind of line and mark in a picture of a path means. */
final class PathLegend {
  private static final int MOST_EVENTS = 4;
  private static final int FADE_PARTS = 10;

  private final PathPicture picture;
  private final PathWords words;
  private final List<LegendEntry> entries = new ArrayList<>();

  private PathLegend(PathPicture picture) {
    this.picture = picture;
    this.words = new PathWords(picture.measure());
  }

  /**
   * What of all that may be drawn the picture shows.
   *
   * @param plate whether the plate's outline is shown
   * @param centre whether the cross at the centre is seen
   * @param unlabelled how many magnets bear neither label nor number
   * @param numbered how many magnets bear their number in place of a label
   * @param trails what is seen of each path
   */
  record Seen(boolean plate, boolean centre, int unlabelled, int numbered, List<Parts> trails) {
    Seen {
      trails = List.copyOf(trails);
    }
  }

  /**
   * Parts of a path.
   *
   * @param thin whether a part is seen that no hand can foretell
   * @param broken whether a part is seen that is not to be trusted
   */
  record Parts(boolean thin, boolean broken) {}

  static List<LegendEntry> of(PathPicture picture, Seen seen) {
    PathLegend legend = new PathLegend(picture);
    for (int i = 0; i < picture.trails().size(); i++) {
      legend.lines(picture.trails().get(i), i, seen.trails().get(i));
      legend.marks(picture.trails().get(i));
    }
    legend.entries.addAll(faces(picture.magnets()));
    if (seen.centre()) {
      legend.sign(Mark.PLUS, PlateDrawer.CENTRE, PlateDrawer.centreStyle(), PathWords.CENTRE);
    }
    if (seen.unlabelled() > 0) {
      legend.line(List.of(), PathWords.unlabelled(seen.unlabelled()));
    }
    if (seen.numbered() > 0) {
      legend.line(List.of(), PathWords.numbered(seen.numbered()));
    }
    if (picture.plate().isPresent() && !seen.plate()) {
      legend.line(
          List.of(Stroke.solid(Tint.Role.PLATE_EDGE, 1)), "the plate reaches beyond the picture");
    }
    return List.copyOf(legend.entries);
  }

  private void lines(Trail trail, int index, Parts seen) {
    List<Stroke> fade = new ArrayList<>();
    double width = trail.isSlender() ? TrailDrawer.NARROW : TrailDrawer.WIDE + 0.4;
    for (int i = 0; i < FADE_PARTS; i++) {
      fade.add(Stroke.solid(new Tint.Age(index, i / (FADE_PARTS - 1.0), true), width));
    }
    String span = words.time(trail.begins()) + " to " + words.time(trail.ends());
    String line = trail.isSlender() ? "thin path from " : "path from ";
    line(fade, prefix(trail) + line + span + ", stronger with time");
    Tint late = new Tint.Age(index, 0.75, true);
    trail.horizons().foretoldUntil().stream()
        .filter(time -> seen.thin())
        .forEach(
            time ->
                line(
                    List.of(Stroke.solid(late, TrailDrawer.NARROW)),
                    prefix(trail)
                        + "thin after "
                        + words.time(time)
                        + ": beyond what a hand can foretell"));
    trail.horizons().trustedUntil().stream()
        .filter(time -> seen.broken())
        .forEach(
            time ->
                line(
                    List.of(
                        Stroke.solid(new Tint.Age(index, 1, false), TrailDrawer.NARROW)
                            .with(Dash.DASHED)),
                    prefix(trail)
                        + "broken after "
                        + words.time(time)
                        + ": the computed path is not to be trusted"));
  }

  private String sealed(Trail trail, double time) {
    String at = "sealed at " + words.time(time) + ": its end is decided";
    return time <= trail.ends() ? at : at + PathWords.LATER;
  }

  private void marks(Trail trail) {
    sign(
        Mark.DISC,
        MarkDrawer.RELEASE,
        MarkDrawer.releaseStyle(),
        prefix(trail) + "released at " + words.place(trail.start().x(), trail.start().y()));
    trail
        .horizons()
        .sealedAt()
        .ifPresent(
            time ->
                sign(
                    Mark.DIAMOND,
                    MarkDrawer.SEALED,
                    MarkDrawer.sealedStyle(),
                    prefix(trail) + sealed(trail, time)));
    trail
        .end()
        .ifPresent(
            end ->
                sign(
                    Mark.STAR,
                    MarkDrawer.REST,
                    MarkDrawer.restStyle(),
                    prefix(trail) + words.rest(trail, end)));
    events(trail);
  }

  private void events(Trail trail) {
    List<Trail.Happening> all = trail.happenings();
    for (Trail.Happening event : all.subList(0, Math.min(MOST_EVENTS, all.size()))) {
      sign(
          Mark.CROSS,
          MarkDrawer.EVENT,
          MarkDrawer.eventStyle(),
          prefix(trail) + event.words() + ", " + words.time(event.time()));
    }
    if (all.size() > MOST_EVENTS) {
      sign(
          Mark.CROSS,
          MarkDrawer.EVENT,
          MarkDrawer.eventStyle(),
          prefix(trail) + "and " + (all.size() - MOST_EVENTS) + " more");
    }
  }

  /** What the signs of poles mean, those alone that are there. */
  static List<LegendEntry> faces(List<PlateMagnet> magnets) {
    List<LegendEntry> entries = new ArrayList<>();
    for (PlateMagnet.Face face : PlateMagnet.Face.values()) {
      if (magnets.stream().anyMatch(magnet -> magnet.face() == face)) {
        double size = face.badge().isDisc() ? PlateDrawer.BADGE : PlateDrawer.BADGE * 1.1;
        entries.add(
            new LegendEntry(
                new LegendEntry.Swatch.Sign(
                    face.badge(), size, Style.filled(face.strong()), face.letter()),
                PathWords.face(face)));
      }
    }
    return entries;
  }

  private String prefix(Trail trail) {
    return picture.trails().size() > 1 && !trail.name().isEmpty()
        ? PlainText.shortened(trail.name(), 24) + ": "
        : "";
  }

  private void line(List<Stroke> parts, String text) {
    entries.add(new LegendEntry(new LegendEntry.Swatch.Line(parts), text));
  }

  private void sign(Mark mark, double size, Style style, String text) {
    entries.add(new LegendEntry(new LegendEntry.Swatch.Sign(mark, size, style, ""), text));
  }
}
