package shimwright.bench.web.record;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import shimwright.bench.desk.JobOnBench;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.record.Fitted;

/**
 * What came after the hand-back as its page words it.
 *
 * @param items names of the unit's parts by id
 * @param backs each time that it came back, in order
 */
public record AfterView(Map<String, String> items, List<Back> backs) {
    /**
     * It came back.
     *
     * @param why the cause; null while nobody has said it
     * @param parts that it is about, by name, as a field takes them
     * @param fitted what was fitted of them, a line each
     */
    public record Back(
            Said<Entry.Returned> said, @Nullable Said<Entry.ReturnExplained> why, String parts, List<String> fitted) {}

    static AfterView of(JobOnBench bench) {
        Job job = bench.job();
        Map<String, String> items = new TreeMap<>();
        bench.unit().type().items().forEach(item -> items.put(item.id(), item.name()));
        List<Back> backs = job.end().returned().values().stream()
                .map(said -> back(bench, items, said, job.end().explained().get(said.id())))
                .toList();
        return new AfterView(items, backs);
    }

    private static Back back(
            JobOnBench bench,
            Map<String, String> items,
            Said<Entry.Returned> said,
            @Nullable Said<Entry.ReturnExplained> why) {
        List<String> about = why == null ? said.what().items() : why.what().items();
        return new Back(
                said,
                why,
                about.stream().map(id -> items.getOrDefault(id, id)).collect(Collectors.joining("; ")),
                why == null
                        ? Fitted.lines(bench.unit(), bench.job(), about)
                        : why.what().fitted());
    }
}
