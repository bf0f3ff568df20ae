package lodeswing.web.layout;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.web.body.Body;
import lodeswing.web.body.BodyReader;
import lodeswing.web.body.NearestName;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.TextShape;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/** The layouts that come with the service. */
public final class SampleLayouts {

  private static final List<String> NAMES =
      List.of(
          "three-stations",
          "one-well",
          "quiet-plate",
          "closed-doors",
          "turned-centre",
          "uneven-coast",
          "y-cord",
          "heavy-bar",
          "kitchen-drawer",
          "crowded-shelf",
          "paper-triangle");

  private static final ObjectShape FILE =
      ObjectShape.named("SampleFile", "A sample layout with what it is called.")
          .required("name", new TextShape(40), "Its name in addresses.")
          .required("description", new TextShape(400), "What it shows.")
          .required("layout", LayoutShapes.REQUEST, "The layout.")
          .build();

  private final List<Sample> samples;

  private SampleLayouts(List<Sample> samples) {
    this.samples = List.copyOf(samples);
  }

  /**
   * One sample.
   *
   * @param name its name in addresses
   * @param description what it shows
   * @param sent the layout as one would send it
   * @param document the layout
   */
  public record Sample(String name, String description, Body sent, LayoutDocument document) {}

  /** Reads all of them from the service's own resources. */
  public static SampleLayouts load() {
    var samples = new ArrayList<Sample>();
    for (String name : NAMES) {
      Body file = BodyReader.read(bytes(name), FILE);
      Body sent = file.object("layout");
      samples.add(
          new Sample(file.text("name"), file.text("description"), sent, LayoutDocument.of(sent)));
    }
    return new SampleLayouts(samples);
  }

  private static byte[] bytes(String name) {
    String path = "/sample-layouts/" + name + ".json";
    try (InputStream in = SampleLayouts.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("no sample layout at " + path);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All samples, the usual one first. */
  public List<Sample> all() {
    return samples;
  }

  /**
   * The sample of a name.
   *
   * @throws ProblemException {@code not-found}, with the nearest known name
   */
  public Sample get(String name) {
    return find(name)
        .orElseThrow(
            () ->
                new ProblemException(
                    ProblemCode.NOT_FOUND,
                    NearestName.find(name, NAMES)
                            .map(near -> "There is no such sample; did you mean " + near + "? ")
                            .orElse("There is no such sample. ")
                        + "There are "
                        + String.join(", ", NAMES)
                        + ".",
                    List.of()));
  }

  /** The sample of a name. */
  public Optional<Sample> find(String name) {
    return samples.stream().filter(sample -> sample.name().equals(name)).findFirst();
  }
}
