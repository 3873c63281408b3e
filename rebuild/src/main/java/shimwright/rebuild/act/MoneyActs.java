package shimwright.rebuild.act;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.money.OpenItem;
import shimwright.rebuild.money.QuoteBasis;
import shimwright.rebuild.money.QuoteRange;
import shimwright.rebuild.money.Rate;
import shimwright.rebuild.workbench.Workbench;

/** What it may cost, what the owner says to it, and what it came to. */
public final class MoneyActs {
    private static final double PERCENT = 100;
    /** A line that may come to it for so much on average is named among what would make it dearer. */
    private static final int WORTH_NAMING = 5;

    private MoneyActs() {}

    /** The owner is told what it may cost: a range from chances, prices and hours; what is not known is said in it. */
    @MakesEntries(Entry.Quoted.class)
    public record GiveQuote(
            @ActInput("chances in percent, by what may be needed")
            Map<String, String> chances,

            @ActInput("prices, by what may be needed") Map<String, String> prices,

            @ActInput(
                    value = "how far the hours may be off, in percent",
                    missing = "Say by how many percent the hours ahead may be off",
                    least = 0,
                    most = 90)
            double spread,

            @ActInput("words to the owner") String words)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            Optional<Rate> rate = Rate.of(bench.shop().facts().getOrDefault("rate", ""));
            List<Refusal> refusals = new ArrayList<>();
            if (rate.isEmpty()) {
                refusals.add(Refusal.at("rate", "nobody has said what an hour costs", "Type it further down, once"));
            }
            Map<String, OpenItem> known = new LinkedHashMap<>();
            chances.keySet().forEach(key -> known.put(key, new OpenItem(key, key, -1, -1, "as typed")));
            QuoteBasis basis = QuoteBasis.of(
                    bench.unit(),
                    bench.job(),
                    bench.shop(),
                    bench.order().steps().keySet(),
                    known,
                    bench.zone());
            List<Entry.QuoteLine> may = new ArrayList<>();
            List<String> unpriced = new ArrayList<>();
            for (OpenItem item : basis.open()) {
                line(item, refusals, unpriced).ifPresent(may::add);
            }
            List<String> unknown = new ArrayList<>();
            if (!basis.unknown().isEmpty()) {
                unknown.add("what these cost: " + String.join(", ", basis.unknown()));
            }
            if (!unpriced.isEmpty()) {
                unknown.add("what would have to be paid where these are worn: " + String.join(", ", unpriced));
            }
            if (basis.unread() > 0) {
                unknown.add(basis.unread() + " readings that were not taken yet and for which nothing speaks");
            }
            return refusals.isEmpty()
                    ? IntakeActs.kept(
                            bench, quoted(basis, may, unknown, rate.orElseThrow()), "Kept: what the owner was told")
                    : Outcome.refused(refusals);
        }

        /** A line of what may come to it; empty where its price is not known or it is sure not to come. */
        private Optional<Entry.QuoteLine> line(OpenItem item, List<Refusal> refusals, List<String> unpriced) {
            String chance = chances.getOrDefault(item.key(), "");
            String price = prices.getOrDefault(item.key(), "");
            Optional<Long> cents = price.isBlank() ? Optional.empty() : Rate.cents(price);
            double share = chance.isBlank() ? OpenItem.UNKNOWN : share(chance);
            if (!price.isBlank() && cents.isEmpty()) {
                refusals.add(new Refusal(
                        "prices." + item.key(),
                        "price of " + item.what(),
                        "\"" + price + "\" is no amount",
                        "Write it as 24.50, or leave it empty"));
            }
            if (Double.isNaN(share)) {
                refusals.add(new Refusal(
                        "chances." + item.key(),
                        "chance of " + item.what(),
                        "\"" + chance + "\" is no percentage from 0 to 100",
                        "Type a number, or leave it empty where you cannot say"));
            }
            if (cents.isEmpty() && share != 0) {
                unpriced.add(item.what());
            }
            return cents.isEmpty() || share == 0
                    ? Optional.empty()
                    : Optional.of(new Entry.QuoteLine(item.what(), cents.get(), share, item.why()));
        }

        private static double share(String percent) {
            String number = percent.strip().replace("%", "").strip();
            return number.matches("\\d{1,3}([.,]\\d)?") && Double.parseDouble(number.replace(',', '.')) <= PERCENT
                    ? Double.parseDouble(number.replace(',', '.')) / PERCENT
                    : Double.NaN;
        }

        private Entry.Quoted quoted(QuoteBasis basis, List<Entry.QuoteLine> may, List<String> unknown, Rate rate) {
            List<Entry.QuoteLine> lines = new ArrayList<>();
            lines.add(new Entry.QuoteLine(
                    "hours so far", Math.round(basis.hoursSoFar() * rate.cents()), 1, "from the log"));
            lines.addAll(basis.certain());
            lines.addAll(may);
            long work = Math.round(basis.hoursAhead() * rate.cents());
            QuoteRange range = QuoteRange.of(lines, work, spread / PERCENT);
            lines.add(
                    1,
                    new Entry.QuoteLine(
                            "hours ahead",
                            work,
                            1,
                            "times of the unit file, " + Math.round(spread) + " % more or less"));
            List<String> dearer = may.stream()
                    .filter(line -> line.chance() < 1)
                    .sorted((a, b) ->
                            Double.compare(Math.abs(b.chance()) * b.cents(), Math.abs(a.chance()) * a.cents()))
                    .limit(WORTH_NAMING)
                    .map(line -> line.what() + ", " + Math.round(line.cents() / PERCENT)
                            + (line.chance() < 0
                                    ? ", chance not known"
                                    : ", " + Math.round(line.chance() * PERCENT) + " in a hundred"))
                    .toList();
            return new Entry.Quoted(
                    lines, range.low(), range.likely(), range.high(), rate.currency(), unknown, dearer, words);
        }
    }

    /** What the owner says to it. */
    @MakesEntries(Entry.OwnerAnswered.class)
    public record HearOwner(
            @ActInput(value = "what the owner says", missing = "Say agreed, less or declined")
            Entry.OwnerSays says,

            @ActInput(value = "how it was said", missing = "Say in person, by telephone or in writing")
            Entry.Channel by,

            @ActInput(value = "day", missing = "Choose the day on which it was said, or type it as 2026-12-24")
            LocalDate day,

            @ActInput("who said it") String who,

            @ActInput("up to which amount; empty for the upper end")
            String upTo,

            @ActInput("in the owner's words; what is left out")
            String words)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            Said<Entry.Quoted> quoted = bench.job().money().quoted();
            if (quoted == null) {
                return Outcome.refused(
                        Refusal.at("quote", "the owner was not told yet what it may cost", "Work out a quote first"));
            }
            Optional<Long> limit = upTo.isBlank() ? Optional.of(quoted.what().high()) : Rate.cents(upTo);
            if (limit.isEmpty()) {
                return Outcome.refused(
                        Refusal.of("upTo", "\"" + upTo + "\" is no amount", "Write it as 1200, or leave it empty"));
            }
            return IntakeActs.kept(
                    bench,
                    new Entry.OwnerAnswered(
                            quoted.id(),
                            says,
                            by,
                            day,
                            who.isBlank() ? bench.job().opened().owner() : who,
                            says == Entry.OwnerSays.DECLINED ? 0 : limit.get(),
                            words),
                    "Kept: what the owner says");
        }
    }

    /** What something cost, or costs otherwise than was said. */
    @MakesEntries(Entry.CostSaid.class)
    public record SayCost(
            @ActInput("what it is about") String about,

            @ActInput(value = "what it is", missing = "Say what it is")
            String what,

            @ActInput(value = "amount", missing = "Type what it cost; 0 where nothing is to be paid")
            String amount,

            @ActInput("remark") String words)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            String key = about.isBlank() ? what : about;
            Said<Entry.CostSaid> before = bench.job().money().costs().get(key);
            String said = words.isBlank() && before != null ? before.what().words() : words;
            return Rate.cents(amount)
                    .map(cents ->
                            IntakeActs.kept(bench, new Entry.CostSaid(key, what, cents, said), "Kept: what it costs"))
                    .orElseGet(() -> Outcome.refused(
                            Refusal.of("amount", "\"" + amount + "\" is no amount", "Write it as 24.50")));
        }
    }

    /** The hours to be paid for. */
    @MakesEntries(Entry.HoursSaid.class)
    public record SayHours(
            @ActInput(value = "hours", missing = "Type the hours that are to be paid for", least = 0, most = 10_000)
            double hours,

            @ActInput("reason, where they are others than those of the log")
            String reason)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return IntakeActs.kept(bench, new Entry.HoursSaid(hours, reason), "Kept: the hours");
        }
    }
}
