package shimwright.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.regex.Pattern;
import javax.net.ssl.SSLContext;
import org.jspecify.annotations.Nullable;

/** Requests byte by byte, as no proper client would send them. */
final class RawRequests {
    private static final int PATIENCE_MS = 90_000;

    /** Of a long run beside others that take the machine. */
    private static final int LONG_PATIENCE_MS = 20 * 60_000;

    private RawRequests() {}

    /**
     * What came back.
     *
     * @param status 0 where the connection was closed without an answer
     * @param exact status line and headers as they came, names in lower case
     * @param body as text
     */
    record Answer(int status, String exact, String body) {
        /** The same in lower case. */
        String head() {
            return exact.toLowerCase(Locale.ROOT);
        }

        /** A header's value; empty where it is missing. */
        String header(String name) {
            return head().lines()
                    .filter(line -> line.startsWith(name.toLowerCase(Locale.ROOT) + ":"))
                    .map(line -> line.substring(name.length() + 1).strip())
                    .findFirst()
                    .orElse("");
        }
    }

    static Socket connect(int port) throws IOException {
        Socket socket = new Socket();
        socket.setSoTimeout(PATIENCE_MS);
        socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), PATIENCE_MS);
        return socket;
    }

    /** Asks for a page and waits no longer than told. */
    static Answer soon(int port, String path, int patienceMs) {
        try (Socket socket = connect(port)) {
            socket.setSoTimeout(patienceMs);
            String request = "GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\n\r\n";
            return send(socket, request.getBytes(StandardCharsets.US_ASCII));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Sends bytes and reads one answer. */
    static Answer send(int port, byte[] bytes) {
        try (Socket socket = connect(port)) {
            return send(socket, bytes);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Sends bytes and says that no more will come, so that half a request is not waited for; reads one answer. */
    static Answer sendAll(int port, byte[] bytes) {
        try (Socket socket = connect(port)) {
            socket.setSoTimeout(LONG_PATIENCE_MS);
            try {
                socket.getOutputStream().write(bytes);
                socket.shutdownOutput();
            } catch (IOException hungUp) {
                // it may have answered before all was sent
            }
            return read(socket.getInputStream());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static Answer send(Socket socket, byte[] bytes) throws IOException {
        try {
            socket.getOutputStream().write(bytes);
            socket.getOutputStream().flush();
        } catch (IOException hungUp) {
            // it may have answered before all was sent
        }
        return read(socket.getInputStream());
    }

    static Answer send(int port, String head, byte[] body) {
        byte[] start = head.getBytes(StandardCharsets.UTF_8);
        byte[] all = new byte[start.length + body.length];
        System.arraycopy(start, 0, all, 0, start.length);
        System.arraycopy(body, 0, all, start.length, body.length);
        return send(port, all);
    }

    /** A request of some method with headers (each ended by a line end) and a body. */
    static Answer ask(int port, String method, String path, String headers, String body) {
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
        String host = headers.toLowerCase(Locale.ROOT).contains("host:") ? "" : "Host: 127.0.0.1:" + port + "\r\n";
        String length = method.equals("GET") || headers.toLowerCase(Locale.ROOT).contains("transfer-encoding")
                ? ""
                : "Content-Length: " + bytes.length + "\r\n";
        return send(
                port,
                method + " " + path + " HTTP/1.1\r\n" + host + headers + length + "Connection: close\r\n\r\n",
                bytes);
    }

    static Answer get(int port, String path, String headers) {
        return ask(port, "GET", path, headers, "");
    }

    static Answer form(int port, String path, String headers, String body) {
        return ask(port, "POST", path, "Content-Type: application/x-www-form-urlencoded\r\n" + headers, body);
    }

    /** The same over TLS to an address of this machine, whatever certificate it shows. */
    static Answer secure(SSLContext trust, String address, int port, String request) {
        try (Socket socket = trust.getSocketFactory().createSocket()) {
            socket.setSoTimeout(PATIENCE_MS);
            socket.connect(new InetSocketAddress(address, port), PATIENCE_MS);
            return send(socket, request.getBytes(StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static Answer read(InputStream in) throws IOException {
        ByteArrayOutputStream head = new ByteArrayOutputStream();
        int ends = 0;
        while (ends < 4) {
            int one = orEnd(in);
            if (one < 0) {
                return answer(head.toString(StandardCharsets.ISO_8859_1), "");
            }
            head.write(one);
            ends = one == (ends % 2 == 0 ? '\r' : '\n') ? ends + 1 : one == '\r' ? 1 : 0;
        }
        String text = head.toString(StandardCharsets.ISO_8859_1);
        return answer(text, body(in, text.toLowerCase(Locale.ROOT)));
    }

    private static Answer answer(String head, String body) {
        String[] words = head.split(" ", 3);
        boolean http = words.length > 2 && words[0].startsWith("HTTP/");
        String named = Pattern.compile("^[A-Za-z-]+(?=: )", Pattern.MULTILINE)
                .matcher(head)
                .replaceAll(name -> name.group().toLowerCase(Locale.ROOT));
        return new Answer(http ? Integer.parseInt(words[1].substring(0, 3)) : 0, named, body);
    }

    private static int orEnd(InputStream in) throws IOException {
        try {
            return in.read();
        } catch (java.net.SocketException reset) {
            return -1;
        }
    }

    private static String body(InputStream in, String head) throws IOException {
        @Nullable
        Integer length = head.lines()
                .filter(line -> line.startsWith("content-length:"))
                .map(line -> Integer.valueOf(line.substring(15).strip()))
                .findFirst()
                .orElse(null);
        if (length != null) {
            return new String(in.readNBytes(length), StandardCharsets.UTF_8);
        }
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        byte[] some = new byte[8192];
        try {
            for (int got = in.read(some); got >= 0; got = in.read(some)) {
                all.write(some, 0, got);
                if (head.contains("chunked")
                        && all.toString(StandardCharsets.ISO_8859_1).endsWith("0\r\n\r\n")) {
                    break;
                }
            }
        } catch (java.net.SocketException reset) {
            // what came, came
        }
        return all.toString(StandardCharsets.UTF_8);
    }
}
