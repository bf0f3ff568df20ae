package lodeswing.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The folder that holds everything that must outlive the process.
 *
 * @param path absolute
 */
public record DataFolder(Path path) {

  /** Takes the folder's absolute form. */
  public DataFolder {
    path = path.toAbsolutePath().normalize();
  }

  /**
   * Makes the folder where it is missing and proves that files can be written in it.
   *
   * @throws UnusableDataFolderException if either fails
   */
  public DataFolder prepared() {
    try {
      Files.createDirectories(path);
      Files.delete(Files.createTempFile(path, "write-test-", ".tmp"));
    } catch (IOException e) {
      throw new UnusableDataFolderException(path, e);
    }
    return this;
  }

  /**
   * Address of the embedded database in this folder.
   *
   * <p>Each commit is written at once, so that a killed process loses nothing that it answered; the
   * operating system's file lock ends with the process; the database closes with its last
   * connection and not by a hook of its own.
   */
  public String databaseUrl() {
    String file = path.resolve("lodeswing").toString();
    return "jdbc:h2:file:" + file + ";WRITE_DELAY=0;FILE_LOCK=FS;DB_CLOSE_ON_EXIT=FALSE";
  }
}
