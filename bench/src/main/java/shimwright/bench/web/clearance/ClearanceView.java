package shimwright.bench.web.clearance;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.picture.section.SectionState;
import shimwright.bench.web.kit.Drawings;
import shimwright.bench.web.kit.Show;
import shimwright.mechanics.axial.shim.Drawer;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.working.Line;
import shimwright.rebuild.act.ClearanceActs;
import shimwright.rebuild.clearance.EtchedDeviation;
import shimwright.rebuild.clearance.Reading;
import shimwright.rebuild.clearance.Reading.Measured;
import shimwright.rebuild.clearance.Session;
import shimwright.rebuild.clearance.Session.Stage;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.record.BeforeAndAfter;
import shimwright.rebuild.record.PlaceNames;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Step.Phase;

/**
 * A clearance session as its page shows it.
 *
 * @param session the session
 * @param shop the drawer
 * @param unit the unit's shim spreads come from it
 * @param drawing the section with the loop
 * @param stood what the reading waits for and can be said to be done, and what was said so
 * @param series the readings drawn with the limits; empty while there are none
 * @param packs the packs on offer drawn against the limits; empty while there are none
 * @param limits the clearance's uncertainty against its limits; empty until it has settled
 * @param found what it read as found and what that says; empty where it was not read
 * @param budget where the uncertainty comes from; empty until it has settled
 */
public record ClearanceView(
        Session session,
        Shop shop,
        shimwright.rebuild.unit.model.Unit unit,
        Drawings drawing,
        StoodView stood,
        String series,
        String packs,
        String limits,
        String found,
        String budget) {

    static ClearanceView of(JobOnBench bench, Session session, Show show) {
        Shop shop = bench.shop();
        Clearance clearance = session.clearance();
        Set<String> fitted = bench.unit().itemsIn(bench.job().stepsDone());
        SectionState state = SectionState.EMPTY.withFitted(fitted).withClearance(clearance.id());
        Drawings drawing =
                Drawings.of(bench.job().id(), EtchedDeviation.drawn(bench.unit(), bench.job()), state, "loop", show);
        return new ClearanceView(
                session,
                shop,
                bench.unit(),
                drawing,
                StoodView.of(bench, session),
                ReadingPlots.series(session, show),
                ReadingPlots.packs(session, show),
                ReadingPlots.limits(session, show),
                BeforeAndAfter.of(bench.job(), bench.unit(), clearance)
                        .map(before -> before.says(clearance, show.system()))
                        .orElse(""),
                ReadingPlots.budget(session, show));
    }

    /** True while rounds are wanted. */
    public boolean reading() {
        Stage stage = session.stage();
        return stage == Stage.READ_TRIAL || stage == Stage.READ_LAST || stage == Stage.READ_AGAIN;
    }

    /** True where packs are on offer: to choose one, or another where what is in reads out or no longer holds. */
    public boolean choosing() {
        Session.Closing closing = session.closing();
        Session.Forecast forecast = session.forecast();
        boolean out = closing != null && closing.verdict() == Verdict.OUT;
        boolean stale = forecast != null && forecast.stale();
        return session.advice() != null && session.change().open() && (session.stage() == Stage.CHOOSE || out || stale);
    }

    /** True where other pieces can be named than those that were. */
    public boolean nameable() {
        boolean asked = session.stage() == Stage.TRIAL_PACK || session.stage() == Stage.LAST_PACK;
        return !asked && session.stage() != Stage.DONE && session.stage() != Stage.PROVED_OTHERWISE;
    }

    /** The reading for which pieces are named now. */
    public String namedPhase() {
        return session.current().phase() == Phase.TRIAL ? "trial" : "final";
    }

    /** How many numbers one round has. */
    public int fields() {
        return session.clearance().numbers();
    }

    /** What the i-th number of a round is called, from 1. */
    public String label(int i) {
        return ClearanceActs.label(session.clearance(), i);
    }

    /** What stands beside the choice of a gauge: one, or one for each length of a difference. */
    public List<String> gaugeLabels() {
        Clearance clearance = session.clearance();
        return clearance.method() == Clearance.Method.DIFFERENCE
                ? clearance.difference().stream()
                        .map(length -> "Read with, " + length.name())
                        .toList()
                : List.of("Read with");
    }

    /** Mark of the gauge in hand for the i-th of these, from 0; empty where there is none. */
    public String inHand(int i) {
        return i < session.inHand().size() ? session.inHand().get(i).id() : "";
    }

    /** Pieces that could go in at a position, thinnest first. */
    public List<Shop.Piece> drawer(Position position) {
        return shop.usable(position.family(), unit.shimFamily(position.family()).spread()).stream()
                .sorted((a, b) -> Double.compare(a.thickness(), b.thickness()))
                .toList();
    }

    private @Nullable Measured measured() {
        return session.current().measured();
    }

    /** The number of the round that is read next, from 1. */
    public int nextRound() {
        return session.current().rounds().size() + 1;
    }

    /** The place of "place=tag+tag", as an offer of packs chosen together names it. */
    public static String placeOf(String offered) {
        return offered.substring(0, offered.indexOf('='));
    }

    /** The tags of the same, apart by spaces. */
    public static String tagsOf(String offered) {
        return offered.substring(offered.indexOf('=') + 1).replace('+', ' ');
    }

    /**
     * An offer of packs chosen together in words: each place by its name, each piece by its size with its tag behind it.
     *
     * @param offered each as "place=tag+tag"
     * @param places names of places by id
     * @param drawer all pieces of the shop by tag
     */
    public static List<String> laid(
            List<String> offered, PlaceNames places, Map<String, Shop.Piece> drawer, Show show) {
        return offered.stream()
                .map(one -> places.place(placeOf(one)) + ": "
                        + Stream.of(tagsOf(one).split(" "))
                                .map(tag -> drawer.containsKey(tag)
                                        ? show.length(drawer.get(tag).thickness()) + " (" + tag + ")"
                                        : tag)
                                .collect(Collectors.joining(" + ")))
                .toList();
    }

    /** What a drawer advises, with the first offer said as {@link #laid} says it. */
    public static String advice(Drawer.Result result, PlaceNames places, Map<String, Shop.Piece> drawer, Show show) {
        List<String> best =
                result.offers().isEmpty() ? List.of() : result.offers().get(0).pieces();
        return best.isEmpty()
                ? result.advice()
                : result.advice().replace(String.join(", ", best), String.join("; ", laid(best, places, drawer, show)));
    }

    /** True where a round, counted from 1, was used. */
    public boolean used(int round) {
        Measured m = measured();
        return m == null || session.clearance().method() == Clearance.Method.PLACES || round >= m.firstUsed();
    }

    /** How many rounds or places the measured value stands on, in words. */
    public String usedSoFar() {
        Measured m = measured();
        int used = m == null ? 0 : m.used();
        String one = session.clearance().method() == Clearance.Method.PLACES ? "place" : "round";
        return used + " " + one + (used == 1 ? "" : "s");
    }

    /** How many steps stand on the pack that is in, in words. */
    public String undoFirst() {
        int steps = session.change().undoFirst().size();
        return steps + (steps == 1 ? " step stands on it." : " steps stand on it.");
    }

    /** True where a round, counted from 1, stands apart from the others. */
    public boolean outlier(int round) {
        Measured m = measured();
        return m != null
                && session.clearance().method() != Clearance.Method.PLACES
                && m.outliers().contains(round);
    }

    /** The lines of working that belong to where the session stands. */
    public List<Line> lines() {
        Session.Closing closing = session.closing();
        if (closing != null) {
            return closing.working();
        }
        Session.Advice advice = session.advice();
        Reading current = session.current();
        Measured m = current.measured();
        List<Line> lines = new java.util.ArrayList<>(m == null ? List.of() : m.working());
        if (advice != null && session.stage() == Stage.CHOOSE) {
            lines.addAll(advice.working());
        }
        return List.copyOf(lines);
    }
}
