package lodeswing.config;

import java.sql.SQLException;
import lodeswing.store.UnusableDataFolderException;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.diagnostics.FailureAnalysis;
import org.springframework.boot.diagnostics.FailureAnalyzer;
import org.springframework.core.env.Environment;

/** Says at a failed start what is wrong with the data folder and what to do. */
final class UnusableStoreAnalyzer implements FailureAnalyzer {

  /** H2's error code for a database that another process holds. */
  private static final int HELD_BY_ANOTHER_PROCESS = 90020;

  /** The class of SQLSTATE for connections (ISO/IEC 9075-2, table of SQLSTATE classes). */
  private static final String NO_CONNECTION = "08";

  private final Environment environment;

  UnusableStoreAnalyzer(Environment environment) {
    this.environment = environment;
  }

  @Override
  public @Nullable FailureAnalysis analyze(Throwable failure) {
    for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
      if (cause instanceof UnusableDataFolderException unusable) {
        return new FailureAnalysis(
            String.valueOf(unusable.getMessage()),
            "Make the folder writable, or name another one: --lodeswing.data-folder=FOLDER",
            failure);
      }
      if (cause instanceof SQLException database
          && String.valueOf(database.getSQLState()).startsWith(NO_CONNECTION)) {
        return new FailureAnalysis(
            "The database "
                + environment.getProperty("spring.datasource.url", "")
                + " cannot be reached, or refuses this user: "
                + database.getMessage(),
            "Start it, or mend spring.datasource.url, spring.datasource.username and"
                + " spring.datasource.password",
            failure);
      }
      if (cause instanceof SQLException database
          && database.getErrorCode() == HELD_BY_ANOTHER_PROCESS) {
        return new FailureAnalysis(
            "The data folder "
                + environment.getProperty("lodeswing.data-folder", "")
                + " is in use by another running service.",
            "Stop the other one, or name another folder: --lodeswing.data-folder=FOLDER",
            failure);
      }
    }
    return null;
  }
}
