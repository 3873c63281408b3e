package shimwright.bench.walk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Method;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.ShimFamily;
import shimwright.rebuild.unit.model.Unit;

/**
 * A unit with true sizes behind its clearances, pieces with true thicknesses, and gauges that tilt, run out and scatter. Who
 * walks sees what the gauges show and nothing else.
 */
final class TrueSizes {
    /** Steps of the gauges that the walk puts in the shop, m. */
    static final double STEP = 1e-5;

    private static final double NOISE = 1e-6;
    private static final double SCALE = 1e-3;

    /** The second of two lengths whose difference is read, m. */
    private static final double SECOND = 5.02e-3;

    private final Unit unit;
    private final Random random;
    private final Map<String, Double> unshimmed = new LinkedHashMap<>();
    private final Map<String, Double> thickness = new LinkedHashMap<>();
    private final Map<String, Integer> rounds = new LinkedHashMap<>();

    TrueSizes(Unit unit, long seed, double etched) {
        this.unit = unit;
        this.random = new Random(seed);
        for (Clearance c : unit.type().clearances()) {
            double drawn = c.aim() + (c.etchedStep() != 0 ? etched * c.etchedStep() : 0);
            for (Position place : c.positions()) {
                drawn -= place.effect() * nominal(place);
            }
            double off = Math.min(0.4e-4, 0.8 * (c.upper() - c.lower()));
            unshimmed.put(c.id(), drawn + off * (2 * random.nextDouble() - 1));
        }
    }

    /** The same pieces lie in the drawer as before. */
    void sameDrawer(TrueSizes before) {
        thickness.putAll(before.thickness);
    }

    /** What the drawing says of the pieces at a place, or the middle of what is made where it says nothing, m. */
    double nominal(Position place) {
        return unit.type().clearances().stream()
                .flatMap(c -> c.loop().stream())
                .filter(length -> length.item().equals(place.item()))
                .mapToDouble(Clearance.Length::nominal)
                .findFirst()
                .orElseGet(() -> {
                    ShimFamily made = unit.shimFamily(place.family());
                    return (made.thinnest() + made.thickest()) / 2;
                });
    }

    /** A piece of true thickness near a size, and what a micrometer says of it at three places, mm. */
    List<Double> piece(String tag, double size) {
        double is = size + 0.003 * SCALE * random.nextGaussian();
        thickness.put(tag, is);
        List<Double> read = new ArrayList<>();
        for (int place = 0; place < 3; place++) {
            read.add(Math.round((is + NOISE * random.nextGaussian()) / 1e-6) / 1000.0);
        }
        return read;
    }

    double thickness(String tag) {
        Double is = thickness.get(tag);
        if (is == null) {
            throw new IllegalArgumentException("no piece " + tag);
        }
        return is;
    }

    /** The true clearance with these pieces in, by place, m. */
    double clearance(String id, Map<String, List<String>> in) {
        Clearance c = unit.clearance(id);
        double is = unshimmed.getOrDefault(id, Double.NaN);
        for (Position place : c.positions()) {
            List<String> pieces = in.get(place.id());
            if (pieces == null) {
                throw new IllegalStateException("nothing lies at " + place.id() + " while " + id + " is read");
            }
            is += place.effect() * pieces.stream().mapToDouble(this::thickness).sum();
        }
        return is;
    }

    /** One round as the gauges show it, mm. */
    List<Double> round(String id, Map<String, List<String>> in) {
        Clearance c = unit.clearance(id);
        double shown = (clearance(id, in) - c.readingOffset()) / c.readingFactor();
        int round = rounds.merge(id, 1, Integer::sum);
        if (c.method() == Method.FEELER) {
            double enters = Math.max(0, Math.floor(shown / STEP + 1e-6) * STEP);
            return List.of(mm(enters), mm(enters + STEP));
        }
        if (c.method() == Method.DIFFERENCE) {
            double second = SECOND + NOISE * random.nextGaussian();
            return List.of(mm(second + shown + NOISE * random.nextGaussian()), mm(second));
        }
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < c.indicators(); i++) {
            double tilt = c.indicators() == 2
                    ? (i == 0 ? 1 : -1) * 0.03 * SCALE * Math.cos(round)
                    : c.indicators() == 1 ? 0 : 0.008 * SCALE * Math.cos(2 * Math.PI * i / c.indicators());
            values.add(
                    mm(Math.max(c.method() == Method.SERIES ? -1 : 0, shown + tilt + NOISE * random.nextGaussian())));
        }
        return values;
    }

    private static double mm(double si) {
        return Math.round(si / STEP) * STEP / SCALE;
    }
}
