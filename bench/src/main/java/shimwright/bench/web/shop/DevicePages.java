package shimwright.bench.web.shop;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import shimwright.bench.web.guard.DeviceCookie;
import shimwright.bench.web.guard.Entrance;
import shimwright.bench.web.guard.RefusalLog;
import shimwright.bench.web.guard.ScreenMemory;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.pair.Asker;
import shimwright.bench.web.pair.Device;
import shimwright.bench.web.pair.Devices;
import shimwright.bench.web.pair.Devices.Code;
import shimwright.bench.web.pair.QrCode;
import shimwright.bench.web.pair.Role;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/** Letting other devices in and out: the one page that a stranger sees, and the owner's list. */
public final class DevicePages {
    private final Entrance entrance;
    private final Devices devices;
    private final RefusalLog watch = new RefusalLog();
    private final Door door;
    private final Supplier<Instant> now;

    public DevicePages(Entrance entrance, Door door, Supplier<Instant> now) {
        this.entrance = entrance;
        this.devices = entrance.devices();
        this.door = door;
        this.now = now;
    }

    /**
     * What the list shows.
     *
     * @param open whether devices can be let in at all
     * @param rows the newest first
     * @param code just made; null otherwise
     * @param qr the address with the code; null without one
     * @param address where a device finds the shop
     * @param fingerprint of the certificate; empty without one
     */
    public record Shown(
            boolean open,
            List<Row> rows,
            @Nullable Code code,
            @Nullable QrCode qr,
            String address,
            String fingerprint) {}

    /** A device, and whether it is let in now. */
    public record Row(Device device, boolean in) {}

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get("/pair", this::self);
        routes.post("/pair", this::pair);
        routes.post("/pair/leave", this::leave);
        routes.get("/devices", ctx -> list(ctx, List.of(), null));
        routes.post("/devices/code", this::code);
        routes.post("/devices/revoke", this::revoke);
    }

    private String fingerprint() {
        return entrance.certificate() == null ? "" : entrance.certificate().fingerprint();
    }

    /** What a device is here: let in as something, or not at all; at the machine itself it is the list. */
    private void self(Context ctx) {
        Asker asker = Asker.of(ctx.req());
        if (asker == null) {
            stranger(ctx, List.of());
        } else if (asker.id().isEmpty()) {
            door.on(ctx, "/devices", "");
        } else {
            door.show(ctx, "thisdevice", door.page(ctx, "This device", "", null), Map.of("asker", asker));
        }
    }

    private void stranger(Context ctx, List<Refusal> faults) {
        String scanned = io.javalin.http.HandlerType.POST.equals(ctx.method()) ? "" : ctx.queryParam("code");
        String html = door.render(
                "pair",
                Map.of(
                        "code",
                        scanned == null || scanned.length() > 20 ? "" : scanned,
                        "name",
                        "",
                        "fingerprint",
                        fingerprint(),
                        "secure",
                        ctx.req().isSecure(),
                        "faults",
                        faults));
        ctx.status(faults.isEmpty() ? 200 : 422);
        ctx.html(html);
    }

    private void pair(Context ctx) {
        Form form = door.form(ctx);
        Outcome<Devices.LetIn> in = devices.pair(form.raw("code"), form.raw("name"));
        if (in instanceof Outcome.Ok<Devices.LetIn> ok) {
            DeviceCookie.give(ctx, ok.value().key());
            door.on(ctx, "/", "");
        } else {
            watch.refused(ctx.ip(), "POST /pair", in.refusals().get(0).fact());
            stranger(ctx, in.refusals());
        }
    }

    private void leave(Context ctx) {
        Asker asker = Asker.of(ctx.req());
        if (asker != null && !asker.id().isEmpty()) {
            devices.revoke(asker.id(), "itself");
        }
        DeviceCookie.take(ctx);
        ScreenMemory.forget(ctx);
        door.on(ctx, "/pair", "");
    }

    private void list(Context ctx, List<Refusal> faults, @Nullable Code code) {
        Outcome<List<Device>> all = devices.all();
        Instant at = now.get();
        List<Row> rows = all instanceof Outcome.Ok<List<Device>> ok
                ? ok.value().stream().map(d -> new Row(d, d.in(at))).toList()
                : List.of();
        List<Refusal> shown = faults.isEmpty() ? all.refusals() : faults;
        String address = entrance.address(ctx.port());
        QrCode qr = code == null ? null : new QrCode(address + "pair?code=" + code.text());
        door.show(
                ctx,
                "devices",
                door.page(ctx, "Devices", "", null, shown, Map.of()),
                Map.of("view", new Shown(devices.open(), rows, code, qr, address, fingerprint())));
    }

    private void code(Context ctx) {
        Form form = door.form(ctx);
        Role role = Role.of(form.raw("role")).orElse(null);
        if (role == null) {
            form.fault("role", "role", "nothing chosen", "Choose owner, bench or onlooker");
            list(ctx, form.faults(), null);
            return;
        }
        Outcome<Code> made = devices.code(role, form.raw("person"));
        list(ctx, made.refusals(), made instanceof Outcome.Ok<Code> ok ? ok.value() : null);
    }

    private void revoke(Context ctx) {
        Outcome<Device> out = devices.revoke(door.form(ctx).raw("device"), door.who(ctx));
        if (out instanceof Outcome.Ok<Device> ok) {
            door.on(ctx, "/devices", ok.value().name() + " is let out");
        } else {
            list(ctx, out.refusals(), null);
        }
    }
}
