package shimwright.bench;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Set;
import shimwright.bench.command.Options;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.web.guard.Entrance;
import shimwright.bench.web.guard.Hosts;
import shimwright.bench.web.pair.Device;
import shimwright.bench.web.pair.DeviceFile;
import shimwright.bench.web.pair.Devices;
import shimwright.bench.web.pair.Devices.Code;
import shimwright.bench.web.pair.QrCode;
import shimwright.bench.web.pair.Role;
import shimwright.bench.web.pair.ShopCertificate;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/** Who else on the network may come in: what {@code --host} and {@code --plain} mean, and the command {@code devices}. */
final class Network {
    private static final int REFUSED = 2;

    private Network() {}

    /**
     * The way in that the options ask for.
     *
     * @param folder where devices and certificate are kept
     * @param paired done whenever a device was let in
     */
    static Outcome<Entrance> entrance(Options options, int port, Path folder, Clock clock, Runnable paired) {
        return Addresses.of(options.get("host", Addresses.HERE)).flatMap(at -> {
            Hosts hosts = Hosts.with(at.names());
            if (at.listen().equals(List.of(Addresses.HERE))) {
                return Outcome.ok(new Entrance(hosts, at.listen(), port, Devices.none(clock), null, List.of()));
            }
            Devices devices = Devices.in(new DeviceFile(folder.resolve("devices")), clock, paired);
            if (options.has("plain")) {
                return Outcome.ok(new Entrance(hosts, at.listen(), port, devices, null, at.network()));
            }
            return ShopCertificate.in(folder, at.names(), clock)
                    .map(certificate -> new Entrance(hosts, at.listen(), port, devices, certificate, at.network()));
        });
    }

    /** Says at the start where other devices find the shop, and shows a code for the first. */
    static void say(Entrance entrance, int port, PrintStream out) {
        if (!entrance.devices().open()) {
            return;
        }
        String address = entrance.address(port);
        if (address.isEmpty()) {
            out.println("This machine has no address that another device could open.");
            return;
        }
        out.println("Other devices: " + address + " (only those that were paired are let in)");
        if (entrance.certificate() == null) {
            out.println(
                    "NOT ENCRYPTED (--plain): whoever listens on this network reads every page, every picture and the key "
                            + "of each device, and can then act as that device. Leave --plain out wherever you can.");
        } else {
            out.println(
                    "The device's browser warns of a certificate it does not know. Its SHA-256 fingerprint must be");
            out.println("  " + entrance.certificate().fingerprint());
        }
        show(entrance.devices().code(Role.BENCH, ""), address, out, out);
        out.println("Another code, and letting a device out: http://" + Addresses.HERE + ":" + port + "/devices");
    }

    private static int show(Outcome<Code> made, String address, PrintStream out, PrintStream err) {
        if (!(made instanceof Outcome.Ok<Code> code)) {
            made.refusals().forEach(refusal -> err.println(refusal.sentence()));
            return REFUSED;
        }
        out.println("Code for one device as " + code.value().role().word() + ", for ten minutes: "
                + code.value().text());
        if (!address.isEmpty()) {
            out.println(new QrCode(address + "pair?code=" + code.value().text()).blocks());
        }
        return 0;
    }

    /** {@code devices --data DIR [--pair ROLE [--person NAME]] [--revoke ID]}; also while the shop is open. */
    static int devices(List<String> args, Clock clock, PrintStream out, PrintStream err) {
        Outcome<Options> read = Options.read(args, Set.of("data", "pair", "person", "revoke"), Set.of());
        if (!(read instanceof Outcome.Ok<Options> ok)) {
            return Serving.refused(read.refusals(), err);
        }
        Options options = ok.value();
        if (!options.has("data")) {
            err.println("Say whose devices: ./shimwright devices --data DIR");
            return REFUSED;
        }
        Path folder = new DataFolder(Path.of(options.get("data", ""))).network();
        Devices devices = Devices.in(new DeviceFile(folder.resolve("devices")), clock);
        if (options.has("pair")) {
            Outcome<Code> code = Role.of(options.get("pair", ""))
                    .map(role -> devices.code(role, options.get("person", "")))
                    .orElse(Outcome.refused(List.of(Refusal.of(
                            "--pair",
                            "\"" + options.get("pair", "") + "\" is no role",
                            "Take owner, bench or onlooker"))));
            return show(code, "", out, err);
        }
        if (options.has("revoke")) {
            Outcome<Device> gone = devices.revoke(options.get("revoke", ""), "the command line");
            if (gone instanceof Outcome.Ok<Device> device) {
                out.println(device.value().name() + " is let out");
                return 0;
            }
            return Serving.refused(gone.refusals(), err);
        }
        return list(devices, clock, out, err);
    }

    private static int list(Devices devices, Clock clock, PrintStream out, PrintStream err) {
        Outcome<List<Device>> all = devices.all();
        if (!(all instanceof Outcome.Ok<List<Device>> list)) {
            return Serving.refused(all.refusals(), err);
        }
        if (list.value().isEmpty()) {
            out.println("No device was let in yet.");
        }
        for (Device device : list.value()) {
            String state = device.in(clock.instant())
                    ? "in"
                    : device.revoked() != null
                            ? "out since " + device.revoked() + ", " + device.revokedBy()
                            : "run out";
            out.println(
                    device.id() + "  " + device.name() + (device.person().isEmpty() ? "" : " (" + device.person() + ")")
                            + "  " + device.role().word() + "  since " + device.since() + "  " + state);
        }
        return 0;
    }
}
