package shimwright.rebuild.job;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;

/**
 * The shop: the drawer of loose shims and the gauges.
 *
 * @param pieces every piece ever put in the drawer, by id, in order
 * @param gauges gauges in use, by id
 * @param retired gauges that are no longer used, by id: what was read with them keeps its uncertainty
 * @param facts what the shop is and how it works, by name
 * @param replaced what has taken the place of a part number, by that number
 * @param unitFiles the changes of the shop's unit files and of the pictures that go with them by unit type, in order
 */
public record Shop(
        Map<String, Piece> pieces,
        Map<String, Gauge> gauges,
        Map<String, Gauge> retired,
        Map<String, String> facts,
        Map<String, Entry.NumberReplaced> replaced,
        Map<String, List<LogEntry>> unitFiles) {
    /** A shop of which nothing but drawer and gauges is known. */
    public Shop(Map<String, Piece> pieces, Map<String, Gauge> gauges) {
        this(pieces, gauges, Map.of(), Map.of(), Map.of(), Map.of());
    }

    /** One nanometre: binary dust of a decimal reading. */
    private static final double DUST = 1e-9;

    /**
     * A loose piece.
     *
     * @param readings what the micrometer said at each place
     * @param thickness their mean
     * @param spread largest minus smallest
     * @param u standard uncertainty of the thickness
     * @param takenBy the job whose unit it is in, where it was chosen for one
     * @param goneBecause why it left the drawer for good, where it did
     */
    public record Piece(
            String id,
            String family,
            String stamp,
            List<Double> readings,
            double thickness,
            double spread,
            double u,
            @Nullable String takenBy,
            @Nullable String goneBecause) {
        /** True while it lies in the drawer. */
        public boolean inDrawer() {
            return takenBy == null && goneBecause == null;
        }

        /** True where its thickness differs no more than so over its face; m. */
        public boolean evenWithin(double limit) {
            return spread <= limit + DUST;
        }

        /** True where a job could take it: it lies in the drawer, or is chosen for that job already. */
        public boolean freeFor(String number) {
            return inDrawer() || (goneBecause == null && number.equals(takenBy));
        }
    }

    /**
     * What a gauge can do: step, error limit and retrace as half-widths, pooled standard deviation of one reading.
     *
     * @param calibrated day of its last calibration as typed; empty where nobody said
     */
    public record Gauge(
            String id,
            String name,
            Kind kind,
            double step,
            double errorLimit,
            double retrace,
            double repeatability,
            double range,
            String calibrated) {
        /** A gauge of which nobody said when it was calibrated. */
        public Gauge(
                String id,
                String name,
                Kind kind,
                double step,
                double errorLimit,
                double retrace,
                double repeatability,
                double range) {
            this(id, name, kind, step, errorLimit, retrace, repeatability, range, "");
        }
    }

    /**
     * The shop of its own stream and of all jobs: a piece chosen for a clearance, or in for its last reading, is in that unit.
     *
     * @param stream the shop's entries in order
     * @param jobs all jobs
     */
    public static Shop of(List<LogEntry> stream, Collection<Job> jobs) {
        Map<String, String> taken = new LinkedHashMap<>();
        jobs.forEach(job ->
                job.piecesIn().forEach(piece -> taken.put(piece, job.opened().number())));
        return of(stream, taken);
    }

    /**
     * The shop of its own stream and of what is in the units. A piece without a reading has no thickness and is not taken in.
     *
     * @param stream the shop's entries in order
     * @param taken the job's number by piece, for every piece that is in a unit
     */
    public static Shop of(List<LogEntry> stream, Map<String, String> taken) {
        Map<String, Piece> pieces = new LinkedHashMap<>();
        Map<String, Gauge> gauges = new LinkedHashMap<>();
        Map<String, Gauge> retired = new LinkedHashMap<>();
        Map<String, String> facts = new LinkedHashMap<>();
        Map<String, Entry.NumberReplaced> replaced = new LinkedHashMap<>();
        Map<String, List<LogEntry>> unitFiles = new LinkedHashMap<>();
        for (LogEntry kept : stream) {
            if (kept.body() instanceof Entry.GaugeAdded e) {
                gauges.put(e.gauge(), gauge(e));
                retired.remove(e.gauge());
            } else if (kept.body() instanceof Entry.GaugeRetired e) {
                Gauge gone = gauges.remove(e.gauge());
                if (gone != null) {
                    retired.put(e.gauge(), gone);
                }
            } else if (kept.body() instanceof Entry.ShopDescribed e) {
                facts.putAll(e.facts());
            } else if (kept.body() instanceof Entry.NumberReplaced e) {
                replaced.put(e.part(), e);
            } else if (kept.body() instanceof Entry.NumberStands e) {
                replaced.remove(e.part());
            } else if (kept.body() instanceof Entry.UnitChanged e) {
                unitFiles
                        .computeIfAbsent(e.unitType(), none -> new ArrayList<>())
                        .add(kept);
            } else if (kept.body() instanceof Entry.UnitPictured e) {
                unitFiles
                        .computeIfAbsent(e.unitType(), none -> new ArrayList<>())
                        .add(kept);
            } else {
                take(pieces, kept.body());
            }
        }
        taken.forEach((piece, number) -> pieces.computeIfPresent(piece, (id, p) -> gone(p, number, p.goneBecause())));
        return new Shop(
                Collections.unmodifiableMap(pieces),
                Collections.unmodifiableMap(gauges),
                Collections.unmodifiableMap(retired),
                Collections.unmodifiableMap(facts),
                Collections.unmodifiableMap(replaced),
                Collections.unmodifiableMap(unitFiles));
    }

    private static void take(Map<String, Piece> pieces, Entry entry) {
        if (entry instanceof Entry.ShimAdded e && !e.readings().isEmpty()) {
            pieces.put(e.piece(), piece(e.piece(), e.family(), e.stamp(), e.readings(), e.u()));
        } else if (entry instanceof Entry.ShimMeasured e && !e.readings().isEmpty()) {
            pieces.computeIfPresent(
                    e.piece(),
                    (id, p) ->
                            gone(piece(id, p.family(), p.stamp(), e.readings(), e.u()), p.takenBy(), p.goneBecause()));
        } else if (entry instanceof Entry.ShimRemoved e) {
            pieces.computeIfPresent(e.piece(), (id, p) -> gone(p, p.takenBy(), e.reason()));
        } else if (entry instanceof Entry.ShimReturned e) {
            pieces.computeIfPresent(e.piece(), (id, p) -> gone(p, p.takenBy(), null));
        }
    }

    private static Gauge gauge(Entry.GaugeAdded e) {
        return new Gauge(
                e.gauge(),
                e.name(),
                e.kind(),
                e.step(),
                e.errorLimit(),
                e.retrace(),
                e.repeatability(),
                e.range(),
                e.calibrated());
    }

    private static Piece piece(String id, String family, String stamp, List<Double> readings, double u) {
        double sum = 0;
        double least = Double.MAX_VALUE;
        double most = -Double.MAX_VALUE;
        for (double reading : readings) {
            sum += reading;
            least = Math.min(least, reading);
            most = Math.max(most, reading);
        }
        return new Piece(id, family, stamp, readings, sum / readings.size(), most - least, u, null, null);
    }

    private static Piece gone(Piece p, @Nullable String takenBy, @Nullable String because) {
        return new Piece(
                p.id(), p.family(), p.stamp(), p.readings(), p.thickness(), p.spread(), p.u(), takenBy, because);
    }

    /**
     * What has taken the place of a part number, one after another.
     *
     * @return empty where it stands; a number that comes up again ends it
     */
    public List<Entry.NumberReplaced> inPlaceOf(String part) {
        List<Entry.NumberReplaced> one = new ArrayList<>();
        Entry.NumberReplaced next = replaced.get(part);
        while (next != null && !one.contains(next)) {
            one.add(next);
            next = replaced.get(next.by());
        }
        return List.copyOf(one);
    }

    /** The number that holds in place of this one; itself where it stands. */
    public String holdsNow(String part) {
        List<Entry.NumberReplaced> one = inPlaceOf(part);
        return one.isEmpty() ? part : one.get(one.size() - 1).by();
    }

    /** The changes of the shop's file of a unit type, in order. */
    public List<LogEntry> unitFile(String type) {
        return List.copyOf(unitFiles.getOrDefault(type, List.of()));
    }

    /** The pictures that go with the shop's file of a unit type. */
    public List<UnitPicture> unitPictures(String type) {
        List<UnitPicture> pictures = List.of();
        for (LogEntry kept : unitFile(type)) {
            pictures = kept.body() instanceof Entry.UnitPictured e ? e.pictures() : pictures;
        }
        return pictures;
    }

    /**
     * The pictures that went with a file of a unit type when it last was the shop's.
     *
     * @param file its hash
     * @return empty where it never was
     */
    public Optional<List<UnitPicture>> unitPicturesWith(String type, String file) {
        List<UnitPicture> pictures = List.of();
        Optional<List<UnitPicture>> with = Optional.empty();
        String now = "";
        for (LogEntry kept : unitFile(type)) {
            if (kept.body() instanceof Entry.UnitChanged e) {
                with = e.before().equals(file) ? Optional.of(pictures) : with;
                now = e.after();
            } else if (kept.body() instanceof Entry.UnitPictured e) {
                pictures = e.pictures();
            }
            with = now.equals(file) ? Optional.of(pictures) : with;
        }
        return with;
    }

    /**
     * Whether a file of a unit type is one that the log has left behind: it was there once, and another was put in its place since. A
     * file that the log never saw, as one laid on the shelf by hand, is not.
     *
     * @param hash of the file; empty where there is none
     */
    public boolean leftBehind(String type, String hash) {
        boolean seen = false;
        boolean last = true;
        for (LogEntry kept : unitFile(type)) {
            if (kept.body() instanceof Entry.UnitChanged e) {
                seen |= e.before().equals(hash) || e.after().equals(hash);
                last = e.after().equals(hash);
            }
        }
        return seen && !last;
    }

    /** A gauge that can be read with now. */
    public Optional<Gauge> inUse(String id) {
        return Optional.ofNullable(gauges.get(id));
    }

    /** A gauge by id, in use or not any more. */
    public Optional<Gauge> gauge(String id) {
        return Optional.ofNullable(gauges.getOrDefault(id, retired.get(id)));
    }

    /**
     * Pieces of a family that lie in the drawer and are even enough to use.
     *
     * @param family the shim family
     * @param spread largest spread round a piece, m
     */
    public List<Piece> usable(String family, double spread) {
        return usable(family, spread, List.of());
    }

    /**
     * The same, with pieces that come free while a place is chosen anew.
     *
     * @param free ids of pieces that are in at that place now
     */
    public List<Piece> usable(String family, double spread, Collection<String> free) {
        List<Piece> usable = new ArrayList<>();
        for (Piece piece : pieces.values()) {
            boolean there = piece.inDrawer() || (piece.goneBecause() == null && free.contains(piece.id()));
            if (there && piece.family().equals(family) && piece.evenWithin(spread)) {
                usable.add(piece);
            }
        }
        return usable;
    }
}
