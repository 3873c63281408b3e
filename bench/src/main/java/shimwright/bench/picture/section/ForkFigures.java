package shimwright.bench.picture.section;

import static shimwright.bench.picture.section.PartFigure.at;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import shimwright.bench.picture.section.PartFigure.Fill;
import shimwright.bench.picture.section.PartFigure.Sketch;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Section;
import shimwright.rebuild.unit.model.Unit;

/** A shift fork: its boss on the rail, and its arm into the groove of the sleeve that lies nearest along the axis. */
final class ForkFigures {
    /** Half of the thickness of an arm, m; common practice, no source. */
    private static final double ARM = 3e-3;
    /** A sleeve farther along than this is not the fork's, m. */
    private static final double NEAR = 60e-3;

    private final Unit unit;

    ForkFigures(Unit unit) {
        this.unit = unit;
    }

    /** Where a sleeve lies as seen from the fork's rail: its measures, and the height of its axis above the rail, m. */
    private record Groove(Extent sleeve, double height) {
        double half() {
            return 0.09 * sleeve.width();
        }

        /** From the rail to the floor of the groove on the side of the rail, m. */
        double floor() {
            return Math.abs(height) - (sleeve.outer() - 0.45 * sleeve.wall());
        }

        double rim() {
            return Math.abs(height) - sleeve.outer();
        }
    }

    /** Draws a fork in the coordinates of its rail; the boss alone where no sleeve is near. */
    void fork(Sketch figure, Item item, Extent boss) {
        figure.ring(Fill.FALLING, boss.from(), boss.to(), boss.inner(), boss.outer());
        groove(item, boss).filter(groove -> groove.rim() > boss.outer()).ifPresent(groove -> {
            double side = Math.signum(groove.height());
            double w = groove.sleeve().centre();
            double foot = boss.outer() + 0.3 * (groove.rim() - boss.outer());
            figure.oneSided(
                    Fill.FALLING,
                    at(boss.centre() - ARM, side * boss.outer()),
                    at(w - ARM, side * foot),
                    at(w - ARM, side * groove.rim()),
                    at(w - groove.half(), side * groove.rim()),
                    at(w - groove.half(), side * groove.floor()),
                    at(w + groove.half(), side * groove.floor()),
                    at(w + groove.half(), side * groove.rim()),
                    at(w + ARM, side * groove.rim()),
                    at(w + ARM, side * foot),
                    at(boss.centre() + ARM, side * boss.outer()));
        });
    }

    private Optional<Groove> groove(Item fork, Extent boss) {
        List<Section.Shaft> shafts = unit.type().section().shafts();
        Optional<Section.Shaft> rail =
                shafts.stream().filter(s -> s.id().equals(fork.shaft())).findFirst();
        return rail.flatMap(own -> unit.type().items().stream()
                .filter(item -> item.shape() == Item.Shape.SLEEVE)
                .flatMap(item -> shafts.stream()
                        .filter(s -> s.id().equals(item.shaft()) && s.axis() == own.axis() && s.at().size() == 2)
                        .flatMap(s -> Extent.of(item).stream()
                                .map(e -> new Groove(e, s.at().get(1) - own.at().get(1)))))
                .filter(groove -> away(groove, boss) < NEAR)
                .min(Comparator.comparingDouble(groove -> away(groove, boss))));
    }

    private static double away(Groove groove, Extent boss) {
        return Math.abs(groove.sleeve().centre() - boss.centre());
    }
}
