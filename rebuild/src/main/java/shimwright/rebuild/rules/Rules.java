package shimwright.rebuild.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.workbench.Workbench;

/**
 * What forbids an entry of a job. Every type of entry has its rule; one without is refused, so that nothing new comes in
 * unlooked at.
 */
public final class Rules {
    private static final Map<Class<? extends Entry.OfJob>, Rule<Entry.OfJob>> RULES = rules();

    private Rules() {}

    /** What forbids entries of one type. */
    interface Rule<E> {
        List<Refusal> against(Workbench bench, E entry);
    }

    private static Map<Class<? extends Entry.OfJob>, Rule<Entry.OfJob>> rules() {
        Map<Class<? extends Entry.OfJob>, Rule<Entry.OfJob>> rules = new LinkedHashMap<>();
        put(rules, Entry.JobOpened.class, (bench, e) -> one("", "job", "this job is already open", "Open a new job"));
        put(rules, Entry.IntakeCorrected.class, IntakeRules::corrected);
        put(rules, Entry.UnitMoved.class, IntakeRules::moved);
        put(rules, Entry.ComplaintSaid.class, ComplaintRules::said);
        put(rules, Entry.SuspectLooked.class, ComplaintRules::looked);
        put(rules, Entry.EntryStruck.class, StrikeRules::struck);
        put(rules, Entry.TakenOff.class, IntakeRules::takenOff);
        put(rules, Entry.TakenOffCorrected.class, IntakeRules::takenOffCorrected);
        put(rules, Entry.Found.class, IntakeRules::found);
        put(rules, Entry.Judged.class, IntakeRules::judged);
        put(rules, Entry.Weighed.class, ReuseRules::weighed);
        put(rules, Entry.SheetWorked.class, SheetRules::worked);
        put(rules, Entry.NoteMade.class, IntakeRules::note);
        put(rules, Entry.PictureAdded.class, IntakeRules::picture);
        put(rules, Entry.PictureMarked.class, IntakeRules::marked);
        put(rules, Entry.HandedBack.class, HandBackRules::handedBack);
        put(rules, Entry.FollowedUp.class, HandBackRules::followedUp);
        put(rules, Entry.FollowUpPlanned.class, HandBackRules::planned);
        put(rules, Entry.Returned.class, HandBackRules::returned);
        put(rules, Entry.ReturnExplained.class, HandBackRules::explained);
        put(rules, Entry.Sent.class, OrderRules::sent);
        put(rules, Entry.CameBack.class, OrderRules::cameBack);
        put(rules, Entry.SentBack.class, OrderRules::sentBack);
        put(rules, Entry.LiesHere.class, OrderRules::liesHere);
        put(rules, Entry.DueMoved.class, OrderRules::dueMoved);
        put(rules, Entry.Quoted.class, MoneyRules::quoted);
        put(rules, Entry.OwnerAnswered.class, MoneyRules::answered);
        put(rules, Entry.CostSaid.class, MoneyRules::cost);
        put(rules, Entry.HoursSaid.class, MoneyRules::hours);
        put(rules, Entry.ChoiceTaken.class, StepRules::choice);
        put(rules, Entry.StepDone.class, StepRules::done);
        put(rules, Entry.StepJumped.class, StepRules::jumped);
        put(rules, Entry.StepsStood.class, StoodSteps::against);
        put(rules, Entry.StepUndone.class, StepRules::undone);
        put(rules, Entry.StepLeftOut.class, StepRules::leftOut);
        put(rules, Entry.StepTakenUp.class, StepRules::takenUp);
        put(rules, Entry.StepAdded.class, StepRules::added);
        put(rules, Entry.StepCannot.class, StepRules::cannot);
        put(rules, Entry.ClockStarted.class, StepRules::clock);
        put(rules, Entry.TimeOverruled.class, StepRules::overruled);
        put(rules, Entry.CheckRead.class, HoldRules::read);
        put(rules, Entry.HoldOverruled.class, HoldRules::overruled);
        put(rules, Entry.PackIn.class, ClearanceRules::packIn);
        put(rules, Entry.RoundRead.class, ClearanceRules::round);
        put(rules, Entry.RoundStruck.class, StrikeRules::roundStruck);
        put(rules, Entry.PackChosen.class, ClearanceRules::chosen);
        put(rules, Entry.ClearanceAccepted.class, ClearanceRules::accepted);
        return Map.copyOf(rules);
    }

    private static <E extends Entry.OfJob> void put(
            Map<Class<? extends Entry.OfJob>, Rule<Entry.OfJob>> rules, Class<E> type, Rule<E> rule) {
        rules.put(type, (bench, entry) -> rule.against(bench, type.cast(entry)));
    }

    /** The types of entries that have a rule. */
    public static Set<Class<? extends Entry.OfJob>> covered() {
        return RULES.keySet();
    }

    /**
     * Every reason why the entry cannot be kept now.
     *
     * @param bench the job as it lies there
     * @param entry what is to be kept
     */
    public static List<Refusal> check(Workbench bench, Entry.OfJob entry) {
        return check(bench, List.of(entry));
    }

    /**
     * Every reason why the entries of one act cannot be kept now: each as the bench lies after those before it, and all of
     * them as a whole.
     *
     * @param bench the job as it lies there
     * @param act its entries in order
     */
    public static List<Refusal> check(Workbench bench, List<? extends Entry.OfJob> act) {
        List<Refusal> refusals = new ArrayList<>();
        Workbench lying = bench;
        for (Entry.OfJob entry : act) {
            refusals.addAll(alone(lying, entry));
            lying = act.size() > 1 ? lying.after(entry) : lying;
        }
        refusals.addAll(ClearanceRules.twice(bench, act));
        return refusals.stream().distinct().toList();
    }

    private static List<Refusal> alone(Workbench bench, Entry.OfJob entry) {
        Rule<Entry.OfJob> rule = RULES.get(entry.getClass());
        if (rule == null) {
            return one("", "entry", "nothing says when this may be kept", "Use a newer program");
        }
        Job job = bench.job();
        if (job.closed() && !HandBackRules.afterwards(job, entry)) {
            return one(
                    "",
                    "job " + job.opened().number(),
                    "this unit was handed back and its record stands",
                    "Add a note or a follow-up, or open a new job");
        }
        return rule.against(bench, entry);
    }

    static List<Refusal> one(String key, String place, String fact, String hint) {
        return List.of(new Refusal(key, place, fact, hint));
    }

    /** Refused where nothing but blanks was typed. */
    static List<Refusal> needed(String text, String key, String place, String hint) {
        return text.isBlank() ? one(key, place, "nothing typed", hint) : List.of();
    }

    /** A reason, which stands on the record. */
    static List<Refusal> reason(String text, String hint) {
        return needed(text, "reason", "reason", hint);
    }
}
