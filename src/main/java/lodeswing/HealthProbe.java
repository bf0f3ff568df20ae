package lodeswing;

import java.io.IOException;
import java.net.HttpURLConnection;
import java.net.URI;

/**
 * Asks a running service for its health, for images that have no tool to do so: exits with 0 where
 * it is well and with 1 where it is not, or does not answer.
 */
public final class HealthProbe {

  private static final int PATIENCE_MS = 4_000;

  private HealthProbe() {}

  /**
   * Asks once.
   *
   * @param args the address of the health document
   */
  public static void main(String[] args) {
    System.exit(args.length == 1 && isWell(URI.create(args[0])) ? 0 : 1);
  }

  static boolean isWell(URI health) {
    try {
      var connection = (HttpURLConnection) health.toURL().openConnection();
      connection.setConnectTimeout(PATIENCE_MS);
      connection.setReadTimeout(PATIENCE_MS);
      return connection.getResponseCode() == HttpURLConnection.HTTP_OK;
    } catch (IOException e) {
      return false;
    }
  }
}
