// size: every type of entry stands here, one sealed family
package shimwright.rebuild.job;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Line;
import shimwright.rebuild.unit.model.Step.Phase;

/**
 * One thing that happened, as it is kept for ever. Entries are only ever added; a mistake is struck by a later entry and
 * stays visible. Lengths and all other quantities are SI.
 */
public sealed interface Entry {

    /** Entries of a job's own stream. */
    sealed interface OfJob extends Entry {}

    /** Entries of the shop's stream. */
    sealed interface OfShop extends Entry {}

    /** The unit came in: what it is, how that was told, and what the owner said. */
    record JobOpened(
            String number,
            String unitType,
            String variant,
            String owner,
            List<String> said,
            Map<String, String> tellTales,
            String overruledBecause,
            String remark,
            String unitFile)
            implements OfJob {
        /** As it was written before a job kept its unit file. */
        public JobOpened(
                String number,
                String unitType,
                String variant,
                String owner,
                List<String> said,
                Map<String, String> tellTales,
                String overruledBecause,
                String remark) {
            this(number, unitType, variant, owner, said, tellTales, overruledBecause, remark, "");
        }
    }

    /**
     * What was written down at intake was wrong, or became known later.
     *
     * @param facts the fact as it is now, by {@code number}, {@code owner}, {@code remark}; others stand as they were
     * @param said what the owner said, all of it; empty where it stands as it was
     */
    record IntakeCorrected(Map<String, String> facts, List<String> said, String reason) implements OfJob {}

    /**
     * What the owner complains of, as a short check puts it; the latest holds whole.
     *
     * @param answers to the questions of the check, by question; what could not be said is not there
     * @param symptoms of the unit file that it is, by id
     * @param apart how far the unit was apart, an opening of the general list; empty where nobody said
     * @param words all of it in the words of that day
     */
    record ComplaintSaid(Map<String, String> answers, List<String> symptoms, String apart, List<String> words)
            implements OfJob {}

    /**
     * A suspect was looked at; the latest about it holds.
     *
     * @param suspect a cause of the general list, {@code own:} and one of the unit file, or {@code other:} and the person's own words
     * @param name in words
     */
    record SuspectLooked(String suspect, String name, Seen seen, String words) implements OfJob {
        /** Begins what no list has. */
        public static final String OTHER = "other:";
    }

    /** What a look at a suspect came to. */
    enum Seen {
        FOUND,
        IN_ORDER,
        CANNOT_TELL
    }

    /**
     * From here on the job stands on another unit file or variant.
     *
     * @param unitFile content hash of the file, which is kept
     * @param variant of that file
     * @param changes what changes for this job, in words, as it was shown before it was decided
     */
    record UnitMoved(String unitFile, String variant, List<String> changes, String reason) implements OfJob {}

    /** An entry that was a mistake: it stays in the log and does not count. */
    record EntryStruck(String entry, String reason) implements OfJob {}

    /**
     * A step was done although a wait had not ended, or a window had run out.
     *
     * @param what {@code early} or {@code late}
     * @param clock name of the wait or window
     * @param seconds {@code by}: how much too early or too late
     */
    record TimeOverruled(String step, String what, String clock, Map<String, Double> seconds, String reason)
            implements OfJob {}

    /**
     * One step of the strip-down, in order: what came off.
     *
     * @param items of the unit file, by id; may be empty
     * @param inTheWay what had to be off before it, by entry; with {@link #NOTHING} where nothing else was, which alone says that
     *     it could have come off any time; empty where nobody was asked
     * @param asOneWith what it had come out with as one, by entry: it was taken off that on the bench
     * @param byForce press, puller, heat or blows that it took; empty for none
     * @param destroyed what was destroyed getting it off; empty for nothing
     * @param sideUp which way it sat
     * @param fasteners what held it, as {@code 6 × M8x1.25 8.8}, several with {@code ;} between
     * @param shims found with it: {@code place}, {@code sizes}, {@code acts} ({@code closes} or {@code opens}), each as said
     * @param sealedWith sealant or locker that was seen on it; empty for none
     */
    record TakenOff(
            String gone,
            List<String> items,
            String note,
            List<String> inTheWay,
            List<String> asOneWith,
            String byForce,
            String destroyed,
            String sideUp,
            String fasteners,
            Map<String, String> shims,
            String sealedWith)
            implements OfJob {
        /** Nothing else was in its way. */
        public static final String NOTHING = "nothing";

        /** As it was written before anything was asked of what came off. */
        public TakenOff(String gone, List<String> items, String note) {
            this(gone, items, note, List.of(), List.of(), "", "", "", "", Map.of(), "");
        }
    }

    /** What was said of something that came off was wrong or short: what holds now in its place, and why. */
    record TakenOffCorrected(String takenOff, TakenOff now, String reason) implements OfJob {}

    /**
     * A finding: what was seen or measured on an item, against a wear limit where there is one.
     *
     * @param limit id of the wear limit, {@link #TRADE} and a check that the trade makes of such parts, or empty
     * @param piece which of the pieces that the limit judges; empty for all of them alike, and in older entries
     */
    record Found(
            String limit,
            List<String> items,
            String what,
            List<Double> values,
            Kind kind,
            String words,
            String outcome,
            List<Line> working,
            Map<String, String> basis,
            String piece)
            implements OfJob {
        /** Begins what the trade looks at on such a part and no unit file asks for. */
        public static final String TRADE = "trade:";

        /** As it was written before five rings had a line each. */
        public Found(
                String limit,
                List<String> items,
                String what,
                List<Double> values,
                Kind kind,
                String words,
                String outcome,
                List<Line> working,
                Map<String, String> basis) {
            this(limit, items, what, values, kind, words, outcome, working, basis, "");
        }

        /** As it was written before findings kept their limits. */
        public Found(
                String limit,
                List<String> items,
                String what,
                List<Double> values,
                Kind kind,
                String words,
                String outcome,
                List<Line> working) {
            this(limit, items, what, values, kind, words, outcome, working, Map.of(), "");
        }
    }

    /**
     * The verdict on an item or finding.
     *
     * @param limit id of the wear limit or check, {@link #PART} for a part whatever was found on it, or empty
     * @param piece which of the pieces; empty for all of them alike, and in older entries
     * @param weighed what stood beside it: {@code said} in words, {@code least} the decision that cost least; empty in older entries
     * @param working each number of that as it was got
     */
    record Judged(
            String limit,
            List<String> items,
            String what,
            Decision decision,
            String reason,
            String consent,
            String piece,
            Map<String, String> weighed,
            List<Line> working)
            implements OfJob {
        /** The part itself, whatever was found on it. */
        public static final String PART = "part";

        /** As it was written before five rings had a verdict each. */
        public Judged(String limit, List<String> items, String what, Decision decision, String reason, String consent) {
            this(limit, items, what, decision, reason, consent, "", Map.of(), List.of());
        }
    }

    /**
     * What is said of what a verdict hangs on; of each thing the latest holds whole.
     *
     * @param limit of the piece that it is said of, {@link Judged#PART} or a check as for a verdict; empty for the job as a whole
     * @param piece of the limit; empty for all of them alike
     * @param numbers of a job: {@code distance} in km that it is to last, {@code scatter} share by which the usual wear may be off,
     *     {@code vehicle} s to take the unit out and put it in, {@code day} what a day's delay costs; of a piece {@code chance},
     *     {@code price}, {@code days} and {@code minutes} (s), each with a dot and the decision; what is not known is not there
     * @param words where they come from
     */
    record Weighed(String limit, String piece, Map<String, Double> numbers, String words) implements OfJob {}

    /** Reuse, rework or replace. */
    enum Decision {
        REUSE,
        REWORK,
        REPLACE
    }

    /** A side of a choice between possible orders was taken. */
    record ChoiceTaken(String choice, String side, String reason) implements OfJob {}

    /**
     * A step was done.
     *
     * @param todo what was to be done, as the unit file had it; empty in older entries
     * @param tightened what was tightened and how
     * @param used consumables, by name
     */
    record StepDone(String step, String note, String todo, List<Tightened> tightened, List<String> used)
            implements OfJob {
        /** As it was written before steps kept what they were. */
        public StepDone(String step, String note) {
            this(step, note, "", List.of(), List.of());
        }
    }

    /**
     * A fastener as it was tightened.
     *
     * @param torque N·m in SI
     * @param how {@code nominal}: the wrench set to the torque of the unit file, said to be done; else whether it was read or set, and
     *     what was typed
     */
    record Tightened(String fastener, String where, int quantity, String thread, double torque, String how) {
        /** Tightened as the unit file says. */
        public static final String NOMINAL = "nominal";

        /** The same, for a reading with trial pieces only. */
        public static final String TRIAL = "for a trial reading";

        /** Begins what was read on a wrench or gauge. */
        public static final String READ = "as read";

        /** Begins what the wrench was set to, and where it gave way nobody read. */
        public static final String SET = "as wrench setting";

        /** Said with others to have been tightened before, at which torque nobody said. */
        public static final String BEFORE = "said to be done before";
    }

    /**
     * Steps that were done before anybody marked them, said in one go: when each was done nobody says.
     *
     * @param steps in an order in which they can have been done
     * @param note what must be said of them, such as why a torque that is a guess will do; may be empty
     */
    record StepsStood(List<StepDone> steps, String note) implements OfJob {}

    /** A step was done although steps that it waits for were not, and why; it stands done. */
    record StepJumped(String step, String reason) implements OfJob {}

    /** A step is left out of this job, and why; who waits for it waits for what it waited for. */
    record StepLeftOut(String step, String reason) implements OfJob {}

    /** A step that was left out is to be done after all. */
    record StepTakenUp(String step, String reason) implements OfJob {}

    /**
     * A step of this job's own, which the unit file does not have.
     *
     * @param duration s
     * @param after steps to be done before it
     * @param before steps that wait for it
     */
    record StepAdded(
            String step,
            String todo,
            String at,
            double duration,
            List<String> after,
            List<String> before,
            String reason)
            implements OfJob {}

    /**
     * Something was ordered or sent out, and the items that it holds up.
     *
     * @param items of the unit, by id; steps that fit them wait
     * @param to whom
     * @param due the day on which it should be here
     * @param late how many days it may well be late
     * @param pieces which pieces of those items; empty for all of them, and in older entries
     * @param work what is asked for in writing, by what it is about; empty where nothing is worked on
     * @param numbers for the drawing of it, SI
     * @param accept by what it is accepted when it comes back
     * @param working of what is asked for
     */
    record Sent(
            String what,
            List<String> items,
            String to,
            LocalDate due,
            int late,
            String note,
            List<String> pieces,
            Map<String, String> work,
            Map<String, Double> numbers,
            List<Accept> accept,
            List<Line> working)
            implements OfJob {
        /** Something ordered, of which only some pieces are meant. */
        public Sent(
                String what, List<String> items, String to, LocalDate due, int late, String note, List<String> pieces) {
            this(what, items, to, due, late, note, pieces, Map.of(), Map.of(), List.of(), List.of());
        }

        /** All pieces of the items, as it was written before single ones were ordered. */
        public Sent(String what, List<String> items, String to, LocalDate due, int late, String note) {
            this(what, items, to, due, late, note, List.of());
        }

        /** What it is, as a heading begins. */
        public String title() {
            return what.isEmpty() ? what : what.substring(0, 1).toUpperCase(Locale.ROOT) + what.substring(1);
        }

        /** The same to somebody and for another day. */
        public Sent again(String other, LocalDate day, int days) {
            return new Sent(what, items, other, day, days, note, pieces, work, numbers, accept, working);
        }
    }

    /**
     * By what work that comes back is accepted.
     *
     * @param id within its order
     * @param limits {@code lower} and {@code upper} in SI, as far as there are; none where it is looked at
     * @param how it is measured or looked at
     */
    record Accept(String id, String what, Kind kind, Map<String, Double> limits, String how) {}

    /** What was read of it when it came, with what the readings prove; no values where it was looked at. */
    record AcceptRead(String id, List<Double> values, Kind kind, Verdict verdict, String words) {}

    /**
     * What was ordered or sent out is here.
     *
     * @param sent the entry that says that it went
     * @param good whether it may go in
     * @param measured what was measured or looked at on it
     * @param read against what it is accepted by; empty where nothing was asked for in writing
     * @param overruledBecause why it may go in although its numbers do not prove it; empty where they do
     */
    record CameBack(String sent, boolean good, String measured, List<AcceptRead> read, String overruledBecause)
            implements OfJob {
        /** As it was written before work came back to numbers. */
        public CameBack(String sent, boolean good, String measured) {
            this(sent, good, measured, List.of(), "");
        }
    }

    /** What came and was not right goes back: it is awaited no more, and what it was for can be ordered anew. */
    record SentBack(String sent, String reason) implements OfJob {}

    /**
     * What is awaited comes on another day.
     *
     * @param late how many days it may well be late after that
     */
    record DueMoved(String sent, LocalDate due, int late, String reason) implements OfJob {}

    /**
     * What is needed lies here already, and was measured or looked at.
     *
     * @param pieces which pieces of the items; empty for all of them, and in older entries
     */
    record LiesHere(List<String> items, String what, String measured, List<String> pieces) implements OfJob {
        /** All pieces of the items, as it was written before single ones lay here. */
        public LiesHere(List<String> items, String what, String measured) {
            this(items, what, measured, List.of());
        }
    }

    /**
     * The owner was told what it may cost.
     *
     * @param lines what is in it
     * @param low hundredths of the currency: cheaper in one of ten draws, what nobody has a chance for left out
     * @param likely half of the draws are cheaper
     * @param high dearer in one of ten draws, what nobody has a chance for in it
     * @param unknown what is not in it, in words
     * @param dearer what would make it dearer, in words
     */
    record Quoted(
            List<QuoteLine> lines,
            long low,
            long likely,
            long high,
            String currency,
            List<String> unknown,
            List<String> dearer,
            String words)
            implements OfJob {}

    /**
     * A line of what something may cost.
     *
     * @param cents hundredths of the currency
     * @param chance that it comes to it, 0 to 1; -1 where nobody can say
     * @param why where price and chance come from
     */
    record QuoteLine(String what, long cents, double chance, String why) {}

    /**
     * What the owner said to it.
     *
     * @param quote the entry that told what it may cost
     * @param day on which it was said
     * @param upTo hundredths of the currency that it may cost
     * @param words of the owner; what is left out where it goes on with less
     */
    record OwnerAnswered(String quote, OwnerSays says, Channel by, LocalDate day, String who, long upTo, String words)
            implements OfJob {}

    /** What an owner can say: go on, go on with less, or give it back as it is. */
    enum OwnerSays {
        AGREED,
        LESS,
        DECLINED
    }

    /** How something was said. */
    enum Channel {
        IN_PERSON,
        BY_TELEPHONE,
        IN_WRITING
    }

    /**
     * What something cost; the latest about it holds.
     *
     * @param about the entry that ordered it, a kit by its number, or the words themselves
     * @param cents hundredths of the shop's currency
     */
    record CostSaid(String about, String what, long cents, String words) implements OfJob {}

    /** The hours to be paid for, by the person who stands behind them; the latest hold. */
    record HoursSaid(double hours, String reason) implements OfJob {}

    /** A step cannot be done now, and why. */
    record StepCannot(String step, String reason) implements OfJob {}

    /**
     * A clock was started by hand at a step: heat that soaks, a part that cools, a sealant that skins over.
     *
     * @param name what it is
     * @param seconds how long it runs, s
     * @param mustEnd true where the step must be done by then, false where it waits until then
     */
    record ClockStarted(String step, String name, double seconds, boolean mustEnd) implements OfJob {}

    /** A step was undone again. */
    record StepUndone(String step, String reason) implements OfJob {}

    /** One check of a step's hold point was read; {@code values} in SI, empty for an attested check. */
    record CheckRead(
            String step,
            String hold,
            String check,
            List<Double> values,
            Kind kind,
            boolean attested,
            Verdict verdict,
            String words,
            List<Line> working,
            Map<String, String> basis)
            implements OfJob {
        /** As it was written before checks kept their limits. */
        public CheckRead(
                String step,
                String hold,
                String check,
                List<Double> values,
                Kind kind,
                boolean attested,
                Verdict verdict,
                String words,
                List<Line> working) {
            this(step, hold, check, values, kind, attested, verdict, words, working, Map.of());
        }
    }

    /** A hold point was passed although it is not met: who decided stands in the envelope, the reason here. */
    record HoldOverruled(String step, String hold, String reason) implements OfJob {}

    /** The pieces that are in while a clearance is read, by position. */
    record PackIn(String clearance, Phase phase, Map<String, List<PieceIn>> pieces) implements OfJob {}

    /** One piece with the thickness it was measured at. */
    record PieceIn(String piece, double thickness, double u) {}

    /**
     * One round of readings of a clearance, one value per indicator (or one per place), as read, before any conversion.
     *
     * @param readWith what the gauge could do when it was read, of each of the two lengths of a difference its own; empty in
     *     entries of older programs
     */
    record RoundRead(
            String clearance, Phase phase, String gauge, List<Double> values, String typed, List<GaugeThen> readWith)
            implements OfJob {
        /** As it was written before rounds kept what their gauge could do. */
        public RoundRead(String clearance, Phase phase, String gauge, List<Double> values, String typed) {
            this(clearance, phase, gauge, values, typed, List.of());
        }
    }

    /** A gauge as it was when something was read with it; half-widths and standard deviation in m, see {@link GaugeAdded}. */
    record GaugeThen(String gauge, String name, double step, double errorLimit, double retrace, double repeatability) {}

    /** A round that does not count any more, and why; it stays in the record. */
    record RoundStruck(String entry, String reason) implements OfJob {}

    /**
     * The pack chosen for a clearance, with the prediction and its working.
     *
     * @param basis what it was judged on, see {@link Basis}; empty in entries of older programs
     */
    record PackChosen(
            String clearance,
            String position,
            List<PieceIn> pieces,
            double predicted,
            double u,
            double probability,
            Verdict verdict,
            String overruledBecause,
            List<Line> working,
            Map<String, Double> basis)
            implements OfJob {}

    /**
     * A clearance was read with its pack and accepted.
     *
     * @param basis what it was judged on, see {@link Basis}; empty in entries of older programs
     */
    record ClearanceAccepted(
            String clearance,
            Phase phase,
            double value,
            double u,
            double probability,
            Verdict verdict,
            double predicted,
            String finding,
            String overruledBecause,
            List<Line> working,
            Map<String, Double> basis)
            implements OfJob {}

    /**
     * A worksheet worked out for something of this job, with all that it was worked out from; the latest of a sheet about the
     * same thing holds.
     *
     * @param about what it is for, such as {@code fastener V4}
     * @param name of that in words
     * @param step at which it was worked out; empty for none
     * @param sheet name of the worksheet
     * @param given inputs as they stood in its fields, by key
     * @param from where each comes from, by key; {@code typed} where a person typed it
     * @param results what it gave, by what it is, in the units of the person
     */
    record SheetWorked(
            String about,
            String name,
            String step,
            String sheet,
            Map<String, String> given,
            Map<String, String> from,
            Map<String, String> results,
            List<Line> working,
            List<String> cautions)
            implements OfJob {
        /** Where an input comes from that a person typed. */
        public static final String TYPED = "typed";
    }

    /**
     * A note about a step, item, clearance or the whole job.
     *
     * @param about {@code step}, {@code clearance} or {@code item} with its id, {@link #LESSON}, or {@code job}
     */
    record NoteMade(String about, String text) implements OfJob {
        /** What the next one of the type should know, whatever it is about. */
        public static final String LESSON = "lesson";
    }

    /** A picture, by the hash of its content, already kept when this entry is. */
    record PictureAdded(String about, String picture, String mediaType, long size, String caption) implements OfJob {}

    /**
     * Marks drawn on a picture in one go; the picture itself stays as it was taken, and marks of several goes lie on one another.
     *
     * @param on the entry that added the picture
     * @param tall height over width of the picture as it is looked at, upright
     * @param words what they show; may be empty
     */
    record PictureMarked(String on, double tall, List<Mark> marks, String words) implements OfJob {}

    /**
     * One mark.
     *
     * @param at points as shares of the picture's width and height by turns, from its upper left corner: of an arrow its end and
     *     its tip, of a ring two opposite corners of the box around it, of a line each of its points, of a text where it stands
     * @param text of a text; empty for every other
     */
    record Mark(MarkShape shape, List<Double> at, String text) {}

    /** What can be drawn on a picture. */
    enum MarkShape {
        ARROW,
        RING,
        LINE,
        TEXT
    }

    /** The unit was handed back. */
    record HandedBack(String warranty, String advice, String remark) implements OfJob {}

    /** What became of the unit after. */
    record FollowedUp(String said, String remark) implements OfJob {}

    /**
     * The owner is to be asked how it goes; the latest holds, until somebody has asked.
     *
     * @param day on which
     * @param about what is to be asked or looked at; may be empty
     */
    record FollowUpPlanned(LocalDate day, String about) implements OfJob {}

    /**
     * The unit came back after it was handed back.
     *
     * @param day on which it came
     * @param said what the owner says it does
     * @param items of the unit that it is about, by id; empty where nobody knows yet
     * @param job number of the job under which it is worked on; empty for none
     */
    record Returned(LocalDate day, String said, List<String> items, String job) implements OfJob {}

    /**
     * What a unit that came back was found to have; the latest about a return holds.
     *
     * @param returned the entry that says that it came back
     * @param items of the unit that failed, by id; may be empty
     * @param name the cause in words
     * @param words what was seen; may be empty
     * @param fitted what was fitted of these items, as the record had it, a line each
     */
    record ReturnExplained(
            String returned, List<String> items, String name, LiesIn lies, String words, List<String> fitted)
            implements OfJob {}

    /** What a unit came back for. */
    enum LiesIn {
        THE_PART,
        OUR_WORK,
        ITS_USE,
        NOT_KNOWN
    }

    /** A piece was put in the drawer: what is stamped on it and what the micrometer said at each place. */
    record ShimAdded(String piece, String family, String stamp, List<Double> readings, double u) implements OfShop {}

    /** A piece left the drawer for another reason than a job. */
    record ShimRemoved(String piece, String reason) implements OfShop {}

    /** A gauge of the shop and what it can do; half-widths and pooled standard deviation in SI. */
    record GaugeAdded(
            String gauge,
            String name,
            Kind kind,
            double step,
            double errorLimit,
            double retrace,
            double repeatability,
            double range,
            String calibrated)
            implements OfShop {
        /** As it was written before gauges kept the day of their calibration. */
        public GaugeAdded(
                String gauge,
                String name,
                Kind kind,
                double step,
                double errorLimit,
                double retrace,
                double repeatability,
                double range) {
            this(gauge, name, kind, step, errorLimit, retrace, repeatability, range, "");
        }
    }

    /** A gauge is no longer used, and why; what was read with it keeps its uncertainty. */
    record GaugeRetired(String gauge, String reason) implements OfShop {}

    /** A piece was measured again: from now on it counts with this thickness; what it is in keeps the earlier one. */
    record ShimMeasured(String piece, List<Double> readings, double u) implements OfShop {}

    /** A piece that had left the drawer lies in it again, and why. */
    record ShimReturned(String piece, String reason) implements OfShop {}

    /**
     * The shop's file of a unit type was changed, put there or put back as it was; both files are kept under their hashes.
     *
     * @param before hash of the file as it was; empty where there was none
     * @param after hash of the file as it is
     * @param what was changed, in a few words
     * @param changes each key that changed, with what it was and is
     * @param why in the person's words; may be empty
     */
    record UnitChanged(String unitType, String before, String after, String what, List<String> changes, String why)
            implements OfShop {}

    /**
     * The pictures that go with the shop's file of a unit type, from here on and all of them.
     *
     * @param manifest hash of what another shop said of them, which is kept; empty where they did not come in
     * @param from what that shop calls itself; empty where it does not say
     * @param why in the person's words; may be empty
     */
    record UnitPictured(String unitType, List<UnitPicture> pictures, String manifest, String from, String why)
            implements OfShop {}

    /**
     * Another part number has taken the place of one; the latest about a number holds.
     *
     * @param who said so: the supplier, a list, somebody
     */
    record NumberReplaced(String part, String by, String who, String words) implements OfShop {}

    /** A part number stands after all: nothing has taken its place. */
    record NumberStands(String part, String reason) implements OfShop {}

    /** What the shop is and how it works: facts by name, such as {@code name}, {@code units}, {@code evening}, {@code rate}. */
    record ShopDescribed(Map<String, String> facts) implements OfShop {}
}
