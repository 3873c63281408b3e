package shimwright.rebuild.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.conformity.Verdict;
import shimwright.rebuild.job.Entry.ClearanceAccepted;
import shimwright.rebuild.job.Entry.PackChosen;

class BasisTest {
    @Property(tries = 100)
    void keptAndTakenUpItIsTheSame(
            @ForAll @DoubleRange(min = -0.06, max = 0.06) double lower,
            @ForAll @DoubleRange(min = 0, max = 1) double room,
            @ForAll @DoubleRange(min = 1, max = 1e6) double nu) {
        Basis basis = new Basis(lower, lower + room, lower + room / 2, nu > 9e5 ? 1.0 / 0 : nu, lower + 1e-4, 0.95);
        assertThat(Basis.of(basis.kept())).contains(basis);
    }

    @Test
    void unlimitedDegreesOfFreedomGoThroughTheText() {
        Basis basis = new Basis(2e-5, 8e-5, 5e-5, Double.POSITIVE_INFINITY, 1.6e-4, 0.95);
        PackChosen chosen =
                new PackChosen("c", "sI", List.of(), 4e-5, 5e-6, 0.97, Verdict.IN, "", List.of(), basis.kept());
        PackChosen read = (PackChosen) EntryCodec.read("PackChosen", EntryCodec.write(chosen));
        assertThat(Basis.of(read.basis())).contains(basis);
    }

    @Test
    void entriesOfOlderProgramsAreReadAndHaveNone() {
        PackChosen chosen = (PackChosen) EntryCodec.read(
                "PackChosen",
                "{\"clearance\":\"c\",\"position\":\"sI\",\"pieces\":[],\"predicted\":0.00004,\"u\":0.000005,"
                        + "\"probability\":0.97,\"verdict\":\"IN\",\"overruledBecause\":\"\",\"working\":[]}");
        assertThat(Basis.of(chosen.basis())).isEmpty();
        ClearanceAccepted accepted = (ClearanceAccepted) EntryCodec.read(
                "ClearanceAccepted",
                "{\"clearance\":\"c\",\"phase\":\"FINAL\",\"value\":0.00004,\"u\":0.000005,\"probability\":0.97,"
                        + "\"verdict\":\"IN\",\"predicted\":0.00004,\"finding\":\"\",\"overruledBecause\":\"\","
                        + "\"working\":[]}");
        assertThat(Basis.of(accepted.basis())).isEmpty();
        assertThat(accepted.value()).isEqualTo(4e-5);
    }

    @Test
    void aPartOfItIsNone() {
        assertThat(Basis.of(Map.of("lower", 0.1, "upper", 0.2))).isEmpty();
    }
}
