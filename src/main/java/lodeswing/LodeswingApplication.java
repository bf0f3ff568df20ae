package lodeswing;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the service. */
@SpringBootApplication
public class LodeswingApplication {

  /**
   * Starts the service in the foreground.
   *
   * @param args Spring Boot properties as {@code --name=value}
   */
  public static void main(String[] args) {
    SpringApplication.run(LodeswingApplication.class, args);
  }
}
