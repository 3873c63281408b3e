package shimwright.mechanics.axial.shim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.mechanics.axial.shim.Drawer.Case.Effect;
import shimwright.mechanics.axial.shim.Drawer.Case.Loose;
import shimwright.mechanics.axial.shim.Drawer.Case.Need;
import shimwright.mechanics.axial.shim.Drawer.Case.ReadWith;
import shimwright.mechanics.axial.shim.Drawer.Case.Seat;
import shimwright.mechanics.conformity.JointConformity;
import shimwright.mechanics.conformity.Limits;

/**
 * Several clearances and one drawer in numbers: what each clearance is with nothing laid, what each place does to it, and how the
 * errors hang together. A piece's error is shared by all clearances that its place bears on, and counts for nothing where the piece
 * lay there already when the clearance was read; the micrometer's counts as often as there are more pieces, or fewer, than then.
 */
final class DrawerModel {
    final Drawer.Case c;
    final int needs;
    final int places;
    /** Of a clearance and a place: change per thickness. */
    final double[][] effect;
    /** Of a clearance: its value with nothing laid. */
    final double[] bare;

    final double[] lower;
    final double[] upper;
    final double[] aim;
    final double[] centre;
    final Limits[] limits;
    /** Of a place: the pieces that fit there, the thinnest first. */
    final int[][] fit;

    final double[] thickness;
    private final double[] u;
    /** Covariance of the clearances as read, without pieces. */
    private final double[][] base;
    /** Pieces that were in when clearances were read: with the drawer's first, in its order. */
    private final List<double[]> readCoefficients = new ArrayList<>();

    private final double[] readU;
    /** Of a piece of the drawer: where it stands among those read with; -1 where it is not. */
    private final int[] readAs;
    /** Of a clearance: how much the micrometer's error counts before anything is laid. */
    private final double[] micrometer;

    DrawerModel(Drawer.Case c) {
        this.c = c;
        this.needs = c.needs().size();
        this.places = c.places().size();
        this.effect = new double[needs][places];
        for (Effect e : c.effects()) {
            effect[need(e.need())][place(e.place())] += e.change();
        }
        this.bare = new double[needs];
        this.lower = new double[needs];
        this.upper = new double[needs];
        this.aim = new double[needs];
        this.centre = new double[needs];
        this.limits = new Limits[needs];
        for (int n = 0; n < needs; n++) {
            Need need = c.needs().get(n);
            bare[n] = need.value();
            for (int p = 0; p < places; p++) {
                bare[n] -= effect[n][p] * c.places().get(p).trial();
            }
            lower[n] = need.lower();
            upper[n] = need.upper();
            aim[n] = need.aim();
            centre[n] = (lower[n] + upper[n]) / 2;
            limits[n] = new Limits(lower[n], upper[n]);
        }
        int pieces = c.pieces().size();
        this.thickness = c.pieces().stream().mapToDouble(Loose::thickness).toArray();
        this.u = c.pieces().stream().mapToDouble(Loose::u).toArray();
        this.fit = new int[places][];
        for (int p = 0; p < places; p++) {
            String family = c.places().get(p).family();
            List<Integer> found = new ArrayList<>();
            for (int i = 0; i < pieces; i++) {
                if (c.pieces().get(i).family().equals(family)) {
                    found.add(i);
                }
            }
            found.sort(Comparator.comparingDouble(i -> thickness[i]));
            fit[p] = found.stream().mapToInt(Integer::intValue).toArray();
        }
        this.readAs = new int[pieces];
        Arrays.fill(readAs, -1);
        this.micrometer = new double[needs];
        this.readU = readWith();
        this.base = base();
    }

    int need(String name) {
        return c.needs().stream().map(Need::name).toList().indexOf(name);
    }

    int place(String name) {
        return c.places().stream().map(Seat::name).toList().indexOf(name);
    }

    /** Takes the pieces that were in out of what was read; a piece is the same one where tag and thickness are. */
    private double[] readWith() {
        Map<String, Integer> known = new LinkedHashMap<>();
        List<Double> uncertainties = new ArrayList<>();
        for (ReadWith one : c.readWith()) {
            int n = need(one.need());
            int p = place(one.place());
            bare[n] -= effect[n][p] * one.thickness();
            micrometer[n] -= effect[n][p];
            int k = known.computeIfAbsent(one.piece() + " " + one.thickness(), key -> {
                readCoefficients.add(new double[needs]);
                uncertainties.add(one.u());
                return uncertainties.size() - 1;
            });
            readCoefficients.get(k)[n] -= effect[n][p];
        }
        for (int i = 0; i < readAs.length; i++) {
            Loose piece = c.pieces().get(i);
            readAs[i] = known.getOrDefault(piece.id() + " " + piece.thickness(), -1);
        }
        return uncertainties.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private double[][] base() {
        double[][] sum = new double[needs][needs];
        for (int n = 0; n < needs; n++) {
            Need need = c.needs().get(n);
            sum[n][n] = need.u() * need.u() - need.shared() * need.shared();
        }
        add(sum, c.needs().stream().mapToDouble(Need::shared).toArray(), 1);
        for (int p = 0; p < places; p++) {
            add(sum, column(p), c.places().get(p).u());
        }
        return sum;
    }

    private double[] column(int place) {
        double[] column = new double[needs];
        for (int n = 0; n < needs; n++) {
            column[n] = effect[n][place];
        }
        return column;
    }

    private static void add(double[][] covariance, double[] coefficients, double u) {
        if (u != 0) {
            for (int n = 0; n < coefficients.length; n++) {
                for (int m = 0; m < coefficients.length; m++) {
                    covariance[n][m] += u * u * coefficients[n] * coefficients[m];
                }
            }
        }
    }

    private double[][] copyOfBase() {
        double[][] copy = new double[needs][];
        for (int n = 0; n < needs; n++) {
            copy[n] = base[n].clone();
        }
        return copy;
    }

    /**
     * Covariance of the clearances with what is laid.
     *
     * @param laid pieces of the drawer by place
     * @param added places where one more piece of this standard uncertainty is laid that is not in the drawer; 0 for none
     */
    double[][] covariance(int[][] laid, double[] added) {
        double[][] sum = copyOfBase();
        double[] shared = micrometer.clone();
        double[][] read = new double[readU.length][];
        for (int p = 0; p < places; p++) {
            double[] column = column(p);
            for (int i : laid[p]) {
                if (readAs[i] >= 0) {
                    int k = readAs[i];
                    read[k] = plus(read[k] == null ? readCoefficients.get(k) : read[k], column);
                } else {
                    add(sum, column, u[i]);
                }
            }
            add(sum, column, added[p]);
            int count = laid[p].length + (added[p] > 0 ? 1 : 0);
            for (int n = 0; n < needs; n++) {
                shared[n] += count * column[n];
            }
        }
        for (int k = 0; k < read.length; k++) {
            add(sum, read[k] == null ? readCoefficients.get(k) : read[k], readU[k]);
        }
        add(sum, shared, c.micrometer());
        return sum;
    }

    /** True where a piece of the drawer was in when some clearance was read. */
    boolean wasIn(int piece) {
        return readAs[piece] >= 0;
    }

    /**
     * Covariance that so many pieces at each place have at least, whichever they are.
     *
     * @param again places at which at least one of them was in when some clearance was read; none is at the others
     */
    double[][] leastCovariance(int[] counts, boolean[] again, double[] added) {
        double[][] sum = copyOfBase();
        double[] shared = micrometer.clone();
        boolean[] loose = new boolean[readU.length];
        for (int p = 0; p < places; p++) {
            for (int i : fit[p]) {
                if (again[p] && readAs[i] >= 0) {
                    loose[readAs[i]] = true;
                }
            }
        }
        for (int k = 0; k < readU.length; k++) {
            // what may be laid again may cancel
            add(sum, readCoefficients.get(k), loose[k] ? 0 : readU[k]);
        }
        for (int p = 0; p < places; p++) {
            double[] column = column(p);
            double[] own = Arrays.stream(fit[p])
                    .filter(i -> readAs[i] < 0)
                    .mapToDouble(i -> u[i] * u[i])
                    .sorted()
                    .toArray();
            int in = again[p] ? fit[p].length - own.length : 0;
            double variance = added[p] * added[p];
            for (int k = 0; k < Math.min(own.length, counts[p] - in); k++) {
                variance += own[k];
            }
            add(sum, column, Math.sqrt(variance));
            int count = counts[p] + (added[p] > 0 ? 1 : 0);
            for (int n = 0; n < needs; n++) {
                shared[n] += count * column[n];
            }
        }
        add(sum, shared, c.micrometer());
        return sum;
    }

    private static double[] plus(double[] a, double[] b) {
        double[] sum = a.clone();
        for (int n = 0; n < sum.length; n++) {
            sum[n] += b[n];
        }
        return sum;
    }

    /** Groups of clearances that may share an error: of each clearance the number of its group. */
    int[] groups() {
        int[] group = new int[needs];
        for (int n = 0; n < needs; n++) {
            group[n] = n;
        }
        for (int n = 0; n < needs; n++) {
            for (int m = 0; m < n; m++) {
                if (group[n] != group[m] && linked(n, m)) {
                    int old = group[n];
                    for (int k = 0; k < needs; k++) {
                        group[k] = group[k] == old ? group[m] : group[k];
                    }
                }
            }
        }
        return group;
    }

    private boolean linked(int n, int m) {
        boolean linked = c.micrometer() > 0
                || (c.needs().get(n).shared() > 0 && c.needs().get(m).shared() > 0);
        for (int p = 0; p < places; p++) {
            linked |= effect[n][p] != 0 && effect[m][p] != 0;
        }
        for (double[] read : readCoefficients) {
            linked |= read[n] != 0 && read[m] != 0;
        }
        return linked;
    }

    /** Values of the clearances with these thicknesses at the places. */
    double[] values(double[] laid) {
        double[] values = bare.clone();
        for (int n = 0; n < needs; n++) {
            for (int p = 0; p < places; p++) {
                values[n] += effect[n][p] * laid[p];
            }
        }
        return values;
    }

    /** Thickness of a pack. */
    double thickness(int[] pack) {
        double sum = 0;
        for (int i : pack) {
            sum += thickness[i];
        }
        return sum;
    }

    /** (distance from the aim / room to the limit on that side)². */
    double distance(int need, double value) {
        double off = value - aim[need];
        double room = off < 0 ? aim[need] - lower[need] : upper[need] - aim[need];
        return off / room * (off / room);
    }

    /** Probability that all clearances are within limits. */
    double probability(double[] values, double[][] covariance) {
        return JointConformity.probability(values, covariance, limits);
    }

    /** Tags of a pack joined by +, in the order of the drawer. */
    String tags(int[] pack) {
        StringBuilder tags = new StringBuilder();
        Arrays.stream(pack)
                .sorted()
                .forEach(i -> tags.append(tags.isEmpty() ? "" : "+")
                        .append(c.pieces().get(i).id()));
        return tags.toString();
    }
}
