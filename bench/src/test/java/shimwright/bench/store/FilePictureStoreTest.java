package shimwright.bench.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.bench.store.content.FilePictureStore;
import shimwright.bench.store.content.Image;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.PictureStore.Picture;

class FilePictureStoreTest {
    private final Path folder;
    private FilePictureStore store;

    FilePictureStoreTest(@TempDir Path work) {
        this.folder = work.resolve("data/pictures");
        this.store = FilePictureStore.open(folder).orElseThrow();
    }

    @BeforeEach
    void afterARestart() {
        store = FilePictureStore.open(folder).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"png, 33, 21, image/png", "jpg, 33, 21, image/jpeg", "png, 1, 1, image/png", "jpg, 700, 2, image/jpeg"})
    void picturesComeBackAsTheyWereWithTheSizeTheJdksReaderSees(String format, int width, int height, String type)
            throws IOException {
        byte[] content = SamplePictures.byLibrary(format, width, height);
        Picture picture = store.keep("a." + format, content).orElseThrow();
        var reference = ImageIO.read(new ByteArrayInputStream(content));
        assertThat(picture.width()).isEqualTo(reference.getWidth()).isEqualTo(width);
        assertThat(picture.height()).isEqualTo(reference.getHeight()).isEqualTo(height);
        assertThat(picture.mediaType()).isEqualTo(type);
        assertThat(picture.size()).isEqualTo(content.length);
        assertThat(FilePictureStore.open(folder).orElseThrow().find(picture.hash()))
                .contains(content);
    }

    @Test
    void theNameIsTheHashInTwoLevelsOfFolders() throws IOException {
        Picture picture =
                store.keep("a.png", SamplePictures.byLibrary("png", 3, 3)).orElseThrow();
        Path file = folder.resolve(picture.hash().substring(0, 2))
                .resolve(picture.hash().substring(2, 4))
                .resolve(picture.hash() + ".png");
        Process sum = new ProcessBuilder("sha256sum", file.toString()).start();
        assertThat(new String(sum.getInputStream().readAllBytes(), StandardCharsets.US_ASCII))
                .startsWith(picture.hash());
        assertThat(folder.resolve("part")).isEmptyDirectory();
    }

    @Test
    void theSamePictureTwiceIsOneFileAndADamagedOneIsReplaced() throws IOException {
        byte[] content = SamplePictures.byLibrary("jpg", 9, 9);
        Picture first = store.keep("a.jpg", content).orElseThrow();
        assertThat(store.keep("b.jpg", content).orElseThrow()).isEqualTo(first);
        Path file = store.file(first.hash()).orElseThrow();
        Files.write(file, Arrays.copyOf(content, content.length - 3));
        assertThat(store.find(first.hash())).isEmpty();
        store.keep("a.jpg", content).orElseThrow();
        assertThat(store.find(first.hash())).contains(content);
    }

    @Test
    void whatWasBeingWrittenWhenTheProgramDiedIsThrownAway() throws IOException {
        Files.writeString(folder.resolve("part/half"), "half a picture");
        FilePictureStore.open(folder).orElseThrow();
        assertThat(folder.resolve("part")).isEmptyDirectory();
    }

    @ParameterizedTest
    @CsvSource({
        "%PDF-1.7 x, a PDF",
        "GIF89a, a GIF",
        "RIFF1234WEBPVP8, a WebP picture",
        "1234ftypheic, a HEIC picture",
        "1234ftypisom, a film",
        "BM12, a BMP picture",
        "'II*\0', a TIFF or raw picture",
        "'PK\u0003\u0004', a ZIP archive or office document",
        "Dear customer, text",
        "<svg xmlns='x'/>, text",
        "'\u0001\u00ff', of a kind not known here",
        "'\u00ff\u00d8', of a kind not known here"
    })
    void anotherFileIsRefusedWithWhatItIs(String content, String what) {
        Outcome<Picture> refused = store.keep("cover.png", content.getBytes(StandardCharsets.ISO_8859_1));
        assertThat(refused.refusals())
                .extracting(Refusal::place, Refusal::fact)
                .containsExactly(tuple("cover.png", "the file is " + what + ", not a picture that is kept here"));
    }

    @Test
    void anEmptyFileIsRefused() {
        assertThat(store.keep("cover.png", new byte[0]).refusals())
                .extracting(Refusal::sentence)
                .containsExactly("cover.png: the file is empty. Take a PNG or JPEG.");
    }

    @Test
    void aPictureCutShortAnywhereIsRefused() throws IOException {
        for (String format : List.of("png", "jpg")) {
            byte[] content = SamplePictures.byLibrary(format, 40, 30);
            for (int length = 8; length < content.length; length++) {
                assertThat(store.keep("a", Arrays.copyOf(content, length)).isOk())
                        .as(format + " cut to " + length)
                        .isFalse();
            }
        }
    }

    @Test
    void aBitTurnedInAPngIsSeen() throws IOException {
        byte[] content = SamplePictures.byLibrary("png", 40, 30);
        for (int at = 0; at < content.length; at++) {
            byte[] other = content.clone();
            other[at] ^= 4;
            assertThat(store.keep("a", other).isOk()).as("byte " + at).isFalse();
        }
    }

    @Test
    void bytesTurnedInAJpegNeverBreakTheProgram() throws IOException {
        byte[] content = SamplePictures.byLibrary("jpg", 40, 30);
        Random random = new Random(3);
        for (int i = 0; i < 2000; i++) {
            byte[] other = content.clone();
            for (int n = random.nextInt(4); n >= 0; n--) {
                other[3 + random.nextInt(content.length - 3)] = (byte) random.nextInt();
            }
            assertThat(Image.size(Image.Type.JPEG, other))
                    .satisfiesAnyOf(
                            size -> assertThat(size).isEmpty(),
                            size -> assertThat(size.orElseThrow().pixels()).isPositive());
        }
    }

    @Test
    void aPictureThatWouldUnpackHugeIsRefusedByItsHeader() {
        assertThat(store.keep("a.png", SamplePictures.png(50_000, 50_000, new byte[20]))
                        .refusals())
                .extracting(Refusal::sentence)
                .containsExactly("a.png: the picture is 50000 by 50000 pixels, more than 50 million."
                        + " Take it at a lower resolution.");
    }

    @Test
    void allFaultsOfAPictureComeBackAtOnce() {
        byte[] packed = new byte[13 * 1024 * 1024];
        assertThat(store.keep("a.png", SamplePictures.png(50_000, 50_000, packed))
                        .refusals())
                .extracting(Refusal::fact)
                .containsExactly(
                        "the picture has 13.0 MB, more than 12 MB",
                        "the picture is 50000 by 50000 pixels, more than 50 million");
    }

    @Test
    void nothingOutsideTheFolderIsFound() throws IOException {
        Files.writeString(folder.resolveSibling("secret"), "x");
        assertThat(store.find("../secret")).isEmpty();
        assertThat(store.find("")).isEmpty();
        assertThat(store.find("0".repeat(64))).isEmpty();
    }
}
