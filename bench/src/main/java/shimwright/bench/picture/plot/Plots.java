package shimwright.bench.picture.plot;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import shimwright.mechanics.diagram.Diagram.Graph;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.UnitSystem;

/**
 * The plots of readings, limits, packs and budgets. Each takes finished numbers in SI and draws them; nothing is
 * computed here. A number that is not finite is a bug of the caller and throws.
 */
public final class Plots {
    private static final double NARROWEST = 280;

    private Plots() {}

    /**
     * Where a plot stands.
     *
     * @param idPrefix begins every id in it
     * @param width in CSS pixels, for which the letters are sized; at least 280
     * @param units units of the figures
     */
    public record Page(String idPrefix, double width, UnitSystem units) {
        public Page {
            if (!(width >= NARROWEST) || !Double.isFinite(width)) {
                throw new IllegalArgumentException("width " + width);
            }
        }
    }

    /**
     * Readings in the order they were taken.
     *
     * @param title what was read
     * @param kind kind of quantity
     * @param first readings of the first indicator
     * @param second readings of the second indicator, as many as the first; empty for one indicator
     * @param settledFrom index of the first settled reading; the number of readings where none has settled
     * @param lower lower limit; empty for none
     * @param upper upper limit; empty for none
     * @param mean mean of the settled readings; empty while there is none
     * @param expanded expanded uncertainty U of the mean; 0 draws no band
     * @param outliers that stand out, by index, with what is said about them
     */
    public record Series(
            String title,
            Kind kind,
            List<Double> first,
            List<Double> second,
            int settledFrom,
            OptionalDouble lower,
            OptionalDouble upper,
            OptionalDouble mean,
            double expanded,
            Map<Integer, String> outliers) {
        public Series {
            first = List.copyOf(first);
            second = List.copyOf(second);
            outliers = Map.copyOf(outliers);
            if (!second.isEmpty() && second.size() != first.size()) {
                throw new IllegalArgumentException("two indicators with " + first.size() + " and " + second.size());
            }
        }
    }

    /**
     * A value with its uncertainty against its limits.
     *
     * @param title what it is
     * @param kind kind of quantity
     * @param value best value
     * @param u its standard uncertainty, 0 or more; 0 draws the value alone
     * @param nu degrees of freedom, above 0; infinite for a normal distribution
     * @param lower lower limit; empty for none
     * @param upper upper limit; empty for none
     * @param probability that the value lies within the limits, 0 to 1, as computed with the value
     * @param hot the value at working heat; empty for none
     */
    public record Conformity(
            String title,
            Kind kind,
            double value,
            double u,
            double nu,
            OptionalDouble lower,
            OptionalDouble upper,
            double probability,
            OptionalDouble hot) {
        public Conformity {
            if (!(nu > 0) || !(u >= 0) || !(probability >= 0 && probability <= 1)) {
                throw new IllegalArgumentException("u " + u + ", nu " + nu + ", p " + probability);
            }
        }
    }

    /**
     * One pack on offer.
     *
     * @param name the pieces in words
     * @param value clearance it would give
     * @param expanded expanded uncertainty U of that
     * @param note such as its chance to lie within the limits; may be empty
     * @param chosen true for the pack that was chosen
     */
    public record Pack(String name, double value, double expanded, String note, boolean chosen) {}

    /**
     * Packs on offer against the limits, and what the drawer holds.
     *
     * @param title what is set
     * @param lower lower limit; empty for none
     * @param upper upper limit; empty for none
     * @param aim value aimed at; empty for none
     * @param packs best first
     * @param drawer thicknesses that lie in the drawer, chosen ones included; may be empty
     * @param taken thicknesses of the chosen pack
     */
    public record Packs(
            String title,
            OptionalDouble lower,
            OptionalDouble upper,
            OptionalDouble aim,
            List<Pack> packs,
            List<Double> drawer,
            List<Double> taken) {
        public Packs {
            packs = List.copyOf(packs);
            drawer = List.copyOf(drawer);
            taken = List.copyOf(taken);
        }
    }

    /**
     * One influence of a budget.
     *
     * @param name in words
     * @param share of the variance, 0 to 1
     */
    public record Share(String name, double share) {}

    /**
     * Readings at places round a ring.
     *
     * @param title what was read
     * @param kind kind of quantity
     * @param values one a place, place 1 first
     * @param lower lower limit of the mean; empty for none
     * @param upper upper limit of the mean; empty for none
     * @param mean their mean
     * @param outlier index of a place that stands out; empty for none
     * @param said what is said about it
     */
    public record Places(
            String title,
            Kind kind,
            List<Double> values,
            OptionalDouble lower,
            OptionalDouble upper,
            double mean,
            OptionalInt outlier,
            String said) {
        public Places {
            values = List.copyOf(values);
        }
    }

    /** Readings in order, the settled tail, the limits, mean and uncertainty, outliers ringed and named. */
    public static String series(Series series, Page page) {
        return new SeriesPlot(series, page).draw();
    }

    /** The distribution of a value against its limits, with the chance to lie within them, cold and hot. */
    public static String conformity(Conformity conformity, Page page) {
        return new ConformityPlot(conformity, page).draw();
    }

    /** Packs on offer as bars of uncertainty against the limits, the chosen one marked, and the sticks of the drawer. */
    public static String packs(Packs packs, Page page) {
        return new PacksPlot(packs, page).draw();
    }

    /** Shares of a budget as bars, in the order given. */
    public static String budgetBars(String title, List<Share> shares, Page page) {
        return BudgetPlot.draw(title, shares, page);
    }

    /** Readings round a ring as a closed line between two circles, an outlier ringed. */
    public static String places(Places places, Page page) {
        return new PolarPlot(places, page).draw();
    }

    /** Curves, bars, limits and outlines of a worksheet. */
    public static String graph(Graph graph, Page page) {
        return graph.trueShape() ? new TrueShapePlot(graph, page).draw() : new GraphPlot(graph, page).draw();
    }
}
