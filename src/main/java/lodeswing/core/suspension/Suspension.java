package lodeswing.core.suspension;

/** What the bob hangs on. */
public sealed interface Suspension permits Cord, Yoke, HookedBar {

  /** The suspended body about its two crossed axes. */
  TwoAxisBody body();
}
