package shimwright.rebuild.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.IntakeActs;
import shimwright.rebuild.act.PictureActs;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.Mark;
import shimwright.rebuild.job.Entry.MarkShape;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.record.HandBackRecord;
import shimwright.rebuild.record.History;

/** Marks on pictures: kept beside them, read strictly, struck alone. */
class MarkPictureTest {
    private ActBench bench = open();

    @BeforeEach
    void afresh() {
        bench = open();
    }

    private static ActBench open() {
        return new ActBench(
                DemoUnit.A, DemoUnit.type(), new DemoWorkbench(DemoUnit.A).shopEntries(), DemoWorkbench.opening());
    }

    private Said<Entry.PictureAdded> picture(String about, int letter) {
        bench.perform(new IntakeActs.AddPicture(
                        about, Integer.toHexString(letter).repeat(64), "image/jpeg", 5, ""))
                .orElseThrow();
        List<Said<Entry.PictureAdded>> all = HandBackRecord.pictures(bench.job());
        return all.get(all.size() - 1);
    }

    private List<Refusal> marks(String on, String... marks) {
        return bench.perform(new PictureActs.MarkPicture(on, 0.75, List.of(marks), "crack at the root"))
                .refusals();
    }

    @Test
    void marksLieBesideThePictureAndAreStruckWithoutIt() {
        Said<Entry.PictureAdded> picture = picture("part sliding_5", 10);
        assertThat(marks(picture.id(), "arrow 0.1 0.2 0.5 0.6", "ring 0.5 0.5 0.7 0.8"))
                .isEmpty();
        assertThat(marks(picture.id(), "text 0.3 0.4 crack 2.5 mm long", "line 0 0 0.5 1 1 1"))
                .isEmpty();
        List<Said<Entry.PictureMarked>> drawn = bench.job().marksOn(picture);
        assertThat(drawn.get(0).what().marks())
                .containsExactly(
                        new Mark(MarkShape.ARROW, List.of(0.1, 0.2, 0.5, 0.6), ""),
                        new Mark(MarkShape.RING, List.of(0.5, 0.5, 0.7, 0.8), ""));
        assertThat(drawn.get(1).what().marks().get(0))
                .isEqualTo(new Mark(MarkShape.TEXT, List.of(0.3, 0.4), "crack 2.5 mm long"));
        assertThat(HandBackRecord.of(bench.job(), DemoUnit.A).history())
                .extracting(History.Line::words)
                .contains("Drawn on a picture: arrow, ring, crack at the root")
                .anyMatch(words -> words.contains("text “crack 2.5 mm long”, line"));
        bench.perform(new IntakeActs.Strike(drawn.get(0).id(), "the wrong tooth"))
                .orElseThrow();
        assertThat(bench.job().marksOn(picture))
                .extracting(Said::id)
                .containsExactly(drawn.get(1).id());
        assertThat(bench.job().picture(picture.id())).isPresent();
        bench.perform(new IntakeActs.Strike(picture.id(), "another box")).orElseThrow();
        assertThat(marks(picture.id(), "ring 0.1 0.1 0.2 0.2"))
                .extracting(Refusal::key)
                .containsExactly("on");
    }

    @ParameterizedTest
    @CsvSource({
        "circle 0.1 0.2 0.3 0.4, marks[0]",
        "arrow, marks[0]",
        "arrow 0.1 0.2 0.3, marks[0]",
        "ring 0.1 0.2 0.3 1.4, marks[0]",
        "line 0.1 0.2, marks[0]",
        "text 0.1 0.2, marks[0]",
        "arrow 0.1 0.2 0.3 0.4 here, marks[0]",
    })
    void whatIsNoMarkIsRefused(String mark, String key) {
        assertThat(marks(picture("part sliding_5", 11).id(), mark))
                .extracting(Refusal::key)
                .containsExactly(key);
    }
}
