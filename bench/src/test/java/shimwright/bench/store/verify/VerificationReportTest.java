package shimwright.bench.store.verify;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Refusal;

/** A report of a shop of ten thousand jobs can be read. */
class VerificationReportTest {
    @Test
    void linesThatDifferByAJobOrAnEntryAloneAreToldAFewTimesAndCounted() {
        VerificationReport.Gathering gathering = new VerificationReport.Gathering();
        gathering.sound("12 entries follow one from the other");
        for (int job = 1; job <= 10_000; job++) {
            gathering.sound("the hand-back of job-" + job + " is as it was signed");
            gathering.remark("Entry " + job + " is dated 2026-11-30T08:00:00Z, before the one in front of it");
            gathering.fault(Refusal.of("log", "the signature of the hand-back of job-" + job + " is gone", ""));
        }
        VerificationReport report = gathering.done();
        assertThat(report.sound())
                .hasSize(7)
                .startsWith("12 entries follow one from the other", "the hand-back of job-1 is as it was signed")
                .endsWith("and 9995 more such lines");
        assertThat(report.remarks()).hasSize(6);
        assertThat(report.faults()).hasSize(10_000);
    }

    @Test
    void aLineIsNotLeftOutForALineThatSaysSo() {
        VerificationReport.Gathering gathering = new VerificationReport.Gathering();
        for (int job = 1; job <= 6; job++) {
            gathering.sound("the hand-back of job-" + job + " is as it was signed");
        }
        assertThat(gathering.done().sound()).hasSize(6).noneMatch(line -> line.contains("more"));
    }
}
