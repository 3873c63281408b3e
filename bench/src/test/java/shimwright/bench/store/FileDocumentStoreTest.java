package shimwright.bench.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.store.content.FileDocumentStore;
import shimwright.mechanics.outcome.Refusal;

class FileDocumentStoreTest {
    // SHA-256 of "abc": FIPS 180-2, appendix B.1
    private static final String ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    private final Path folder;
    private final FileDocumentStore store;

    FileDocumentStoreTest(@TempDir Path work) {
        this.folder = work.resolve("documents");
        this.store = FileDocumentStore.open(folder).orElseThrow();
    }

    @Test
    void aDocumentIsFoundByTheHashOfItsContent() {
        byte[] content = "abc".getBytes(StandardCharsets.US_ASCII);
        assertThat(store.keep("unit.yaml", content).orElseThrow()).isEqualTo(ABC);
        assertThat(store.keep("again.yaml", content).orElseThrow()).isEqualTo(ABC);
        assertThat(store.find(ABC)).hasValue(content);
        assertThat(store.find("../../etc/passwd")).isEmpty();
        assertThat(store.find(ABC.replace('b', 'c'))).isEmpty();
    }

    @Test
    void aChangedDocumentIsNotFoundAndIsMendedByKeepingItAgain() throws IOException {
        byte[] content = "abc".getBytes(StandardCharsets.US_ASCII);
        store.keep("unit.yaml", content).orElseThrow();
        Path file = folder.resolve("ba").resolve("78").resolve(ABC);
        Files.writeString(file, "abd");
        assertThat(store.find(ABC)).isEmpty();
        store.keep("unit.yaml", content).orElseThrow();
        assertThat(store.find(ABC)).hasValue(content);
    }

    @Test
    void nothingAndTooMuchAreRefused() {
        assertThat(store.keep("unit.yaml", new byte[0]).refusals())
                .extracting(Refusal::fact)
                .containsExactly("the file is empty");
        assertThat(store.keep("unit.yaml", new byte[(4 << 20) + 1]).refusals())
                .extracting(Refusal::fact)
                .containsExactly("the file has 4.0 MB, more than 4 MB");
    }
}
