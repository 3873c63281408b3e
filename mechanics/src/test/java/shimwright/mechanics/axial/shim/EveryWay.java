package shimwright.mechanics.axial.shim;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.mechanics.axial.shim.Drawer.Case;
import shimwright.mechanics.axial.shim.Drawer.Case.Loose;
import shimwright.mechanics.axial.shim.Drawer.Case.Need;
import shimwright.mechanics.axial.shim.Drawer.Case.ReadWith;
import shimwright.mechanics.axial.shim.Drawer.Case.Seat;
import shimwright.mechanics.conformity.JointConformity;
import shimwright.mechanics.conformity.Limits;

/** Every way to lay a drawer, one after the other, its errors followed source by source: knows nothing of the search. */
final class EveryWay {
    /** A way: what is laid, how sure in thousandths, how many pieces, how near. */
    record One(List<String> pieces, long sure, double probability, int count, double distance) {}

    private final Case c;
    private final List<One> ways = new ArrayList<>();
    private final List<List<Loose>> laid = new ArrayList<>();
    private final Set<String> used = new HashSet<>();

    private EveryWay(Case c) {
        this.c = c;
    }

    /** All ways that leave every clearance within its limits, the best first. */
    static List<One> of(Case c) {
        EveryWay every = new EveryWay(c);
        every.place();
        every.ways.sort(Comparator.comparingLong((One one) -> -one.sure())
                .thenComparingInt(One::count)
                .thenComparingLong(one -> Math.round(one.distance() * 1e9))
                .thenComparing(one -> String.join(",", one.pieces())));
        return every.ways;
    }

    private void place() {
        if (laid.size() == c.places().size()) {
            weigh();
            return;
        }
        pack(c.places().get(laid.size()), 0, new ArrayList<>());
    }

    private void pack(Seat seat, int from, List<Loose> taken) {
        if (taken.size() >= seat.fewest()) {
            laid.add(List.copyOf(taken));
            place();
            laid.remove(laid.size() - 1);
        }
        for (int i = from; i < c.pieces().size() && taken.size() < seat.most(); i++) {
            Loose piece = c.pieces().get(i);
            if (piece.family().equals(seat.family()) && used.add(piece.id())) {
                taken.add(piece);
                pack(seat, i + 1, taken);
                taken.remove(taken.size() - 1);
                used.remove(piece.id());
            }
        }
    }

    private double effect(String need, String place) {
        return c.effects().stream()
                .filter(e -> e.need().equals(need) && e.place().equals(place))
                .mapToDouble(Case.Effect::change)
                .sum();
    }

    private void weigh() {
        int n = c.needs().size();
        double[] values = new double[n];
        // of every source of error: what a unit of it does to each clearance, and its standard uncertainty
        Map<String, double[]> does = new LinkedHashMap<>();
        Map<String, Double> u = new HashMap<>();
        double distance = 0;
        for (int k = 0; k < n; k++) {
            Need need = c.needs().get(k);
            values[k] = need.value();
            source(does, u, "own " + k, k, 1, Math.sqrt(need.u() * need.u() - need.shared() * need.shared()));
            source(does, u, "indicator", k, need.shared(), 1);
            for (int p = 0; p < laid.size(); p++) {
                Seat seat = c.places().get(p);
                double e = effect(need.name(), seat.name());
                values[k] -= e * seat.trial();
                source(does, u, "trial " + p, k, -e, seat.u());
                for (Loose piece : laid.get(p)) {
                    values[k] += e * piece.thickness();
                    source(does, u, piece.id() + piece.thickness(), k, e, piece.u());
                    source(does, u, "micrometer", k, e, c.micrometer());
                }
            }
            for (ReadWith read : c.readWith()) {
                if (read.need().equals(need.name())) {
                    double e = effect(need.name(), read.place());
                    values[k] -= e * read.thickness();
                    source(does, u, read.piece() + read.thickness(), k, -e, read.u());
                    source(does, u, "micrometer", k, -e, c.micrometer());
                }
            }
            if (values[k] < need.lower() - 1e-12 || values[k] > need.upper() + 1e-12) {
                return;
            }
            double off = values[k] - need.aim();
            distance += Math.pow(off / (off < 0 ? need.aim() - need.lower() : need.upper() - need.aim()), 2);
        }
        Limits[] limits = c.needs().stream()
                .map(one -> new Limits(one.lower(), one.upper()))
                .toArray(Limits[]::new);
        double probability = JointConformity.probability(values, covariance(n, does, u), limits);
        List<String> pieces = new ArrayList<>();
        int count = 0;
        for (int p = 0; p < laid.size(); p++) {
            pieces.add(c.places().get(p).name() + "="
                    + String.join("+", laid.get(p).stream().map(Loose::id).toList()));
            count += laid.get(p).size();
        }
        ways.add(new One(pieces, Math.round(probability * 1000), probability, count, distance));
    }

    private static void source(
            Map<String, double[]> does, Map<String, Double> u, String name, int need, double by, double uncertainty) {
        does.computeIfAbsent(name, key -> new double[24])[need] += by;
        u.put(name, uncertainty);
    }

    private static double[][] covariance(int n, Map<String, double[]> does, Map<String, Double> u) {
        double[][] sum = new double[n][n];
        does.forEach((name, by) -> {
            double variance = Math.pow(u.getOrDefault(name, 0.0), 2);
            for (int k = 0; k < n; k++) {
                for (int l = 0; l < n; l++) {
                    sum[k][l] += by[k] * by[l] * variance;
                }
            }
        });
        return sum;
    }
}
