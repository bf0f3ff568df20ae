package lodeswing.load;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One kept-alive connection to the service on loopback, as lean as a client can be, so that the
 * machine's cores are left to the service.
 */
final class Connection implements AutoCloseable {

  private static final int WAITS_MS = 90_000;
  private static final int BUFFER = 1 << 16;

  private final int port;
  private Socket socket;
  private InputStream in;

  Connection(int port) throws IOException {
    this.port = port;
    socket = open(port);
    in = new BufferedInputStream(socket.getInputStream(), BUFFER);
  }

  private static Socket open(int port) throws IOException {
    var socket = new Socket(InetAddress.getLoopbackAddress(), port);
    socket.setTcpNoDelay(true);
    socket.setSoTimeout(WAITS_MS);
    return socket;
  }

  /** The bytes of a GET request, to be sent many times. */
  static byte[] get(String path) {
    return bodiless("GET", path);
  }

  /** The bytes of a DELETE request. */
  static byte[] delete(String path) {
    return bodiless("DELETE", path);
  }

  private static byte[] bodiless(String method, String path) {
    return (method + " " + path + " HTTP/1.1\r\nHost: localhost\r\n\r\n")
        .getBytes(StandardCharsets.US_ASCII);
  }

  /** The bytes of a POST request with a JSON body. */
  static byte[] post(String path, String json) {
    return ("POST "
            + path
            + " HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: "
            + json.length()
            + "\r\n\r\n"
            + json)
        .getBytes(StandardCharsets.US_ASCII);
  }

  /** Sends a request and reads its whole answer. */
  Response ask(byte[] request) throws IOException {
    socket.getOutputStream().write(request);
    String[] status = line().split(" ", 3);
    Map<String, String> fields = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    for (String line = line(); !line.isEmpty(); line = line()) {
      int colon = line.indexOf(':');
      fields.put(line.substring(0, colon), line.substring(colon + 1).strip());
    }
    String none = status[1].equals("204") ? "0" : "-1";
    int length = Integer.parseInt(fields.getOrDefault("Content-Length", none));
    if (length < 0) {
      throw new IOException("an answer without Content-Length: " + fields);
    }
    byte[] body = in.readNBytes(length);
    if (body.length < length) {
      throw new IOException("cut short after " + body.length + " of " + length + " bytes");
    }
    if (fields.getOrDefault("Connection", "").equalsIgnoreCase("close")) {
      // The service ends each connection after a number of requests.
      socket.close();
      socket = open(port);
      in = new BufferedInputStream(socket.getInputStream(), BUFFER);
    }
    return new Response(Integer.parseInt(status[1]), fields, body);
  }

  private String line() throws IOException {
    var line = new StringBuilder(64);
    for (int c = in.read(); c != '\n'; c = in.read()) {
      if (c < 0) {
        throw new IOException("the connection was closed");
      }
      if (c != '\r') {
        line.append((char) c);
      }
    }
    return line.toString();
  }

  @Override
  public void close() throws IOException {
    socket.close();
  }

  /** An answer. */
  static final class Response {

    private final int status;
    private final Map<String, String> fields;
    private final byte[] body;

    private Response(int status, Map<String, String> fields, byte[] body) {
      this.status = status;
      this.fields = fields;
      this.body = body;
    }

    int status() {
      return status;
    }

    /** The fields by name, in any case. */
    Map<String, String> fields() {
      return fields;
    }

    byte[] body() {
      return body;
    }

    String text() {
      return new String(body, StandardCharsets.UTF_8);
    }

    /** The text of a member at the top of a JSON body. */
    String member(String name) {
      Matcher member = Pattern.compile("\"" + name + "\"\\s*:\\s*\"([^\"]*)\"").matcher(text());
      if (!member.find()) {
        throw new IllegalStateException("no " + name + " in " + status + " " + text());
      }
      return String.valueOf(member.group(1));
    }
  }
}
