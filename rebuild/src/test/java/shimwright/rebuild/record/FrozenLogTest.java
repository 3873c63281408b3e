package shimwright.rebuild.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.FrozenLog;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Fold;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Unit;

/** Logs and unit files as programs of before wrote them stay readable; one log is frozen per release. */
class FrozenLogTest {
    private static final Map<String, List<LogEntry>> STREAMS = FrozenLog.entries("0.1.0").stream()
            .collect(Collectors.groupingBy(kept -> kept.draft().stream(), LinkedHashMap::new, Collectors.toList()));

    private static Job job(String number) {
        return STREAMS.keySet().stream()
                .filter(stream -> !stream.equals(JobLog.SHOP))
                .map(stream ->
                        Fold.job(Objects.requireNonNull(STREAMS.get(stream))).orElseThrow())
                .filter(job -> job.opened().number().equals(number))
                .findFirst()
                .orElseThrow();
    }

    private static Unit unit(String variant) throws IOException {
        try (InputStream in =
                Objects.requireNonNull(FrozenLogTest.class.getResourceAsStream("/logs/0.1.0-unit.yaml"))) {
            return UnitFiles.read("0.1.0-unit.yaml", in.readAllBytes())
                    .outcome()
                    .orElseThrow()
                    .resolve(variant);
        }
    }

    @Test
    void everyEntryIsReadAndEveryJobFolds() {
        assertThat(STREAMS.values().stream().mapToInt(List::size).sum()).isEqualTo(582);
        assertThat(STREAMS.keySet()).containsExactly(JobLog.SHOP, "job-v-0091", "job-v-0093");
        assertThat(job("V-0091").closed()).isTrue();
        assertThat(job("V-0093").closed()).isFalse();
        assertThat(Shop.of(Objects.requireNonNull(STREAMS.get(JobLog.SHOP)), Map.of())
                        .pieces())
                .isNotEmpty();
    }

    @Test
    void theRecordIsMadeAgainstTheUnitFileOfThatTime() throws IOException {
        Job job = job("V-0091");
        HandBackRecord record = HandBackRecord.of(job, unit(job.variant()));
        assertThat(record.clearances())
                .hasSize(6)
                .allMatch(setting ->
                        setting.accepted() != null || setting.clearance().id().matches("[bd]"));
        assertThat(record.holds()).isNotEmpty();
        assertThat(record.torques()).isNotEmpty();
        assertThat(History.of(job, unit(job.variant()))).hasSize(job.entries().size());
        assertThat(job.entries()).extracting(LogEntry::body).hasAtLeastOneElementOfType(Entry.HandedBack.class);
    }
}
