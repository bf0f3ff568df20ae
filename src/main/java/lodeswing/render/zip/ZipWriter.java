package lodeswing.render.zip;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes files into one archive (APPNOTE of the ZIP file format, 6.3).
 *
 * <p>Files are stored and not deflated: what is deflated depends on the version of zlib that a Java
 * runtime has, while what is stored has the same bytes everywhere.
 */
public final class ZipWriter {

  /**
   * The time of every file. Not the first moment that the format can tell, of which {@link
   * ZipEntry#setTimeLocal} writes the time zone too.
   */
  private static final LocalDateTime ALWAYS = LocalDateTime.of(1980, 2, 1, 0, 0);

  private ZipWriter() {}

  /**
   * The archive.
   *
   * @param files by their names, which are ASCII with {@code /} between folders, in the order in
   *     which they are to stand
   */
  public static byte[] write(Map<String, byte[]> files) {
    var bytes = new ByteArrayOutputStream();
    try (var zip = new ZipOutputStream(bytes)) {
      zip.setMethod(ZipOutputStream.STORED);
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        byte[] body = file.getValue();
        var sum = new CRC32();
        sum.update(body);
        var entry = new ZipEntry(file.getKey());
        entry.setTimeLocal(ALWAYS);
        entry.setSize(body.length);
        entry.setCompressedSize(body.length);
        entry.setCrc(sum.getValue());
        zip.putNextEntry(entry);
        zip.write(body);
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return bytes.toByteArray();
  }
}
