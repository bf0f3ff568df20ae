package lodeswing.web.bundle;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.job.Computation;
import lodeswing.render.zip.ZipWriter;
import lodeswing.web.bundle.BundlePlan.Planned;
import lodeswing.web.bundle.BundlePlan.Section;
import lodeswing.web.jobs.Answerable;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import org.springframework.stereotype.Component;

/** Writes bundles from what is stored: each file as its own address answers it. */
@Component
final class BundleWriter {

  /** The file that holds the layout, to be posted again. */
  static final Planned LAYOUT =
      new Planned("data/layout.json", Section.DATA, Optional.empty(), "/v1/layouts/{id}", "");

  private static final String PAGE = "index.html";
  private static final String MANIFEST = "manifest.json";
  private static final int SERVERS_FAULT = 500;

  private final BundleParts parts;
  private final BundleComputations computations;
  private final Limits limits;

  /** The archives written last: one is read in ranges, asked about by its tag, and sent to many. */
  private final Cache<String, byte[]> written;

  BundleWriter(BundleParts parts, BundleComputations computations, Limits limits) {
    this.parts = parts;
    this.computations = computations;
    this.limits = limits;
    this.written =
        Caffeine.newBuilder()
            .executor(Runnable::run)
            .maximumWeight(limits.bundleBytes())
            .weigher((String key, byte[] archive) -> archive.length)
            .build();
  }

  /**
   * The archive, not to be written to.
   *
   * @throws ProblemException {@code too-costly} where it would be too long
   */
  byte[] write(BundleRequest request, BundleStyle style, byte[] stored) {
    return written.get(
        request.key().id() + style.query(),
        key -> new Writing(request, style, StoredBundle.read(stored)).archive());
  }

  private final class Writing {

    private final BundleRequest request;
    private final BundleStyle style;
    private final StoredBundle found;
    private final Map<String, byte[]> bodies = new LinkedHashMap<>();
    private final List<BundleFile> files = new ArrayList<>();
    private final List<LeftOut> leftOut = new ArrayList<>();
    private long bytes;

    Writing(BundleRequest request, BundleStyle style, StoredBundle found) {
      this.request = request;
      this.style = style;
      this.found = found;
    }

    byte[] archive() {
      for (Planned file : new BundlePlan(request, style).files(found.release())) {
        if (file.isOfPages()) {
          addPages(file);
        } else {
          addOrLeaveOut(file);
        }
      }
      String layout = request.layout().shown().toJson() + "\n";
      add(
          LAYOUT,
          Representation.JSON,
          "/v1/layouts/" + layoutId(),
          layout.getBytes(StandardCharsets.UTF_8));
      var contents = new BundleContents(request, style, found.release(), files, leftOut);
      byte[] page = BundlePage.of(contents).getBytes(StandardCharsets.UTF_8);
      Map<String, byte[]> all = new LinkedHashMap<>();
      all.put(PAGE, page);
      all.put(
          MANIFEST,
          BundleManifest.of(contents, PAGE, page.length, digest(page))
              .getBytes(StandardCharsets.UTF_8));
      all.putAll(bodies);
      return ZipWriter.write(all);
    }

    private String layoutId() {
      return request.layout().layoutId();
    }

    /** A picture of each page of a sheet: asked for one after the other until there is none. */
    private void addPages(Planned sheet) {
      if (unwanted(sheet)) {
        leftOut.add(new LeftOut(sheet, LeftOut.UNWANTED, "", url(sheet)));
        return;
      }
      try {
        add(sheet.page(1));
      } catch (ProblemException e) {
        leaveOut(sheet, e);
        return;
      }
      for (int page = 2; page <= limits.sheetPages(); page++) {
        try {
          add(sheet.page(page));
        } catch (ProblemException e) {
          if (e.code() != ProblemCode.INVALID_REQUEST) {
            throw e;
          }
          return;
        }
      }
    }

    private void addOrLeaveOut(Planned file) {
      if (unwanted(file)) {
        leftOut.add(new LeftOut(file, LeftOut.UNWANTED, "", url(file)));
        return;
      }
      try {
        add(file);
      } catch (ProblemException e) {
        leaveOut(file, e);
      }
    }

    private boolean unwanted(Planned file) {
      return file.group().filter(request.without()::contains).isPresent();
    }

    private void leaveOut(Planned file, ProblemException why) {
      if (why.code().status() >= SERVERS_FAULT || why.code() == ProblemCode.NOT_FOUND) {
        throw why;
      }
      String detail = Optional.ofNullable(why.getMessage()).orElse("");
      leftOut.add(new LeftOut(file, why.code().code(), detail, url(file)));
    }

    /** Where a file is had; what is under the id of a map that there is none of, by the map's. */
    private String url(Planned file) {
      return file.isOfMap()
          ? "/v1/layouts/" + layoutId() + "/basin?format=json"
          : parts.url(file, layoutId());
    }

    private void add(Planned file) {
      String id =
          file.isOfMap()
              ? parts.basinId(layoutId(), asked -> reply(asked).bytes(asked.subject()))
              : layoutId();
      Answerable asked = parts.asked(file, id);
      Reply reply = reply(asked);
      add(file, reply.representation(), parts.url(file, id), reply.bytes(asked.subject()));
    }

    private Reply reply(Answerable asked) {
      asked.work().ifPresent(this::refuseFailed);
      return asked.writer().apply(asked.work().map(computations::resultNow));
    }

    private void refuseFailed(Computation work) {
      StoredBundle.Reason reason = found.failed().get(work.key().id());
      if (reason != null) {
        throw new ProblemException(reason.code(), reason.detail(), List.of());
      }
    }

    private void add(Planned file, Representation form, String url, byte[] body) {
      bytes += body.length;
      if (bytes > limits.bundleBytes()) {
        throw new ProblemException(
            ProblemCode.TOO_COSTLY,
            "The bundle has more than " + limits.bundleBytes() + " bytes.",
            List.of(
                new Fault(
                    "?without", "may name what is not needed; lower mapPixels where it is large")));
      }
      bodies.put(file.path(), body);
      files.add(new BundleFile(file, form, url, body.length, digest(body)));
    }
  }

  private static String digest(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-256", e);
    }
  }
}
