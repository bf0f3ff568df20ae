package lodeswing.store;

/**
 * Which process computes a result, so that of all that share a store one alone does.
 *
 * <p>A claim lapses when its holder has not renewed it for a while, so that a dead process keeps
 * nothing from being computed.
 */
public interface Claims {

  /** Takes a result's claim; false where another process holds it. */
  boolean take(String id);

  /** Gives a claim back; nothing where it is not held any more. */
  void release(String id);

  /** Whether no process holds a claim. */
  boolean isFree(String id);

  /** Holds what this process has taken for as long again. */
  void renew();

  /** Whether other processes may share the store. */
  boolean shared();

  /** For a store that one process holds by itself. */
  static Claims alone() {
    return new Claims() {
      @Override
      public boolean take(String id) {
        return true;
      }

      @Override
      public void release(String id) {}

      @Override
      public boolean isFree(String id) {
        return true;
      }

      @Override
      public void renew() {}

      @Override
      public boolean shared() {
        return false;
      }
    };
  }
}
