package shimwright.rebuild.act;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.reuse.Stakes;
import shimwright.rebuild.workbench.Workbench;

/** What a verdict hangs on: what is at stake in the job, and of one piece chances, prices, days and minutes. */
public final class ReuseActs {
    private static final Pattern NUMBER = Pattern.compile("\\d{1,7}([.,]\\d{1,4})?");

    private ReuseActs() {}

    /** What is at stake in the job. What is left empty is not known, and is said to be so. */
    @MakesEntries(Entry.Weighed.class)
    public record SayStakes(
            @ActInput("km that it is to last") String distance,

            @ActInput("percent by which the usual wear may be off")
            String scatter,

            @ActInput("minutes to get the unit out of the vehicle and in again")
            String vehicle,

            @ActInput("what a day's delay costs") String day,
            @ActInput("where that comes from") String words)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            List<Refusal> refusals = new ArrayList<>();
            Map<String, Double> numbers = new LinkedHashMap<>();
            put(numbers, Stakes.DISTANCE, "distance", distance, 1, refusals);
            put(numbers, Stakes.SCATTER, "scatter", scatter, 0.01, refusals);
            put(numbers, Stakes.VEHICLE, "vehicle", vehicle, 60, refusals);
            put(numbers, Stakes.DAY, "day", day, 1, refusals);
            if (numbers.isEmpty() && refusals.isEmpty()) {
                refusals.add(new Refusal(
                        "distance",
                        "what is at stake",
                        "nothing typed",
                        "Say at least one of it; what is wrong is struck"));
            }
            return refusals.isEmpty()
                    ? IntakeActs.kept(
                            bench, new Entry.Weighed("", "", numbers, words), "Kept: verdicts are weighed by it")
                    : Outcome.refused(refusals);
        }
    }

    /**
     * What is known of one piece: chances in percent, prices, days and minutes, each under its name and the decision, such as
     * {@code price.replace}. What is left empty is not known.
     */
    @MakesEntries(Entry.Weighed.class)
    public record WeighPiece(
            @ActInput(value = "limit", missing = "Go back to the inspection")
            String limit,

            @ActInput("piece; empty for all alike") String piece,

            @ActInput("chances in percent, prices, days and minutes, by name and decision")
            Map<String, String> numbers,

            @ActInput("where that comes from") String words)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            List<Refusal> refusals = new ArrayList<>();
            Map<String, Double> read = new LinkedHashMap<>();
            numbers.forEach((name, text) -> put(
                    read,
                    name,
                    "numbers." + name,
                    text,
                    name.startsWith("chance") ? 0.01 : name.startsWith("minutes") ? 60 : 1,
                    refusals));
            return refusals.isEmpty()
                    ? IntakeActs.kept(
                            bench, new Entry.Weighed(limit, piece, read, words), "Kept: it stands beside the verdict")
                    : Outcome.refused(refusals);
        }
    }

    private static void put(
            Map<String, Double> numbers, String name, String key, String text, double unit, List<Refusal> refusals) {
        String typed = text.strip();
        if (typed.isEmpty()) {
            return;
        }
        if (NUMBER.matcher(typed).matches()) {
            numbers.put(name, Double.parseDouble(typed.replace(',', '.')) * unit);
        } else {
            refusals.add(Refusal.of(
                    key,
                    "\"" + typed + "\" is no such number",
                    "Write it as 12 or 12.5, or leave it empty: not known"));
        }
    }
}
