package shimwright.bench;

import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/**
 * What a {@code --host} means on this machine.
 *
 * @param listen addresses to listen on, this machine's own first unless all are listened on
 * @param network addresses at which another device finds it; empty for this machine alone
 * @param names under which it may be asked beside the loopback ones
 */
record Addresses(List<String> listen, List<String> network, Set<String> names) {
    static final String HERE = "127.0.0.1";

    /**
     * Looks a host up among this machine's addresses.
     *
     * @param host as typed: an address, a name, or 0.0.0.0 for all
     */
    static Outcome<Addresses> of(String host) {
        try {
            InetAddress asked = InetAddress.getByName(host.replaceAll("^\\[|\\]$", ""));
            List<String> own = own();
            if (asked.isAnyLocalAddress()) {
                return Outcome.ok(new Addresses(List.of("0.0.0.0"), own, names(host, own)));
            }
            String address = text(asked);
            if (address.equals(HERE)) {
                return Outcome.ok(new Addresses(List.of(HERE), List.of(), Set.of()));
            }
            if (!asked.isLoopbackAddress() && NetworkInterface.getByInetAddress(asked) == null) {
                return Outcome.refused(Refusal.of(
                        "--host",
                        host + " is no address of this machine",
                        "Take " + (own.isEmpty() ? "" : String.join(", ", own) + ", or ") + "0.0.0.0 for all of them"));
            }
            List<String> one = List.of(address);
            return Outcome.ok(new Addresses(List.of(HERE, address), one, names(host, one)));
        } catch (UnknownHostException unknown) {
            return Outcome.refused(Refusal.of(
                    "--host",
                    "\"" + host + "\" is neither an address nor a known name",
                    "Take 0.0.0.0 for all of this machine's addresses"));
        } catch (SocketException broken) {
            return Outcome.refused(
                    Refusal.of("--host", "the network cannot be asked: " + broken.getMessage(), "Leave --host out"));
        }
    }

    private static Set<String> names(String host, List<String> addresses) {
        Set<String> names = new LinkedHashSet<>(addresses);
        if (!host.equals("0.0.0.0") && !host.equals("::")) {
            names.add(host.toLowerCase(Locale.ROOT));
        }
        try {
            String machine = InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
            if (machine.matches("[a-z0-9-]{1,63}")) {
                names.add(machine);
                names.add(machine + ".local");
            }
        } catch (UnknownHostException nameless) {
            // it is found by its address
        }
        return names;
    }

    /** IPv4 addresses that a device on the same network can reach. */
    private static List<String> own() throws SocketException {
        List<String> own = new ArrayList<>();
        for (NetworkInterface card : Collections.list(NetworkInterface.getNetworkInterfaces())) {
            if (card.isUp() && !card.isLoopback()) {
                for (InetAddress address : Collections.list(card.getInetAddresses())) {
                    if (!(address instanceof Inet6Address)) {
                        own.add(text(address));
                    }
                }
            }
        }
        return own;
    }

    private static String text(InetAddress address) {
        String text = address.getHostAddress();
        int zone = text.indexOf('%');
        return zone < 0 ? text : text.substring(0, zone);
    }
}
