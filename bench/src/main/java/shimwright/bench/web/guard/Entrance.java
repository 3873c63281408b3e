package shimwright.bench.web.guard;

import io.javalin.config.JavalinConfig;
import java.util.List;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;

/**
 * Where the program listens.
 *
 * @param hosts the names it may be asked by
 * @param addresses to listen on
 * @param port on each; 0 for any that is free
 */
public record Entrance(Hosts hosts, List<String> addresses, int port) {
    private static final int WAITING = 256;

    /** This machine alone. */
    public static Entrance here(int port) {
        return new Entrance(Hosts.with(List.of()), List.of("127.0.0.1"), port);
    }

    void connectors(JavalinConfig config) {
        addresses.forEach(address -> config.jetty.addConnector((server, http) -> connector(server, http, address)));
    }

    private ServerConnector connector(Server server, HttpConfiguration http, String address) {
        ServerConnector connector = new ServerConnector(server, new HttpConnectionFactory(http));
        connector.setHost(address);
        connector.setPort(port);
        connector.setAcceptQueueSize(WAITING);
        connector.setIdleTimeout(Limits.IDLE.toMillis());
        return connector;
    }
}
