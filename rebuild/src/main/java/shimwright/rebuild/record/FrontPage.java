package shimwright.rebuild.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.IntFunction;
import shimwright.mechanics.conformity.Verdict;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.record.HandBackRecord.Decision;
import shimwright.rebuild.record.HandBackRecord.HoldReading;
import shimwright.rebuild.record.HandBackRecord.Setting;
import shimwright.rebuild.record.Standings.Standing;
import shimwright.rebuild.record.Standings.State;
import shimwright.rebuild.unit.model.Unit;

/**
 * What an owner is told of a rebuild on one page: nothing that the record does not hold, and so short that it fits.
 *
 * @param stage how far the job is, in a sentence
 * @param wrong what was not right, those things together of which the same was said
 * @param done what was done about it
 * @param proved of what was read at the end
 * @param watch what to watch and to know, as sentences
 */
public record FrontPage(String stage, List<Wrong> wrong, List<String> done, Proved proved, List<String> watch) {
    private static final int MOST = 7;
    private static final int LONGEST = 170;
    private static final String REUSE = Entry.Decision.REUSE.name().toLowerCase(Locale.ROOT);

    public FrontPage {
        wrong = List.copyOf(wrong);
        done = List.copyOf(done);
        watch = List.copyOf(watch);
    }

    /**
     * Something that was not right.
     *
     * @param what in words, several with commas
     * @param why what was found or decided
     * @param became what was decided; empty where nothing is to be decided of it
     */
    public record Wrong(String what, String why, String became) {}

    /**
     * Readings that prove the finished unit.
     *
     * @param asked how many there are
     * @param read how many were read or said yes to
     * @param within how many of those are within their limits
     */
    public record Proved(int asked, int read, int within) {
        /** In a sentence. */
        public String say() {
            if (asked == 0) {
                return "The unit file asks for no reading of the finished unit.";
            }
            if (read == 0) {
                return "The finished unit was not read yet.";
            }
            return (read == asked ? "All " + asked + " readings" : read + " of " + asked + " readings")
                    + " of the finished unit are taken, "
                    + (within == read ? "every one within its limits." : within + " of them within their limits.");
        }
    }

    /** The front page of a record. */
    public static FrontPage of(HandBackRecord record) {
        Job job = record.job();
        Unit unit = record.unit();
        List<Standing> standings = Standings.all(unit, job);
        return new FrontPage(
                stage(job),
                wrong(record),
                done(job, unit, standings),
                proved(record.proofs()),
                watch(record, standings));
    }

    private static String stage(Job job) {
        if (job.handedBack() != null) {
            return job.money().declined() ? "Handed back as it is: the owner declined the rebuild." : "Handed back.";
        }
        if (!job.stepsDone().isEmpty()) {
            return "In work: it is being built up. This is the record as it stands.";
        }
        if (!job.takenOff().isEmpty() || !job.found().isEmpty() || !job.judged().isEmpty()) {
            return "In work: it is apart and being looked at. This is the record as it stands.";
        }
        return "It came in, and nothing was done yet. This page fills as the work goes on.";
    }

    private static List<Wrong> wrong(HandBackRecord record) {
        Map<String, Wrong> all = new LinkedHashMap<>();
        record.job().inspection().looked().values().stream()
                .map(Said::what)
                .filter(looked -> looked.seen() == Entry.Seen.FOUND)
                .forEach(looked -> all.put(looked.name(), new Wrong(looked.name(), shortened(looked.words()), "")));
        record.decisions().stream()
                .filter(FrontPage::amiss)
                .map(one -> new Wrong(
                        one.what(),
                        shortened(one.reason().isBlank() ? one.found() : one.reason()),
                        one.verdict().isEmpty() ? "to be decided" : one.verdict()))
                .forEach(one -> all.merge(one.became() + " " + one.why(), one, FrontPage::together));
        return most(List.copyOf(all.values()), more -> new Wrong(more + " more", "see the findings", ""));
    }

    private static boolean amiss(Decision decision) {
        return decision.verdict().isEmpty()
                ? decision.readings().stream().anyMatch(Findings::needsVerdict)
                : !decision.verdict().equals(REUSE);
    }

    private static Wrong together(Wrong one, Wrong other) {
        return one.what().contains(other.what()) || one.what().length() > LONGEST
                ? one
                : new Wrong(one.what() + ", " + other.what(), one.why(), one.became());
    }

    /** The reason of the verdict; what was found where there is none yet. */
    private static String why(Standing one) {
        return one.judged()
                .map(said -> said.what().reason())
                .filter(reason -> !reason.isBlank())
                .or(() -> one.found()
                        .map(said -> said.what().words().isBlank()
                                ? said.what().outcome()
                                : said.what().words()))
                .orElse("");
    }

    private static List<String> done(Job job, Unit unit, List<Standing> standings) {
        List<String> done = new ArrayList<>();
        for (PartsFitted group : PartsFitted.of(unit, job)) {
            if (group.renewed()) {
                done.add("New: " + shortened(String.join(", ", group.parts())));
            }
        }
        job.sent().values().stream()
                .filter(sent -> !sent.what().work().isEmpty() && job.arrived(sent.id()))
                .forEach(sent -> done.add("Worked on: " + shortened(sent.what().what())));
        long kept = standings.stream()
                .filter(one -> one.state() == State.GOOD || one.state() == State.REUSE)
                .flatMap(one -> one.piece().parts().stream())
                .distinct()
                .count();
        if (kept > 0) {
            done.add(kept + (kept == 1 ? " part was" : " parts were") + " looked at and kept.");
        }
        int steps = job.stepsDone().size();
        if (steps > 0) {
            done.add(steps + (steps == 1 ? " step" : " steps")
                    + " of the build done, each with its time and hand in the evidence.");
        }
        return most(done, more -> more + " more, see the parts fitted.");
    }

    private static Proved proved(List<HoldReading> proofs) {
        List<HoldReading> read =
                proofs.stream().filter(one -> one.read() != null).toList();
        int within = 0;
        for (HoldReading one : read) {
            Said<Entry.CheckRead> said = one.read();
            within += said != null && said.what().verdict() == Verdict.IN ? 1 : 0;
        }
        return new Proved(proofs.size(), read.size(), within);
    }

    private static List<String> watch(HandBackRecord record, List<Standing> standings) {
        Job job = record.job();
        List<String> watch = new ArrayList<>();
        Said<Entry.HandedBack> back = job.handedBack();
        if (back != null && !back.what().advice().isBlank()) {
            watch.add(shortened(back.what().advice()));
        }
        if (back != null && !back.what().remark().isBlank()) {
            watch.add(shortened(back.what().remark()));
        }
        standings.stream()
                .filter(one -> one.state() == State.REUSE
                        && one.found()
                                .filter(said -> Findings.needsVerdict(said.what()))
                                .isPresent())
                .map(one -> "Kept although it is not surely within its limit: "
                        + one.piece().name() + ", " + why(one))
                .forEach(words -> watch.add(shortened(words)));
        for (Setting setting : record.clearances()) {
            Said<Entry.ClearanceAccepted> accepted = setting.accepted();
            String name = setting.clearance().name();
            if (accepted != null && accepted.what().verdict() != Verdict.IN) {
                watch.add("Accepted although not proven within its limits: " + name);
            } else if (accepted != null && setting.clearance().guessed()) {
                watch.add("The limits are a guess: " + name);
            } else if (accepted == null && job.handedBack() != null && setting.readWithPack()) {
                watch.add("Not set on this record: " + name);
            }
        }
        Set<String> said = Set.copyOf(watch);
        record.overruled().stream()
                .map(FrontPage::shortened)
                .filter(one -> !said.contains(one))
                .forEach(watch::add);
        job.end().toAsk().ifPresent(ask -> watch.add("We ask on " + ask.what().day() + " how it goes."));
        return most(watch, more -> more + " more, see the evidence.");
    }

    private static <T> List<T> most(List<T> all, IntFunction<T> more) {
        if (all.size() <= MOST) {
            return all;
        }
        List<T> some = new ArrayList<>(all.subList(0, MOST - 1));
        some.add(more.apply(all.size() - MOST + 1));
        return some;
    }

    private static String shortened(String words) {
        if (words.length() <= LONGEST) {
            return words;
        }
        int space = words.lastIndexOf(' ', LONGEST);
        return words.substring(0, space > LONGEST / 2 ? space : LONGEST) + " …";
    }
}
