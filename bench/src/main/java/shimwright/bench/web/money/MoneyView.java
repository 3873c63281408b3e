package shimwright.bench.web.money;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import shimwright.bench.desk.JobOnBench;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.money.Consent;
import shimwright.rebuild.money.Invoice;
import shimwright.rebuild.money.OpenItem;
import shimwright.rebuild.money.QuoteBasis;
import shimwright.rebuild.money.Rate;
import shimwright.rebuild.money.WorkTime;

/**
 * What it may cost and what it came to, as the page shows it.
 *
 * @param rate an hour as the shop typed it; empty where it has not
 * @param basis what a quote is made of now
 * @param consent how it stands with the owner
 * @param time at the bench by the log
 * @param invoice what it came to
 * @param all false while earlier boxes are still being read
 */
public record MoneyView(String rate, QuoteBasis basis, Consent consent, WorkTime time, Invoice invoice, boolean all) {
    private static final double PERCENT = 100;

    static MoneyView of(JobOnBench bench, Map<String, OpenItem> chances, boolean all) {
        String rate = rate(bench);
        QuoteBasis basis = basis(bench, chances);
        return new MoneyView(
                rate,
                basis,
                Consent.of(bench.job(), reckoned(basis, rate)),
                WorkTime.of(bench.job(), bench.bench().zone()),
                Invoice.of(bench.job(), rate),
                all);
    }

    /** How it stands with the owner of a job. */
    public static Consent consent(JobOnBench bench) {
        return Consent.of(bench.job(), reckoned(basis(bench, Map.of()), rate(bench)));
    }

    private static String rate(JobOnBench bench) {
        return bench.shop().facts().getOrDefault("rate", "").strip();
    }

    private static QuoteBasis basis(JobOnBench bench, Map<String, OpenItem> chances) {
        return QuoteBasis.of(
                bench.unit(),
                bench.job(),
                bench.shop(),
                bench.order().steps().keySet(),
                chances,
                bench.bench().zone());
    }

    /** What it comes to as far as is known now; nothing where no rate is kept. */
    private static long reckoned(QuoteBasis basis, String rate) {
        return Rate.of(rate)
                .map(each -> Math.round((basis.hoursSoFar() + basis.hoursAhead()) * each.cents())
                        + basis.certain().stream()
                                .mapToLong(Entry.QuoteLine::cents)
                                .sum())
                .orElse(0L);
    }

    /** What is to be paid beside the work as far as is known. */
    public long certain() {
        return basis.certain().stream().mapToLong(Entry.QuoteLine::cents).sum();
    }

    /** A price as one types it; empty where it is not known. */
    public static String price(OpenItem item) {
        return item.cents() < 0 ? "" : amount(item.cents());
    }

    /** A chance as one types it, in percent; empty where nobody can say. */
    public static String percent(double chance) {
        return chance < 0 ? "" : String.valueOf(Math.round(chance * PERCENT));
    }

    /** An amount with two decimals. */
    public static String amount(long cents) {
        return String.format(Locale.ROOT, "%d.%02d", cents / 100, cents % 100);
    }

    /** A range in whole units of the currency: less would pretend to more than is known. */
    public static String range(Entry.Quoted quoted) {
        return String.format(
                        Locale.ROOT,
                        "%d to %d %s",
                        Math.round(quoted.low() / PERCENT),
                        Math.round(quoted.high() / PERCENT),
                        quoted.currency())
                .strip();
    }

    /** What was ordered or sent out, by the entry that says so, and has no price yet. */
    public static List<Job.Said<Entry.Sent>> unpriced(Job job) {
        return QuoteBasis.unpriced(job);
    }
}
