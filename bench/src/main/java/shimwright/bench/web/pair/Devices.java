package shimwright.bench.web.pair;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import shimwright.bench.text.Characters;
import shimwright.bench.text.Digest;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/**
 * The devices of a shop. A code shown at the machine lets one device in, once and within ten minutes, and is worthless
 * after five wrong tries; the device then holds a random key of 128 bits of which only the hash is kept here.
 */
public final class Devices {
    /** How long a code counts. */
    public static final Duration CODE_LASTS = Duration.ofMinutes(10);

    private static final Duration DEVICE_LASTS = Duration.ofDays(180);
    private static final int TRIES = 5;
    private static final int MOST = 100;
    private static final int LONGEST = 40;
    private static final int KEY_BYTES = 16;
    private static final int CODE_LENGTH = 8;
    private static final String LETTERS = "23456789ABCDEFGHJKMNPQRSTUVWXYZ"; // none that is taken for another

    private final @Nullable DeviceFile file;
    private final Clock clock;
    private final Runnable paired;
    private final SecureRandom random = new SecureRandom();
    private final AtomicInteger wrong = new AtomicInteger();

    private Devices(@Nullable DeviceFile file, Clock clock, Runnable paired) {
        this.file = file;
        this.clock = clock;
        this.paired = paired;
    }

    /** Nobody but this machine itself. */
    public static Devices none(Clock clock) {
        return new Devices(null, clock, () -> {});
    }

    /** Those written down in a file, which is made at the first that is let in; another program may add to it. */
    public static Devices in(DeviceFile file, Clock clock) {
        return in(file, clock, () -> {});
    }

    /**
     * The same.
     *
     * @param paired done whenever a device was let in
     */
    public static Devices in(DeviceFile file, Clock clock, Runnable paired) {
        return new Devices(file, clock, paired);
    }

    /**
     * A code as it is shown once.
     *
     * @param text eight letters and digits, a dash between
     * @param role of the device that will use it
     * @param until when it stops counting
     */
    public record Code(String text, Role role, Instant until) {}

    /**
     * What a device gets that was let in.
     *
     * @param device as it is kept
     * @param key what it shows from now on
     */
    public record LetIn(Device device, String key) {}

    /** True where other devices can be let in at all. */
    public boolean open() {
        return file != null;
    }

    /** Every device that was ever let in, the newest first. */
    public Outcome<List<Device>> all() {
        return file == null
                ? Outcome.ok(List.of())
                : file.read().map(state -> {
                    List<Device> newest = new ArrayList<>(state.devices());
                    java.util.Collections.reverse(newest);
                    return List.copyOf(newest);
                });
    }

    /** Who shows this key; empty for a key of nobody, of a device that was let out, or where the file cannot be read. */
    public Optional<Asker> asker(String key) {
        int dot = key.indexOf('.');
        if (file == null || dot < 0 || !(file.read() instanceof Outcome.Ok<DeviceFile.State> state)) {
            return Optional.empty();
        }
        Instant now = clock.instant();
        return keyed(state.value(), key, dot)
                .filter(device -> device.in(now))
                .map(device -> new Asker(device.role(), device.name(), device.id(), device.person()));
    }

    /** True for the key of a device that the owner let out, or that left; one whose time is over was not. */
    public boolean letOut(String key) {
        int dot = key.indexOf('.');
        return file != null
                && dot >= 0
                && file.read() instanceof Outcome.Ok<DeviceFile.State> state
                && keyed(state.value(), key, dot)
                        .filter(device -> device.revoked() != null)
                        .isPresent();
    }

    private static Optional<Device> keyed(DeviceFile.State state, String key, int dot) {
        String id = key.substring(0, dot);
        String hash = Digest.sha256(key.substring(dot + 1));
        return state.devices().stream()
                .filter(device -> device.id().equals(id) && same(device.keyHash(), hash))
                .findFirst();
    }

    private static boolean same(String a, String b) {
        return MessageDigest.isEqual(a.getBytes(StandardCharsets.US_ASCII), b.getBytes(StandardCharsets.US_ASCII));
    }

    /**
     * Makes a code.
     *
     * @param role of the device to come
     * @param person whose device it is; empty where several use it
     */
    public Outcome<Code> code(Role role, String person) {
        List<Refusal> refusals = new ArrayList<>();
        check("person", "person", person, true, refusals::add);
        if (file == null) {
            refusals.add(closed());
        }
        if (file == null || !refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < CODE_LENGTH; i++) {
            text.append(i == CODE_LENGTH / 2 ? "-" : "").append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        Code code = new Code(text.toString(), role, clock.instant().plus(CODE_LASTS));
        return file.add(DeviceFile.Line.code(Digest.sha256(plain(code.text())), role, person.strip(), code.until()))
                .map(added -> {
                    wrong.set(0);
                    return code;
                });
    }

    /**
     * Lets a device in.
     *
     * @param typed the code, in any case, with or without its dash
     * @param name what the device is to be called
     */
    public synchronized Outcome<LetIn> pair(String typed, String name) {
        List<Refusal> refusals = new ArrayList<>();
        check("name", "name of this device", name, false, refusals::add);
        if (file == null) {
            refusals.add(closed());
        }
        if (file == null || !refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        DeviceFile kept = file;
        return kept.read().flatMap(state -> pair(kept, state, Digest.sha256(plain(typed)), name.strip()));
    }

    private Outcome<LetIn> pair(DeviceFile kept, DeviceFile.State state, String hash, String name) {
        Instant now = clock.instant();
        List<DeviceFile.Line> live = state.codes().stream()
                .filter(code -> now.isBefore(code.until()))
                .toList();
        Optional<DeviceFile.Line> code =
                live.stream().filter(line -> same(line.hash(), hash)).findFirst();
        if (code.isEmpty()) {
            if (wrong.incrementAndGet() >= TRIES) {
                live.forEach(line -> kept.add(DeviceFile.Line.spent(line.hash(), now)));
            }
            return Outcome.refused(Refusal.of(
                    "code",
                    live.isEmpty() ? "no code counts now" : "that is not the code that is shown, or its time is over",
                    "Type it as it stands on the machine; after " + TRIES
                            + " wrong tries or ten minutes the owner makes a new one"));
        }
        if (state.devices().stream().filter(device -> device.in(now)).count() >= MOST) {
            return Outcome.refused(Refusal.at("device", "there are " + MOST + " already", "Let one out first"));
        }
        byte[] bytes = new byte[KEY_BYTES];
        random.nextBytes(bytes);
        String key = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        Device device = new Device(
                "d" + (state.devices().size() + 1),
                name,
                code.get().person(),
                code.get().asRole(),
                Digest.sha256(key),
                now,
                now.plus(DEVICE_LASTS),
                null,
                "");
        // the code is spent before anybody is in: a fault between the two lets nobody in
        return kept.add(DeviceFile.Line.spent(hash, now))
                .flatMap(spent -> kept.add(DeviceFile.Line.device(device)))
                .map(added -> {
                    wrong.set(0);
                    paired.run();
                    return new LetIn(device, device.id() + "." + key);
                });
    }

    /**
     * Lets a device out; its next request is not answered any more.
     *
     * @param id as listed
     * @param by who says so
     */
    public Outcome<Device> revoke(String id, String by) {
        if (file == null) {
            return Outcome.refused(List.of(closed()));
        }
        DeviceFile kept = file;
        Instant now = clock.instant();
        return kept.read().flatMap(state -> {
            Optional<Device> device = state.devices().stream()
                    .filter(one -> one.id().equals(id) && one.revoked() == null)
                    .findFirst();
            return device.isEmpty()
                    ? Outcome.refused(Refusal.at(
                            "device",
                            "none that is let in is called \"" + Characters.harmless(id) + "\"",
                            "See the list"))
                    : kept.add(DeviceFile.Line.revoked(id, now, by))
                            .map(added -> device.get().out(now, by));
        });
    }

    private static Refusal closed() {
        return Refusal.at(
                "device",
                "the program listens to this machine alone",
                "Start it with --host 0.0.0.0 to let a tablet in");
    }

    private static void check(String key, String place, String text, boolean mayBeEmpty, Consumer<Refusal> refusals) {
        if (text.isBlank() && !mayBeEmpty) {
            refusals.accept(
                    new Refusal(key, place, "nothing typed", "Call it by where it stands, such as press tablet"));
        }
        if (text.strip().length() > LONGEST) {
            refusals.accept(
                    new Refusal(key, place, "it has " + text.length() + " characters", "Keep it under " + LONGEST));
        }
        if (Characters.unfit(text).isPresent() || text.indexOf('\n') >= 0) {
            refusals.accept(
                    new Refusal(key, place, "it holds a character that cannot be shown", "Use letters and digits"));
        }
    }

    private static String plain(String code) {
        return code.strip().replaceAll("[\\s-]", "").toUpperCase(java.util.Locale.ROOT);
    }
}
