package lodeswing.web.representation;

import java.util.Optional;

/**
 * What an answer is about, as far as every answer about it says the same: its warnings, and where
 * its safety notes are.
 *
 * @param warnings as a JSON list; a member of that name in every document; empty where there are
 *     none to tell
 * @param notes where the notes are, for the field Link of every answer
 */
public record Subject(Optional<String> warnings, Optional<Notes> notes) {

  /** Of answers that are about no rig: limits, problems, jobs, lists. */
  public static final Subject NONE = new Subject(Optional.empty(), Optional.empty());

  /** The member of documents that has the warnings. */
  public static final String WARNINGS = "warnings";

  /**
   * The relation of the link to the notes: they provide information about what the answer is of
   * (IANA registry of link relations; W3C, Protocol for Web Description Resources, 2009).
   */
  public static final String RELATION = "describedby";

  /**
   * Where the notes are.
   *
   * @param url their address
   * @param title what a person sees of the link
   */
  public record Notes(String url, String title) {}

  /** The same of something that is not stored, so that nothing is found under its address. */
  public Subject unstored() {
    return new Subject(warnings, Optional.empty());
  }

  /** The same for an answer that tells nothing of it yet. */
  public Subject untold() {
    return new Subject(Optional.empty(), notes);
  }
}
