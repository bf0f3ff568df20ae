package lodeswing.config;

import java.io.File;
import lodeswing.core.integrate.lane.LaneProvider;
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
  private final LaneProvider lanes;

  StartReport(DataFolder folder, LaneProvider lanes) {
    this.folder = folder;
    this.lanes = lanes;
  }

  @EventListener(ApplicationReadyEvent.class)
  void report() {
    LOG.info("Results are kept in the data folder {}", folder.path());
    if (lanes.onVectors()) {
      LOG.info("Many releases are computed at once on vectors: {}", lanes.reason());
    } else {
      LOG.info(
          "Many releases are computed one after the other, with the same results but slower: {}."
              + " To use vectors, start with: java --add-modules jdk.incubator.vector -jar {}",
          lanes.reason(),
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
