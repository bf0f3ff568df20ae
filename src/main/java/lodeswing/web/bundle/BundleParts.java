package lodeswing.web.bundle;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import lodeswing.web.bundle.BundlePlan.Planned;
import lodeswing.web.jobs.AddressedPart;
import lodeswing.web.jobs.Answerable;
import org.springframework.stereotype.Component;

/** The resources that give the files of a bundle. */
@Component
final class BundleParts {

  private final Map<String, AddressedPart> byTemplate;

  BundleParts(List<AddressedPart> parts) {
    this.byTemplate =
        parts.stream().collect(Collectors.toMap(AddressedPart::template, Function.identity()));
  }

  /**
   * What a file asks for.
   *
   * @param id of the layout, or of the map where the file is one of it
   * @throws lodeswing.web.problem.ProblemException as a request for it would end with
   */
  Answerable asked(Planned file, String id) {
    return part(file.template()).asked(id, file.query());
  }

  /** Where a file is had by itself. */
  String url(Planned file, String id) {
    return part(file.template()).url(id, file.query());
  }

  /** The id of a layout's map, as its address answers it in a cell. */
  String basinId(String layoutId, Function<Answerable, byte[]> answered) {
    Answerable asked = part(BundlePlan.BASIN).asked(layoutId, "format=text");
    return new String(answered.apply(asked), StandardCharsets.UTF_8);
  }

  private AddressedPart part(String template) {
    AddressedPart part = byTemplate.get(template);
    if (part == null) {
      throw new IllegalStateException("no resource gives " + template);
    }
    return part;
  }
}
