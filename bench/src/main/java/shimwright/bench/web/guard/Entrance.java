package shimwright.bench.web.guard;

import io.javalin.config.JavalinConfig;
import java.net.InetSocketAddress;
import java.net.SocketAddress;
import java.util.List;
import java.util.Set;
import org.eclipse.jetty.server.DetectorConnectionFactory;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;
import org.jspecify.annotations.Nullable;
import shimwright.bench.web.pair.Devices;
import shimwright.bench.web.pair.ShopCertificate;

/**
 * Where the program listens, and who is let in there. What comes in at this machine's own loopback address comes from this
 * machine, and is its owner's; whoever comes in at another address must have been paired.
 *
 * @param hosts the names it may be asked by
 * @param addresses to listen on, this machine's own first
 * @param port on each; 0 for any that is free
 * @param devices that were let in
 * @param certificate for TLS at every address; null where it goes without
 * @param outside the addresses at which other devices find it; empty for this machine alone
 */
public record Entrance(
        Hosts hosts,
        List<String> addresses,
        int port,
        Devices devices,
        @Nullable ShopCertificate certificate,
        List<String> outside) {
    private static final int WAITING = 256;
    private static final char[] IN_MEMORY = "in memory".toCharArray();
    private static final Set<String> HERE = Set.of("127.0.0.1", "0:0:0:0:0:0:0:1", "::1");

    /** True for a connection that this machine made to itself. */
    static boolean here(@Nullable SocketAddress at) {
        return at instanceof InetSocketAddress socket
                && socket.getAddress() != null
                && HERE.contains(socket.getAddress().getHostAddress());
    }

    /** Where another device finds the shop, with a slash at its end; empty where none can. */
    public String address(int listening) {
        if (outside.isEmpty()) {
            return "";
        }
        String host = outside.get(0).contains(":") ? "[" + outside.get(0) + "]" : outside.get(0);
        return (certificate == null ? "http://" : "https://") + host + ":" + listening + "/";
    }

    void connectors(JavalinConfig config) {
        // where the port was left free, all addresses listen on the one that the first was given
        ServerConnector[] first = new ServerConnector[1];
        addresses.forEach(address -> config.jetty.addConnector((server, http) -> {
            ServerConnector connector = first[0] == null ? connector(server, http) : follower(server, http, first[0]);
            if (first[0] == null) {
                first[0] = connector;
                connector.setPort(port);
            }
            connector.setHost(address);
            connector.setAcceptQueueSize(WAITING);
            connector.setIdleTimeout(RequestLimits.IDLE.toMillis());
            return connector;
        }));
    }

    private ServerConnector connector(Server server, HttpConfiguration http) {
        return certificate == null
                ? new ServerConnector(server, new HttpConnectionFactory(http))
                : new ServerConnector(server, detector(certificate), factory(http));
    }

    private ServerConnector follower(Server server, HttpConfiguration http, ServerConnector first) {
        return certificate == null
                ? new Following(server, first, new HttpConnectionFactory(http))
                : new Following(server, first, detector(certificate), factory(http));
    }

    private static HttpConnectionFactory factory(HttpConfiguration http) {
        SecureRequestCustomizer secure = new SecureRequestCustomizer();
        secure.setSniHostCheck(false); // names are asked by Hosts, also those that are addresses
        http.addCustomizer(secure);
        return new HttpConnectionFactory(http);
    }

    /** Tells TLS from plain text by the first bytes, so that both come in at one port and plain can be sent to TLS. */
    private static DetectorConnectionFactory detector(ShopCertificate certificate) {
        SslContextFactory.Server tls = new SslContextFactory.Server();
        tls.setKeyStore(certificate.keys(IN_MEMORY));
        tls.setKeyStorePassword(new String(IN_MEMORY));
        tls.setIncludeProtocols("TLSv1.3", "TLSv1.2");
        return new DetectorConnectionFactory(new SslConnectionFactory(tls, "http/1.1"));
    }

    /** A connector that takes the port of another. */
    private static final class Following extends ServerConnector {
        private final ServerConnector first;

        Following(Server server, ServerConnector first, org.eclipse.jetty.server.ConnectionFactory... factories) {
            super(server, factories);
            this.first = first;
        }

        @Override
        public void open() throws java.io.IOException {
            setPort(first.getLocalPort());
            super.open();
        }
    }
}
