package shimwright.rebuild.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Every type of entry, found by reflection, goes to text and back unchanged. */
class EveryEntryTest {
    @Provide
    Arbitrary<Class<? extends Entry>> types() {
        return Arbitraries.of(permitted());
    }

    private static List<Class<? extends Entry>> permitted() {
        return Stream.of(Entry.OfJob.class, Entry.OfShop.class)
                .flatMap(room -> Arrays.stream(room.getPermittedSubclasses()))
                .<Class<? extends Entry>>map(c -> c.asSubclass(Entry.class))
                .toList();
    }

    @Property(tries = 400)
    void writtenAndReadItIsTheSame(@ForAll("types") Class<? extends Entry> type, @ForAll long seed) {
        Entry entry = RecordSamples.of(type, new Random(seed));
        String text = EntryCodec.write(entry);
        assertThat(EntryCodec.read(EntryCodec.typeOf(entry), text)).isEqualTo(entry);
        assertThat(EntryCodec.write(EntryCodec.read(type.getSimpleName(), text)))
                .isEqualTo(text);
    }

    @Test
    void everyTypeIsKnownByItsName() {
        assertThat(permitted()).hasSizeGreaterThan(20).allMatch(type -> EntryCodec.knows(type.getSimpleName()));
    }
}
