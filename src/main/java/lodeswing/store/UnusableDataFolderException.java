package lodeswing.store;

import java.nio.file.Path;

/** The data folder cannot be written to. */
public final class UnusableDataFolderException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * The data folder cannot be written to.
   *
   * @param folder the folder
   * @param cause what failed
   */
  public UnusableDataFolderException(Path folder, Throwable cause) {
    super("The data folder " + folder + " cannot be written to (" + cause + ")", cause);
  }
}
