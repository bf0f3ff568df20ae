package lodeswing.web.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.core.rig.Layout;
import lodeswing.job.ComputationKey;
import lodeswing.job.Realm;
import lodeswing.safety.Exceeded;
import lodeswing.web.body.Body;
import lodeswing.web.body.BodyReader;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.Subject;

/**
 * A layout that was read, checked and mapped.
 *
 * @param layoutId {@code lay-} and the digest of the canonical form, or the {@link Realm} of a
 *     private one
 * @param physicsKey digest of what decides the motion: no title, no labels, nothing that only the
 *     check or the cautions use ({@code tolerances}, {@code stand}, {@code plate}, {@code hook},
 *     {@code audience}, {@code massG} of the plate's magnets); an answer that uses one of these
 *     must add it to its own key; of a private layout it begins with the realm
 * @param layout the layout in SI
 * @param labels the label of each magnet, in the layout's order
 * @param title the title
 * @param warnings what is odd about it
 * @param told the same, with the limits that its magnets pass
 * @param cautions these limits alone, their pointers leading into the canonical form
 * @param canonical the canonical form, with the seal of a private layout: not to be answered
 */
public record LayoutDocument(
    String layoutId,
    String physicsKey,
    Layout layout,
    List<Optional<String>> labels,
    Optional<String> title,
    List<LayoutWarning> warnings,
    List<LayoutWarning> told,
    List<LayoutWarning> cautions,
    Body canonical) {

  private static final String[] WITHOUT_MOTION = {
    "title", "tolerances", "stand", "plate", "hook", "audience", Seal.MEMBER
  };

  private static final Optional<Double> NO_MASS = Optional.empty();

  public LayoutDocument {
    labels = List.copyOf(labels);
    warnings = List.copyOf(warnings);
    told = List.copyOf(told);
    cautions = List.copyOf(cautions);
  }

  /**
   * Reads the body of a layout as if it were everybody's.
   *
   * @param bytes JSON as sent
   * @throws ProblemException with every fault
   */
  public static LayoutDocument read(byte[] bytes) {
    return of(BodyReader.read(bytes, LayoutShapes.REQUEST));
  }

  /**
   * Checks and maps a layout that {@link LayoutShapes#REQUEST} has read, whole or as a member of a
   * larger body, as if it were everybody's; what a request brings is read by {@link
   * LayoutStore#read(Body)}.
   *
   * @throws ProblemException with every fault
   */
  public static LayoutDocument of(Body sent) {
    return of(CanonicalForm.of(sent));
  }

  /** The same, as its owner's alone. */
  static LayoutDocument of(Body sent, Seal seal) {
    return of(CanonicalForm.of(sent).sealed(seal));
  }

  /**
   * Reads a canonical form, as it was stored.
   *
   * @throws ProblemException with every fault
   */
  public static LayoutDocument ofCanonical(byte[] stored) {
    return of(CanonicalForm.read(BodyReader.read(stored, LayoutShapes.STORED)));
  }

  static LayoutDocument of(CanonicalForm form) {
    Body canonical = form.body();
    var mapper = new LayoutMapper(form);
    Layout layout = mapper.map();
    List<Exceeded> passed = Exceeded.of(layout);
    List<LayoutWarning> told = new ArrayList<>(mapper.warnings());
    told.addAll(LayoutCautions.of(passed, form.places()::magnet));
    Optional<Realm> realm =
        canonical.findObject(Seal.MEMBER).map(Seal::of).map(seal -> realm(seal, canonical));
    String motion = ComputationKey.digest(motionOf(canonical).toJson());
    return new LayoutDocument(
        realm.map(Realm::text).orElseGet(() -> "lay-" + ComputationKey.digest(canonical.toJson())),
        realm.map(own -> own.text() + motion).orElse(motion),
        layout,
        canonical.objects("magnets").stream().map(m -> m.findText("label")).toList(),
        canonical.findText("title"),
        mapper.warnings(),
        told,
        LayoutCautions.of(passed, index -> "/magnets/" + index),
        canonical);
  }

  private static Realm realm(Seal seal, Body canonical) {
    return Realm.of(seal.owner(), canonical.toJson());
  }

  /** Whether it is its owner's alone. */
  public boolean confined() {
    return canonical.has(Seal.MEMBER);
  }

  /** The realm's text and a bar, for keys that no motion is part of; empty for a public layout. */
  public String realmKey() {
    return confined() ? Realm.in(physicsKey).orElseThrow().text() + "|" : "";
  }

  /**
   * The same layout as a part of the work on another one: what is computed of it goes when that one
   * is deleted.
   */
  public LayoutDocument within(LayoutDocument whole) {
    if (!confined()) {
      return this;
    }
    String motion = physicsKey.substring(realmKey().length() - 1);
    return new LayoutDocument(
        layoutId,
        Realm.in(whole.physicsKey).orElseThrow().text() + motion,
        layout,
        labels,
        title,
        warnings,
        told,
        cautions,
        canonical);
  }

  /** The canonical form as it is answered; may be posted as it is. */
  public Body shown() {
    return confined()
        ? canonical.without(Seal.MEMBER).with(LayoutShapes.VISIBILITY, LayoutShapes.PRIVATE)
        : canonical;
  }

  private static Body motionOf(Body canonical) {
    List<Body> magnets =
        canonical.objects("magnets").stream().map(m -> m.without("label", "massG")).toList();
    return canonical.without(WITHOUT_MOTION).with("magnets", magnets);
  }

  /** Mass of each magnet of the plate [kg]: weighed, or from size and grade. */
  public List<OptionalDouble> magnetMasses() {
    return canonical.objects("magnets").stream()
        .map(magnet -> model().equals("bench") ? MagnetMapper.mass(magnet) : NO_MASS)
        .map(mass -> mass.map(OptionalDouble::of).orElseGet(OptionalDouble::empty))
        .toList();
  }

  /** Mass of the bob's magnet [kg]: weighed, or from size and grade. */
  public OptionalDouble bobMagnetMass() {
    return canonical.findObject("bobMagnet").flatMap(MagnetMapper::mass).stream()
        .mapToDouble(mass -> mass)
        .findFirst();
  }

  /** What every answer about it says of it: the limits that it passes, and its safety notes. */
  public Subject subject() {
    return new Subject(
        cautions.isEmpty() ? Optional.empty() : Optional.of(LayoutWarning.json(cautions)), notes());
  }

  /** The same for the layout's own documents, which tell everything that is odd about it. */
  Subject itself() {
    return new Subject(Optional.of(LayoutWarning.json(told)), notes());
  }

  private Optional<Subject.Notes> notes() {
    String title = cautions.isEmpty() ? "Safety notes" : "Safety notes: a limit is passed";
    return Optional.of(new Subject.Notes("/v1/layouts/" + layoutId + "/safety-notes", title));
  }

  /** The word of its model: {@code bench} or {@code textbook}. */
  public String model() {
    return canonical.text("model");
  }

  /** How many of its shown units of length there are in a metre or in the model's own unit. */
  public double shownPerUnit() {
    return model().equals("bench") ? 1000 : 1;
  }

  /**
   * A length or a speed as answers show it: millimetres to a nanometre on the bench, nine decimals
   * in a textbook layout.
   *
   * @param value in metres, or the model's own unit
   */
  public double shown(double value) {
    double perUnit = model().equals("bench") ? 1e6 : 1e9;
    // The sum turns -0 into 0.
    return Math.rint(value * shownPerUnit() * perUnit) / perUnit + 0.0;
  }

  /** The units of its answers by quantity. */
  public LinkedHashMap<String, String> units() {
    boolean bench = model().equals("bench");
    var units = new LinkedHashMap<String, String>();
    units.put("length", bench ? "mm" : "1");
    units.put("time", bench ? "s" : "1");
    units.put("speed", bench ? "mm/s" : "1");
    units.put("energy", bench ? "J" : "1");
    return units;
  }

  /**
   * A heading: the layout's own title, where it has one, and what is shown of it.
   *
   * @param what in a few words
   */
  public String heading(String what) {
    return title()
        .map(own -> own + " \u2013 " + what)
        .orElse(Character.toUpperCase(what.charAt(0)) + what.substring(1));
  }
}
