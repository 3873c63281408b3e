package shimwright.bench.web.clearance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import shimwright.bench.picture.plot.Plots;
import shimwright.bench.picture.plot.Plots.Page;
import shimwright.bench.web.kit.Show;
import shimwright.mechanics.axial.shim.PackOffer;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.clearance.Reading;
import shimwright.rebuild.clearance.Reading.Measured;
import shimwright.rebuild.clearance.Session;
import shimwright.rebuild.clearance.Session.Advice;
import shimwright.rebuild.clearance.Session.Closing;
import shimwright.rebuild.clearance.Session.Stage;
import shimwright.rebuild.job.Basis;
import shimwright.rebuild.job.Entry.ClearanceAccepted;
import shimwright.rebuild.job.Shop.Piece;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Method;

/** The plots of a session and of the record: hands numbers that are already computed to the pictures. */
public final class ReadingPlots {
    /** Of a phone; on a tablet its letters grow with it, to be read at arm's length. */
    private static final double COLUMN = 362;
    /** Beside the drawing of a record. */
    private static final double BESIDE = 280;

    private static final double K = 2;

    private ReadingPlots() {}

    private static Page page(String id, double width, Show show) {
        return new Page(id, width, show.system());
    }

    /** The rounds of the reading at hand; empty while there are none or the way of reading has no series. */
    static String series(Session session, Show show) {
        Reading reading = session.current();
        Clearance clearance = session.clearance();
        if (reading.rounds().isEmpty() || clearance.method() == Method.FEELER) {
            return "";
        }
        Measured measured = reading.measured();
        if (clearance.method() == Method.PLACES) {
            return places(session, measured, show);
        }
        List<Double> first = new ArrayList<>();
        List<Double> second = new ArrayList<>();
        reading.rounds().forEach(round -> {
            List<Double> values = round.what().values();
            boolean two = values.size() > 1 && clearance.method() != Method.DIFFERENCE;
            first.add(clearance.value(two ? values.subList(0, 1) : values));
            if (two) {
                second.add(clearance.value(values.subList(1, 2)));
            }
        });
        Measured settled = measured != null && measured.settled() ? measured : null;
        boolean trial = reading.phase() == shimwright.rebuild.unit.model.Step.Phase.TRIAL;
        Map<Integer, String> outliers = new LinkedHashMap<>();
        if (measured != null) {
            measured.outliers().forEach(round -> outliers.put(round - 1, "read it again"));
        }
        return Plots.series(
                new Plots.Series(
                        clearance.name() + (trial ? ", with trial pieces" : ", with the pack"),
                        Kind.LENGTH,
                        first,
                        second,
                        settled != null ? settled.firstUsed() - 1 : first.size(),
                        trial ? OptionalDouble.empty() : OptionalDouble.of(clearance.lower()),
                        trial ? OptionalDouble.empty() : OptionalDouble.of(clearance.upper()),
                        settled != null ? OptionalDouble.of(settled.value()) : OptionalDouble.empty(),
                        settled != null ? K * settled.u() : 0,
                        outliers),
                page("series", COLUMN, show));
    }

    private static String places(Session session, @org.jspecify.annotations.Nullable Measured measured, Show show) {
        Clearance clearance = session.clearance();
        Reading reading = session.current();
        List<Double> values =
                reading.rounds().get(reading.rounds().size() - 1).what().values();
        if (measured == null) {
            return "";
        }
        OptionalInt outlier = measured.outliers().isEmpty()
                ? OptionalInt.empty()
                : OptionalInt.of(measured.outliers().get(0) - 1);
        return Plots.places(
                new Plots.Places(
                        clearance.name(),
                        Kind.LENGTH,
                        values,
                        OptionalDouble.of(clearance.lower()),
                        OptionalDouble.of(clearance.upper()),
                        measured.value(),
                        outlier,
                        outlier.isEmpty() ? "" : "read it again"),
                page("places", COLUMN, show));
    }

    /** The packs on offer, while one is to be chosen. */
    static String packs(Session session, Show show) {
        Advice advice = session.advice();
        if (advice == null
                || advice.result() == null
                || session.stage() != Stage.CHOOSE
                || advice.result().offers().isEmpty()) {
            return "";
        }
        Clearance clearance = session.clearance();
        List<Plots.Pack> packs = new ArrayList<>();
        for (PackOffer offer : advice.result().offers()) {
            packs.add(new Plots.Pack(
                    String.join(" + ", offer.pieces()),
                    offer.predicted(),
                    K * offer.u(),
                    show.percent(offer.probability()),
                    packs.isEmpty()));
        }
        List<String> best = advice.result().offers().get(0).pieces();
        return Plots.packs(
                new Plots.Packs(
                        "What each pack would leave, and what stays in the drawer",
                        OptionalDouble.of(clearance.lower()),
                        OptionalDouble.of(clearance.upper()),
                        OptionalDouble.of(clearance.aim()),
                        packs,
                        advice.drawer().stream().map(Piece::thickness).toList(),
                        advice.drawer().stream()
                                .filter(piece -> best.contains(piece.id()))
                                .map(Piece::thickness)
                                .toList()),
                page("packs", COLUMN, show));
    }

    /** The last reading against its limits, once it has settled. */
    static String limits(Session session, Show show) {
        Closing closing = session.closing();
        Measured measured = session.current().measured();
        if (closing == null || measured == null) {
            return "";
        }
        return against(
                session.clearance(),
                closing.value(),
                closing.u(),
                measured.nu(),
                closing.probability(),
                closing.hot(),
                page("limits", COLUMN, show));
    }

    private static String against(
            Clearance clearance, double value, double u, double nu, double probability, double hot, Page page) {
        return Plots.conformity(
                new Plots.Conformity(
                        clearance.name(),
                        Kind.LENGTH,
                        value,
                        u,
                        nu,
                        OptionalDouble.of(clearance.lower()),
                        OptionalDouble.of(clearance.upper()),
                        probability,
                        clearance.growth() == 0 ? OptionalDouble.empty() : OptionalDouble.of(hot)),
                page);
    }

    /** Where the uncertainty of the reading at hand comes from. */
    static String budget(Session session, Show show) {
        Optional<Measured> measured = Optional.ofNullable(session.current().measured());
        return measured.filter(m -> m.u() > 0)
                .map(m -> Plots.budgetBars(
                        "Where the uncertainty comes from",
                        m.budget().contributions().stream()
                                .map(part -> new Plots.Share(part.name(), part.share()))
                                .toList(),
                        page("budget", COLUMN, show)))
                .orElse("");
    }

    /**
     * An accepted clearance against its limits, for the record; its uncertainty by the degrees of freedom that were kept, and
     * as normal where an older program kept none.
     */
    public static String accepted(Clearance clearance, ClearanceAccepted accepted, Show show) {
        return against(
                clearance,
                accepted.value(),
                accepted.u(),
                Basis.of(accepted.basis()).map(Basis::nu).orElse(Double.POSITIVE_INFINITY),
                accepted.probability(),
                accepted.value() + clearance.growth(),
                page("acc-" + clearance.id(), BESIDE, show));
    }
}
