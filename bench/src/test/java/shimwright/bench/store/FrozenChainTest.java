package shimwright.bench.store;

import static org.assertj.core.api.Assertions.assertThat;
import static shimwright.bench.store.FrozenStore.text;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import shimwright.bench.store.log.Chain;
import shimwright.rebuild.job.Head;
import tools.jackson.databind.JsonNode;

/** The chains of a log that an earlier release wrote, entry by entry. */
class FrozenChainTest {
    @Test
    void everyHashFollowsFromTheOneBefore() throws IOException {
        String whole = Head.EMPTY.hash();
        Map<String, String> streams = new HashMap<>();
        for (JsonNode line : FrozenStore.lines("0.1.0")) {
            List<String> texts = Stream.of("stream", "id", "at", "by_whom", "type", "body")
                    .map(name -> text(line, name))
                    .toList();
            whole = Chain.next(whole, 1, texts);
            assertThat(whole).isEqualTo(text(line, "hash"));
            String stream = text(line, "stream");
            String next = Chain.next(streams.getOrDefault(stream, Head.EMPTY.hash()), 1, texts);
            assertThat(next).isEqualTo(text(line, "stream_hash"));
            streams.put(stream, next);
        }
        assertThat(streams).hasSize(3);
    }
}
