package lodeswing.web.landscape;

/** Where in a request the members of its layout stand, for the pointers of faults. */
public enum LayoutPlace {
  /** In the address: the layout by its path, its figures as parameters. */
  ADDRESS {
    @Override
    public String of(String member) {
      return member.equals("/gapMm") ? "?gapMm" : "";
    }
  },
  /** A whole layout in the body. */
  WHOLE {
    @Override
    public String of(String member) {
      return "/layout" + member;
    }
  },
  /** A stored layout, named by its id. */
  STORED {
    @Override
    public String of(String member) {
      return "/layoutId";
    }
  };

  /**
   * The pointer of a member.
   *
   * @param member pointer within the layout, such as {@code /gapMm}
   */
  public abstract String of(String member);
}
