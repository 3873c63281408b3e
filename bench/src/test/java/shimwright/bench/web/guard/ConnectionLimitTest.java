package shimwright.bench.web.guard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.Callback;
import org.junit.jupiter.api.Test;

/** Connections that say nothing, on a server that would let each be silent for an hour. */
class ConnectionLimitTest {
    private static final int MOST = 40;

    /** They come in a rush: at the limit most of them are taken in but not yet opened. */
    @Test
    void silentConnectionsMakeRoomTogetherAlsoThoseThatCameInARush() throws Exception {
        Server server = new Server();
        ServerConnector connector = new ServerConnector(server, 1, 1);
        connector.setHost("127.0.0.1");
        connector.setAcceptQueueSize(1_000);
        connector.setIdleTimeout(Duration.ofHours(1).toMillis());
        server.addConnector(connector);
        server.setHandler(new Handler.Abstract() {
            @Override
            public boolean handle(Request request, Response response, Callback callback) {
                response.write(true, StandardCharsets.US_ASCII.encode("here"), callback);
                return true;
            }
        });
        server.addBean(new ConnectionLimit(MOST, server));
        server.start();
        List<Socket> silent = new ArrayList<>();
        try {
            for (int round = 0; round < 2; round++) {
                for (int i = 0; i < 3 * MOST; i++) {
                    silent.add(connect(connector.getLocalPort()));
                }
                try (Socket asking = connect(connector.getLocalPort())) {
                    asking.getOutputStream()
                            .write("GET / HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n"
                                    .getBytes(StandardCharsets.US_ASCII));
                    InputStream in = asking.getInputStream();
                    assertThat(new String(in.readAllBytes(), StandardCharsets.US_ASCII))
                            .endsWith("here");
                }
            }
        } finally {
            for (Socket socket : silent) {
                socket.close();
            }
            server.stop();
        }
    }

    private static Socket connect(int port) throws IOException {
        Socket socket = new Socket();
        socket.setSoTimeout((int) Duration.ofSeconds(60).toMillis());
        socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), port));
        return socket;
    }
}
