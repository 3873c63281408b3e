package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import shimwright.bench.store.ShopStore;
import shimwright.bench.store.log.OpenLog;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Heads;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.LogEntry;

/** Eight benches choose the same two shims for eight units at the same moment: one has them. */
class DoubleBookingTest {
    private static final int JOBS = 8;
    private static final String CLEARANCE = "c";
    private static final List<String> SHIMS = List.of("w52-02", "w52-03");

    @Test
    void aShimThatEightTakeAtOnceIsInOneUnit() throws IOException {
        Path folder = DemoBench.copy();
        eightJobsBeforeTheChoice(folder);
        try (DemoBench bench = DemoBench.at(folder)) {
            ExecutorService benches = Executors.newFixedThreadPool(JOBS);
            List<CompletableFuture<HttpResponse<String>>> asked = new ArrayList<>();
            for (int job = 0; job < JOBS; job++) {
                String path = "/job/job-e-" + job + "/clearance/" + CLEARANCE + "/choose";
                String entry = "choice-" + job;
                asked.add(CompletableFuture.supplyAsync(
                        () -> bench.post(path, "pack", String.join(" ", SHIMS), "because", "", "entry", entry),
                        benches));
            }
            List<Integer> answers = asked.stream()
                    .map(CompletableFuture::join)
                    .map(HttpResponse::statusCode)
                    .sorted()
                    .toList();
            benches.shutdown();
            assertThat(answers).containsExactly(200, 422, 422, 422, 422, 422, 422, 422);
            assertThat(kept(bench)).hasSize(1);
        }
    }

    private static List<String> kept(DemoBench bench) {
        List<String> kept = new ArrayList<>();
        for (int job = 0; job < JOBS; job++) {
            String choice = "\"choice-" + job + "\"";
            if (bench.get("/api/jobs/job-e-" + job + "/entries").body().contains(choice)) {
                kept.add(choice);
            }
        }
        return kept;
    }

    /** The demo's rebuilt job up to its choice of these shims, eight times over, and the shop round it; nothing else. */
    private static void eightJobsBeforeTheChoice(Path folder) throws IOException {
        List<Draft> drafts = new ArrayList<>();
        try (ShopStore played =
                ShopStore.in(folder, OpenLog.Opening.WRITE, Optional.empty()).orElseThrow()) {
            played.log().read(JobLog.SHOP).forEach(kept -> drafts.add(kept.draft()));
            List<LogEntry> job = played.log().read("job-v-0091");
            for (int copy = 0; copy < JOBS; copy++) {
                for (LogEntry kept : job) {
                    if (kept.body() instanceof Entry.PackChosen chosen
                            && chosen.clearance().equals(CLEARANCE)) {
                        break;
                    }
                    drafts.add(copied(kept.draft(), copy));
                }
            }
        }
        for (String gone : List.of("shimwright.db", "head")) {
            Files.delete(folder.resolve(gone));
        }
        try (ShopStore made =
                ShopStore.in(folder, OpenLog.Opening.ACCEPT, Optional.empty()).orElseThrow()) {
            assertThat(made.log().append(drafts, Heads.ofLog(made.log().head())).isOk())
                    .isTrue();
        }
    }

    private static Draft copied(Draft draft, int copy) {
        Entry body = draft.body() instanceof Entry.JobOpened o
                ? new Entry.JobOpened(
                        "E-" + copy,
                        o.unitType(),
                        o.variant(),
                        o.owner(),
                        o.said(),
                        o.tellTales(),
                        o.overruledBecause(),
                        o.remark(),
                        o.unitFile())
                : draft.body();
        return new Draft("job-e-" + copy, "e" + copy + "-" + draft.id(), draft.at(), draft.by(), body);
    }
}
