package lodeswing.config;

import java.io.File;
import lodeswing.store.DataFolder;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Says at start what an operator needs to know. */
@Component
class StartReport {

  private static final Logger LOG = LoggerFactory.getLogger(StartReport.class);

  private final DataFolder folder;

  StartReport(DataFolder folder) {
    this.folder = folder;
  }

  @EventListener(ApplicationReadyEvent.class)
  void report() {
    LOG.info("Results are kept in the data folder {}", folder.path());
    if (ModuleLayer.boot().findModule("jdk.incubator.vector").isPresent()) {
      LOG.info("The vector module is present: several releases can be computed in one go");
    } else {
      LOG.info(
          "The vector module is missing: everything works with the same results, many releases at"
              + " once take longer. Start with: java --add-modules jdk.incubator.vector -jar {}",
          jar());
    }
  }

  /** The jar that was started, or the one that a build makes. */
  private static String jar() {
    String classPath = System.getProperty("java.class.path", "");
    return classPath.endsWith(".jar") && classPath.indexOf(File.pathSeparatorChar) < 0
        ? classPath
        : "target/lodeswing-0.1.0.jar";
  }
}
