package shimwright.rebuild.money;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import shimwright.rebuild.complaint.Advice;
import shimwright.rebuild.complaint.Suspect;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.record.Findings;
import shimwright.rebuild.record.Standings;
import shimwright.rebuild.supply.Cover;
import shimwright.rebuild.supply.KitCover;
import shimwright.rebuild.supply.Need;
import shimwright.rebuild.supply.OrderList;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.WearLimit;

/**
 * What a quote is made of as the job stands now.
 *
 * @param hoursSoFar at the bench by the log
 * @param hoursAhead of the steps ahead by the unit file
 * @param certain what is to be paid in any case, without the hours
 * @param open what may come to it
 * @param unread wear limits that were not read and of which nothing speaks for a chance
 * @param unknown what costs something and nobody knows how much, in words
 */
public record QuoteBasis(
        double hoursSoFar,
        double hoursAhead,
        List<Entry.QuoteLine> certain,
        List<OpenItem> open,
        int unread,
        List<String> unknown) {
    /** A suspect less likely than this is not reckoned with. */
    private static final double WORTH_SAYING = 0.02;

    public QuoteBasis {
        certain = List.copyOf(certain);
        open = List.copyOf(open);
        unknown = List.copyOf(unknown);
    }

    /**
     * The basis of a job.
     *
     * @param unit as the job builds it
     * @param shop whose numbers hold
     * @param steps of the job, done or not
     * @param chances by wear limit, see {@link #chances}
     */
    public static QuoteBasis of(
            Unit unit, Job job, Shop shop, Set<String> steps, Map<String, OpenItem> chances, ZoneId zone) {
        Set<String> ahead = new LinkedHashSet<>(steps);
        ahead.removeAll(job.stepsDone());
        OrderList list = OrderList.of(unit, job, shop);
        List<OpenItem> open = new ArrayList<>();
        int unread = 0;
        for (WearLimit wear : unit.type().wearLimits()) {
            Optional<Entry.Decision> verdict =
                    waiting(unit, job, wear).isEmpty() ? Standings.worst(unit, job, wear) : Optional.empty();
            if (verdict.isEmpty()) {
                Optional<OpenItem> may = open(unit, job, shop, wear, chances);
                may.ifPresent(open::add);
                unread += may.isEmpty() ? 1 : 0;
            } else if (verdict.get() == Entry.Decision.REWORK
                    && !job.money().costs().containsKey(rework(wear))) {
                open.add(new OpenItem(rework(wear), "rework: " + wear.what(), OpenItem.UNKNOWN, 1, "decided"));
            }
        }
        job.judged().values().stream()
                .map(Said::what)
                .filter(judged -> judged.limit().equals(Entry.Judged.PART)
                        && judged.decision() == Entry.Decision.REWORK
                        && !job.money().costs().containsKey("rework-" + judged.piece()))
                .forEach(judged -> open.add(new OpenItem(
                        "rework-" + judged.piece(), "rework: " + judged.what(), OpenItem.UNKNOWN, 1, "decided")));
        return new QuoteBasis(
                WorkTime.of(job, zone).hours(),
                Labour.planned(unit, ahead),
                certain(list, job),
                open,
                unread,
                unknown(list, job));
    }

    /** What the cost of a rework is about. */
    private static String rework(WearLimit wear) {
        return "rework-" + wear.id();
    }

    private static Optional<OpenItem> open(
            Unit unit, Job job, Shop shop, WearLimit wear, Map<String, OpenItem> chances) {
        Optional<Entry.Found> found = Findings.latest(job, wear.id());
        List<String> waiting = waiting(unit, job, wear);
        boolean waits = !waiting.isEmpty();
        if (found.isPresent() && !waits) {
            return Optional.empty();
        }
        List<String> bought = (waits ? waiting : wear.items())
                .stream()
                        .filter(id -> !unit.type().items().stream()
                                .filter(Item::renew)
                                .map(Item::id)
                                .toList()
                                .contains(id))
                        .toList();
        OpenItem chance = chances.get(wear.id());
        if (bought.isEmpty() || (chance == null && !waits)) {
            return Optional.empty();
        }
        OptionalLong price = KitCover.price(unit, bought, shop);
        return Optional.of(new OpenItem(
                wear.id(),
                wear.what(),
                price.orElse(OpenItem.UNKNOWN),
                chance == null ? OpenItem.UNKNOWN : chance.chance(),
                (waits ? "found outside its limit, not decided" : chance == null ? "" : chance.why())
                        + (price.isEmpty() ? "; no list has its price" : "")));
    }

    /** Items of the pieces that wait for a verdict. */
    private static List<String> waiting(Unit unit, Job job, WearLimit wear) {
        return Standings.of(unit, job, wear).stream()
                .filter(standing -> standing.state() == Standings.State.OPEN)
                .flatMap(standing -> standing.piece().items().stream())
                .distinct()
                .toList();
    }

    private static List<Entry.QuoteLine> certain(OrderList list, Job job) {
        List<Entry.QuoteLine> lines = new ArrayList<>();
        job.money()
                .costs()
                .values()
                .forEach(said -> lines.add(
                        new Entry.QuoteLine(said.what().what(), said.what().cents(), 1, "said")));
        Cover cover = list.cover();
        cover.kits()
                .forEach((kit, count) -> list.kits().stream()
                        .filter(one -> one.id().equals(kit))
                        .forEach(one -> lines.add(new Entry.QuoteLine(
                                "kit " + kit + (count > 1 ? ", " + count + " of it" : ""),
                                list.price(one),
                                1,
                                "its price in the unit file"))));
        cover.singles()
                .forEach(single -> lines.add(new Entry.QuoteLine(
                        single.need().numbered() + (single.pieces() > 1 ? ", " + single.pieces() + " pieces" : ""),
                        Math.round(single.price() * 100) * single.pieces(),
                        1,
                        "its price in the unit file")));
        return lines;
    }

    private static List<String> unknown(OrderList list, Job job) {
        List<String> unknown = new ArrayList<>();
        list.cover().without().stream().map(Need::numbered).forEach(unknown::add);
        unpriced(job).forEach(said -> unknown.add(said.what().what()));
        return unknown;
    }

    /** What was ordered or sent out and has no price yet; what a kit brought is paid with the kit, whose cost names it. */
    public static List<Said<Entry.Sent>> unpriced(Job job) {
        Map<String, Said<Entry.CostSaid>> costs = job.money().costs();
        return job.sent().values().stream()
                .filter(sent -> !job.supply().sentBack().containsKey(sent.id()))
                .filter(sent -> !costs.containsKey(sent.id())
                        && !costs.containsKey(sent.what().what()))
                .filter(sent -> costs.values().stream()
                        .noneMatch(
                                said -> said.what().words().contains(sent.what().what())))
                .toList();
    }

    /**
     * How likely each wear limit is met, from boxes of the type before and, where there are none, from the complaint.
     *
     * @param earlier boxes of the type; those not handed back and the job itself are passed over
     */
    public static Map<String, OpenItem> chances(Unit unit, Job job, Advice advice, List<Job> earlier) {
        Map<String, OpenItem> chances = new LinkedHashMap<>();
        // where nothing is complained of, the general list suspects everything a little: that is no chance
        boolean told = job.inspection().complaint() != null;
        for (Suspect suspect : advice.suspects()) {
            if (told && suspect.chance() >= WORTH_SAYING) {
                advice.limits()
                        .getOrDefault(suspect.id(), List.of())
                        .forEach(wear -> chances.putIfAbsent(
                                wear.id(),
                                new OpenItem(
                                        wear.id(),
                                        wear.what(),
                                        OpenItem.UNKNOWN,
                                        suspect.chance(),
                                        "suspected: " + suspect.name())));
            }
        }
        for (WearLimit wear : unit.type().wearLimits()) {
            List<Entry.Decision> before = earlier.stream()
                    .filter(other -> other.closed() && !other.id().equals(job.id()))
                    .flatMap(other -> Standings.worst(unit, other, wear).stream())
                    .toList();
            long worn = before.stream()
                    .filter(decision -> decision != Entry.Decision.REUSE)
                    .count();
            if (!before.isEmpty()) {
                // with few boxes a share says little: one more of either kind is counted in (Laplace's rule of
                // succession)
                double chance = (worn + 1.0) / (before.size() + 2);
                chances.put(
                        wear.id(),
                        new OpenItem(
                                wear.id(),
                                wear.what(),
                                OpenItem.UNKNOWN,
                                chance,
                                String.format(Locale.ROOT, "worn in %d of %d boxes before", worn, before.size())));
            }
        }
        return chances;
    }
}
