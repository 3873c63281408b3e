package shimwright.bench.web.guard;

import org.eclipse.jetty.server.AbstractConnector;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.NetworkConnectionLimit;
import org.eclipse.jetty.server.Server;

/**
 * A limit of connections under which idle ones are let go together: once a place is free the others keep the short time they
 * were given, where the server's own limit would give them their long one back and let them go one after the other.
 */
final class ConnectionLimit extends NetworkConnectionLimit {
    private final Server server;

    ConnectionLimit(Server server) {
        super(RequestLimits.connections(), server);
        this.server = server;
        setEndPointIdleTimeout(RequestLimits.IDLE_WHEN_FULL.toMillis());
    }

    @Override
    protected void unlimit() {
        for (Connector connector : server.getConnectors()) {
            if (connector instanceof AbstractConnector open) {
                open.setAccepting(true);
            }
        }
    }
}
