package shimwright.bench.web.guard;

import java.nio.channels.SelectableChannel;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.server.AbstractConnector;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.NetworkConnectionLimit;
import org.eclipse.jetty.server.Server;

/**
 * A limit of connections under which idle ones are let go together: once a place is free the others keep the short time they
 * were given, where the server's own limit would give them their long one back and let them go one after the other. Those
 * that were taken in but not yet opened when the limit was reached get the short time as they open.
 */
final class ConnectionLimit extends NetworkConnectionLimit {
    private static final long SHORT_MS = RequestLimits.IDLE_WHEN_FULL.toMillis();

    private final Server server;
    private volatile boolean full;

    /**
     * A limit over all connectors of a server.
     *
     * @param most connections at a time
     */
    ConnectionLimit(int most, Server server) {
        super(most, server);
        this.server = server;
    }

    @Override
    protected void limit() {
        full = true;
        for (Connector connector : server.getConnectors()) {
            if (connector instanceof AbstractConnector open) {
                open.setAccepting(false);
            }
        }
        shorten();
    }

    @Override
    protected void unlimit() {
        full = false;
        for (Connector connector : server.getConnectors()) {
            if (connector instanceof AbstractConnector open) {
                open.setAccepting(true);
            }
        }
    }

    @Override
    public void onAccepted(SelectableChannel channel) {
        super.onAccepted(channel);
        if (full) {
            shorten();
        }
    }

    private void shorten() {
        for (Connector connector : server.getConnectors()) {
            for (EndPoint open : connector.getConnectedEndPoints()) {
                if (open.getIdleTimeout() > SHORT_MS) {
                    open.setIdleTimeout(SHORT_MS);
                }
            }
        }
    }
}
