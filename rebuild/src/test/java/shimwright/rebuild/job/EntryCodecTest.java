package shimwright.rebuild.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.job.Entry.JobOpened;
import shimwright.rebuild.job.Entry.NoteMade;
import shimwright.rebuild.job.Entry.RoundRead;
import shimwright.rebuild.job.Entry.ShimAdded;
import shimwright.rebuild.unit.model.Step.Phase;

class EntryCodecTest {
    @Test
    void whatIsWrittenIsReadBack() {
        Entry round =
                new RoundRead("input-end-play", Phase.TRIAL, "dial-1", List.of(0.00024, 1e-300), "0.24 / \"a\" µ 😀\n");
        assertThat(EntryCodec.read(EntryCodec.typeOf(round), EntryCodec.write(round)))
                .isEqualTo(round);
    }

    @Test
    void theTypesNameIsTheRecordsName() {
        assertThat(EntryCodec.typeOf(new NoteMade("job", "wet"))).isEqualTo("NoteMade");
        assertThat(EntryCodec.knows("NoteMade")).isTrue();
        assertThat(EntryCodec.knows("ShimAdded")).isTrue();
        assertThat(EntryCodec.knows("PieceIn")).isFalse();
    }

    @Test
    void textListsAndMapsThatCameLaterAreEmptyInOlderEntries() {
        assertThat(EntryCodec.read("JobOpened", "{\"number\":\"7\"}"))
                .isEqualTo(new JobOpened("7", "", "", "", List.of(), Map.of(), "", ""));
    }

    @Test
    void whatANewerProgramAddedIsLetPass() {
        assertThat(EntryCodec.read("NoteMade", "{\"about\":\"job\",\"text\":\"wet\",\"colour\":3}"))
                .isEqualTo(new NoteMade("job", "wet"));
    }

    @Test
    void aMissingNumberOrChoiceIsNeverInvented() {
        assertThatThrownBy(() -> EntryCodec.read("ShimAdded", "{\"piece\":\"s1\",\"readings\":[0.001]}"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("the log holds a broken entry of type ShimAdded");
        assertThatThrownBy(() -> EntryCodec.read("RoundRead", "{\"clearance\":\"input\",\"values\":[0.001]}"))
                .isInstanceOf(IllegalStateException.class);
    }

    @Test
    void aNumberThatIsNoneDoesNotGetThrough() {
        String text = EntryCodec.write(new ShimAdded("s1", "input", "1.05", List.of(Double.NaN), 1e-6));
        assertThatThrownBy(() -> EntryCodec.read("ShimAdded", text)).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void anUnknownTypeAndABrokenTextAreSaid() {
        assertThatThrownBy(() -> EntryCodec.read("Danced", "{}"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("unknown type Danced");
        assertThatThrownBy(() -> EntryCodec.read("NoteMade", "{\"about\":"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("the log holds a broken entry of type NoteMade");
    }
}
