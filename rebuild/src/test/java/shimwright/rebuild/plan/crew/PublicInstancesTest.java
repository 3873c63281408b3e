package shimwright.rebuild.plan.crew;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.mechanics.outcome.Outcome;

/**
 * Scheduling problems of PSPLIB (R. Kolisch, A. Sprecher 1996, sets j30 and j60) and of ProGen/max (set ubo10) with the
 * published least makespan, as SOURCES.md beside the files names it.
 */
class PublicInstancesTest {
    @ParameterizedTest
    @CsvSource({"j301_1.sm, 43", "j3029_1.sm, 85", "j601_1.sm, 77", "ubo10_psp2.sch, 45"})
    void thePublishedMakespanIsReachedAndProven(String file, int published) throws IOException {
        Project project = ProjectFiles.read(file);
        long began = System.nanoTime();
        Timetable found =
                Crew.least(project, new ConflictLimit(50_000), () -> false).orElseThrow();
        figures(file, "" + published, "" + found.span(), found.proven(), began, found.conflicts());
        assertThat(found.span()).isEqualTo(published);
        assertThat(found.proven()).isTrue();
        assertThat(TimetableCheck.faults(project, found.starts(), found.span())).isEmpty();
    }

    @Test
    void theOnePublishedAsInfeasibleIsRefusedWithTheWaitsThatCannotBeKept() throws IOException {
        Project project = ProjectFiles.read("ubo10_psp1.sch");
        long began = System.nanoTime();
        Outcome<Timetable> found = Crew.least(project, new ConflictLimit(50_000), () -> false);
        figures("ubo10_psp1.sch", "infeasible", "infeasible", !found.isOk(), began, 0);
        // by hand: 7 and 8 together need 12 of the first resource, of which there are 10; 7 takes 5 and 8 takes 7,
        // so one starts 5 after the other or 7 before it
        assertThat(found.refusals()).hasSize(1);
        assertThat(found.refusals().get(0).fact()).contains("7 at most 4 after 8; 8 at most 2 after 7;");
    }

    private static void figures(
            String file, String published, String ours, boolean proven, long began, long conflicts) {
        if (Boolean.getBoolean("shimwright.figures")) {
            double seconds = (System.nanoTime() - began) / 1e9;
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %s | %s | %s | %.2f | %d |%n",
                    file,
                    published,
                    ours,
                    proven ? "yes" : "no",
                    seconds,
                    conflicts);
        }
    }
}
