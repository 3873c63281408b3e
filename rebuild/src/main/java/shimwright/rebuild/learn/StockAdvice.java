package shimwright.rebuild.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shimwright.mechanics.history.DrawerStock;
import shimwright.mechanics.measure.Statistics;
import shimwright.mechanics.measure.Student;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.working.Worked;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.ShimFamily;
import shimwright.rebuild.unit.model.UnitType;

/**
 * What the jobs of a type took and wished for at one place for shims, and what the drawer should hold for the next ones.
 *
 * @param clearance that is set there
 * @param wishes one a job, in the order of the jobs
 * @param mean thickness wished for, m; empty where no job says it
 * @param widened standard deviation from job to job, made wider for how few jobs tell it, m; empty with fewer than two. No wider than if
 *     all sizes that are made were wanted alike, nor than a fifth of the mean
 * @param factor by how much it was made wider; 1 with ever so many jobs
 * @param loose pieces of the family that lie in the drawer
 * @param hold sizes to hold; refused where it cannot be said
 */
public record StockAdvice(
        Clearance clearance,
        Position position,
        List<Wish> wishes,
        OptionalDouble mean,
        OptionalDouble widened,
        double factor,
        List<Shop.Piece> loose,
        Outcome<List<Hold>> hold) {
    /** Sizes are made in steps of this where nobody says another, m. */
    public static final double STEP = 0.05e-3;

    private static final double COVERAGE = 0.95;
    /** Wider than so much of the mean, the sheet would have to think of shims thinner than nothing. */
    private static final double NO_WIDER = 0.19;

    /**
     * What the drawer is to do.
     *
     * @param jobs until the next delivery; 0 where nobody has said
     * @param sure how sure all of them are served, 0 to 1; 0 where nobody has said
     * @param step between sizes that are made, m
     */
    public record Asked(int jobs, double sure, double step) {}

    /**
     * What one job took and wished for.
     *
     * @param took thickness of the pack, m
     * @param wished thickness that would have brought the clearance to its aim, m; empty where the job kept no aim
     */
    public record Wish(String job, double took, int pieces, Optional<Double> wished) {}

    /**
     * A size to hold.
     *
     * @param thickness m
     * @param chance that a job wants it
     * @param pieces to hold
     * @param here loose pieces within half a step of it
     */
    public record Hold(double thickness, double chance, int pieces, int here) {
        /** How many are short. */
        public int lacks() {
            return Math.max(0, pieces - here);
        }
    }

    public StockAdvice {
        wishes = List.copyOf(wishes);
        loose = List.copyOf(loose);
    }

    /**
     * Of each place of a type at which jobs took a pack.
     *
     * @param asked for how many boxes, how surely, in which sizes
     */
    public static List<StockAdvice> of(UnitType type, List<ShimWish> wished, Shop shop, Asked asked) {
        List<StockAdvice> places = new ArrayList<>();
        for (Clearance clearance : type.clearances()) {
            for (Position position : clearance.positions()) {
                List<Wish> wishes = wished.stream()
                        .filter(one -> one.clearance().equals(clearance.id())
                                && one.position().equals(position.id())
                                && position.effect() != 0)
                        .map(one -> new Wish(
                                one.job(), one.thickness(), one.pieces().size(), one.wished(position.effect())))
                        .toList();
                if (!wishes.isEmpty()) {
                    places.add(place(type, clearance, position, wishes, shop, asked));
                }
            }
        }
        return List.copyOf(places);
    }

    private static StockAdvice place(
            UnitType type, Clearance clearance, Position position, List<Wish> wishes, Shop shop, Asked asked) {
        List<Double> wanted =
                wishes.stream().flatMap(wish -> wish.wished().stream()).toList();
        List<Shop.Piece> loose = shop.pieces().values().stream()
                .filter(piece -> piece.inDrawer() && piece.family().equals(position.family()))
                .toList();
        OptionalDouble mean = wanted.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Statistics.mean(wanted));
        double shown =
                wanted.size() < 2 ? asked.step() : Math.max(Statistics.deviation(wanted), asked.step() / Math.sqrt(12));
        Optional<ShimFamily> family = Optional.ofNullable(type.shimFamilies().get(position.family()));
        double alike = family.map(made -> (made.thickest() - made.thinnest()) / Math.sqrt(12))
                .orElse(Double.POSITIVE_INFINITY);
        OptionalDouble widened = wanted.size() < 2
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.min(
                        wider(wanted.size()) * shown, Math.max(shown, Math.min(alike, NO_WIDER * mean.getAsDouble()))));
        return new StockAdvice(
                clearance,
                position,
                wishes,
                mean,
                widened,
                widened.orElse(shown) / shown,
                loose,
                hold(family, position, mean, widened, loose, asked));
    }

    /** So much wider is a prediction for the next job than what so few jobs scatter: t √(1 + 1/n) over the normal factor. */
    static double wider(int jobs) {
        return Student.coverageFactor(COVERAGE, jobs - 1)
                * Math.sqrt(1 + 1.0 / jobs)
                / Student.coverageFactor(COVERAGE, Double.POSITIVE_INFINITY);
    }

    private static Outcome<List<Hold>> hold(
            Optional<ShimFamily> family,
            Position position,
            OptionalDouble mean,
            OptionalDouble widened,
            List<Shop.Piece> loose,
            Asked asked) {
        if (position.most() > 1) {
            return Outcome.refused(Refusal.at(
                    position.where(),
                    "several pieces make one pack there, so many sizes serve alike",
                    "Go by what was taken, and keep thin ones"));
        }
        if (mean.isEmpty() || widened.isEmpty()) {
            return Outcome.refused(Refusal.at(
                    position.where(), "fewer than two boxes have said what they wished for", "Go on: each adds one"));
        }
        if (asked.jobs() == 0 || asked.sure() == 0) {
            return Outcome.refused(Refusal.at(
                    position.where(),
                    "nobody has said for how many boxes it is to serve and how surely",
                    "Type both above"));
        }
        double first = family.map(ShimFamily::thinnest).orElse(asked.step());
        return DrawerStock.work(new DrawerStock.Case(
                        mean.getAsDouble(), widened.getAsDouble(), first, asked.step(), asked.jobs(), 1, asked.sure()))
                .map(Worked::result)
                .map(result -> result.sizes().stream()
                        .filter(size -> family.isEmpty()
                                || (size.thickness() > family.get().thinnest() - asked.step() / 2
                                        && size.thickness() < family.get().thickest() + asked.step() / 2))
                        .map(size -> new Hold(size.thickness(), size.chance(), size.pieces(), (int) loose.stream()
                                .filter(piece -> Math.abs(piece.thickness() - size.thickness()) <= asked.step() / 2)
                                .count()))
                        .toList());
    }
}
