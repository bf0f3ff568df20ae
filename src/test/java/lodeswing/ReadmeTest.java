package lodeswing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Runs every request that the README shows, as it stands there. */
class ReadmeTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final Pattern BLOCK = Pattern.compile("```sh\\n(.*?)```", Pattern.DOTALL);

  @TempDir Path folder;

  @Test
  void everyRequestOfTheReadmeIsAnswered() throws IOException, InterruptedException {
    List<String> requests = requests();
    assertEquals(8, requests.size());
    for (String request : requests) {
      String here = request.replace("localhost:8080", "localhost:" + SERVICE.port());
      Process process =
          new ProcessBuilder("bash", "-euo", "pipefail", "-c", here)
              .directory(folder.toFile())
              .redirectErrorStream(true)
              .start();
      String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertEquals(0, process.waitFor(), request + "\n" + printed);
      assertFalse(printed.contains("ERROR"), printed);
    }
    assertTrue(Files.readString(folder.resolve("path.svg")).contains("<svg"));
    assertTrue(Files.size(folder.resolve("path.cbor")) > 1_000);
  }

  @Test
  void theReadmesLayoutIsTheBuiltInOne() throws IOException {
    Matcher id = Pattern.compile("lay-[a-z2-7]{26}").matcher(readme());
    String expected =
        SERVICE
            .given()
            .queryParam("format", "text")
            .get("/v1/sample-layouts/three-stations")
            .asString();
    int found = 0;
    while (id.find()) {
      assertEquals(expected, id.group());
      found++;
    }
    assertTrue(found > 3);
  }

  private static List<String> requests() throws IOException {
    List<String> requests = new ArrayList<>();
    Matcher block = BLOCK.matcher(readme());
    while (block.find()) {
      if (block.group(1).startsWith("curl")) {
        requests.add(block.group(1));
      }
    }
    return requests;
  }

  private static String readme() throws IOException {
    return Files.readString(Path.of("README.md"));
  }
}
