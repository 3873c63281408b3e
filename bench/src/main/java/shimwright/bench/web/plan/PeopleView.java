package shimwright.bench.web.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import shimwright.bench.picture.plan.SwimlaneDiagram;
import shimwright.bench.picture.plan.SwimlaneDiagram.Bar;
import shimwright.bench.web.kit.Show;
import shimwright.rebuild.plan.people.CrewPlan;
import shimwright.rebuild.plan.people.CrewPlan.Why;
import shimwright.rebuild.plan.people.TimetableBar;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * The rest of the build alone and with a second person, as the page shows it.
 *
 * @param said what it comes to, as sentences, the most important first
 * @param bounds why it cannot be shorter, as sentences
 * @param wide who does what when, for a tablet and for paper, in pictures of no more than a page
 * @param narrow the same for a phone
 * @param rows the same as a list
 */
public record PeopleView(
        List<String> said, List<String> bounds, List<String> wide, List<String> narrow, List<Row> rows) {
    private static final double WIDE = 1120;
    private static final double NARROW = 362;
    private static final List<String> LANES = List.of("First person", "Second person");

    static PeopleView of(Unit unit, CrewPlan alone, CrewPlan two, Show show) {
        List<Bar> bars = two.parts().stream().map(part -> bar(unit, part)).toList();
        return new PeopleView(
                said(alone, two, show),
                bounds(two),
                SwimlaneDiagram.pages("lanes", bars, LANES, WIDE),
                SwimlaneDiagram.pages("lanes-narrow", bars, LANES, NARROW),
                two.parts().stream().map(PeopleView::row).toList());
    }

    /**
     * A line of the list.
     *
     * @param when hours and minutes from now
     * @param who first, second or both
     * @param step id; empty where the case is turned
     * @param words what is done
     */
    public record Row(String when, String who, String step, String words) {}

    private static Row row(TimetableBar part) {
        String who = part.people().size() > 1 ? "both" : part.people().contains(0) ? "first" : "second";
        String when = SwimlaneDiagram.clock(Math.round(part.begin()));
        return new Row(when, who, part.step().map(Step::id).orElse(""), part.words());
    }

    private static Bar bar(Unit unit, TimetableBar part) {
        return new Bar(
                part.step().map(Step::id).orElse(""),
                part.words(),
                Math.round(part.begin()),
                Math.round(part.end()),
                part.people(),
                part.step().map(step -> unit.station(step.at()).holdsCase()).orElse(true));
    }

    private static List<String> said(CrewPlan alone, CrewPlan two, Show show) {
        List<String> said = new ArrayList<>();
        double saved = alone.seconds() - two.seconds();
        said.add(
                saved < 60
                        ? "From here a second person does not make it shorter: " + hours(alone.seconds())
                                + " either way."
                        : "Alone " + hours(alone.seconds()) + ", with a second person " + hours(two.seconds()) + ": "
                                + hours(saved) + " sooner, " + show.number(100 * saved / alone.seconds(), 0) + " %.");
        if (!alone.fetched().isEmpty()) {
            double help = alone.fetched().stream().mapToDouble(Step::duration).sum();
            said.add("Alone, help is still needed for "
                    + PlanView.named(alone.fetched()) + ", "
                    + hours(help) + " of it.");
        }
        said.add(proof("With two", two));
        said.add(proof("Alone", alone));
        return said;
    }

    private static String proof(String who, CrewPlan share) {
        return who
                + (share.proven()
                        ? " it cannot be done sooner: this is proven."
                        : " it could be done " + hours(share.gap()) + " sooner at most; not proven soonest.");
    }

    private static List<String> bounds(CrewPlan share) {
        return share.bounds().entrySet().stream()
                .sorted(Map.Entry.<Why, Double>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .map(e -> words(e.getKey()) + ": " + hours(e.getValue()) + ".")
                .toList();
    }

    private static String words(Why why) {
        return switch (why) {
            case WORK -> "All work and the least turning, shared out evenly";
            case CASE ->
                "What is done on the case, one step after the other with the least turning, and what comes before and after";
            case SEARCH -> "What a search over every way of sharing rules out";
        };
    }

    /** Hours and minutes. */
    public static String hours(double seconds) {
        long minutes = Math.round(seconds / 60);
        return minutes < 60
                ? minutes + " min"
                : minutes / 60 + " h" + (minutes % 60 == 0 ? "" : " " + minutes % 60 + " min");
    }
}
