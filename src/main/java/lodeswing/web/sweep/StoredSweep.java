package lodeswing.web.sweep;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The table of a sweep as it is stored, names of ends in it.
 *
 * @param followed how long each release was followed at most
 * @param rows a row a point: Double, String or Boolean, or an empty Optional
 */
record StoredSweep(double followed, List<List<Object>> rows) {

  StoredSweep {
    rows = rows.stream().map(List::copyOf).toList();
  }

  byte[] written() {
    var bytes = new ByteArrayOutputStream();
    try (var out = new DataOutputStream(bytes)) {
      out.writeDouble(followed);
      out.writeInt(rows.size());
      for (List<Object> row : rows) {
        out.writeInt(row.size());
        for (Object cell : row) {
          write(cell, out);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return bytes.toByteArray();
  }

  private static void write(Object cell, DataOutputStream out) throws IOException {
    if (cell instanceof Double number) {
      out.writeByte('n');
      out.writeDouble(number);
    } else if (cell instanceof String text) {
      out.writeByte('t');
      out.writeUTF(text);
    } else if (cell instanceof Boolean flag) {
      out.writeByte(flag ? 'y' : 'x');
    } else {
      out.writeByte('0');
    }
  }

  static StoredSweep read(byte[] bytes) {
    try (var in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      double followed = in.readDouble();
      List<List<Object>> rows = new ArrayList<>();
      for (int r = in.readInt(); r > 0; r--) {
        List<Object> row = new ArrayList<>();
        for (int c = in.readInt(); c > 0; c--) {
          row.add(cell(in));
        }
        rows.add(row);
      }
      return new StoredSweep(followed, rows);
    } catch (IOException e) {
      throw new UncheckedIOException("a kept result has the form it was written in", e);
    }
  }

  private static Object cell(DataInputStream in) throws IOException {
    return switch (in.readByte()) {
      case 'n' -> in.readDouble();
      case 't' -> in.readUTF();
      case 'y' -> true;
      case 'x' -> false;
      default -> Optional.empty();
    };
  }
}
