package shimwright.bench.bundle;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shimwright.bench.bundle.UnitBundle.BundledPicture;
import shimwright.bench.bundle.UnitBundle.PastChange;
import shimwright.bench.store.SamplePictures;
import shimwright.bench.store.content.FilePictureStore;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.PictureStore;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.UnitType;

/** A bundle goes out and comes in the same, and one that somebody tampered with is refused with every fault of it. */
class BundleFileTest {
    private static final byte[] EXAMPLE = UnitFiles.example().getBytes(StandardCharsets.UTF_8);
    private static final UnitType UNIT =
            UnitFiles.read("unit.yaml", EXAMPLE).outcome().orElseThrow();
    private static PictureStore store;

    @BeforeAll
    static void open() throws IOException {
        store = FilePictureStore.open(Files.createTempDirectory("shimwright-bundle-"))
                .orElseThrow();
    }

    private static UnitBundle bundle(long seed) {
        Random random = new Random(seed);
        List<BundledPicture> pictures = new ArrayList<>();
        for (int n = random.nextInt(4); n > 0; n--) {
            String item = UNIT.items().get(random.nextInt(UNIT.items().size())).id();
            pictures.add(new BundledPicture(
                    SamplePictures.noise(random, 1 + random.nextInt(40), 1 + random.nextInt(40)),
                    random.nextBoolean() ? "item " + item : "unit",
                    random.nextBoolean() ? "" : "as it lay, <b>ümlaut</b> " + n));
        }
        List<PastChange> past = random.nextBoolean()
                ? List.of()
                : List.of(new PastChange("2026-11-29T10:00:00Z", "Mo", "what it weighs", "scale", List.of("mass: 38")));
        return new UnitBundle(UNIT.id(), "a unit", EXAMPLE, pictures, random.nextBoolean() ? "" : "North Lane", past);
    }

    private static List<String> faults(byte[] packed) {
        Outcome<BundleFile.Read> read = BundleFile.read(packed, store);
        return read.refusals().stream().map(Refusal::sentence).toList();
    }

    private static Map<String, byte[]> files(byte[] packed) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(packed))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                files.put(entry.getName(), zip.readAllBytes());
            }
        }
        return files;
    }

    private static Map<String, byte[]> sound() throws IOException {
        return files(BundleFile.write(new UnitBundle(
                UNIT.id(),
                "a unit",
                EXAMPLE,
                List.of(new BundledPicture(SamplePictures.noise(new Random(1), 8, 8), "unit", "")),
                "",
                List.of())));
    }

    @Test
    void whatGoesOutComesInTheSameAndGoesOutTheSame() {
        for (long seed = 0; seed < 12; seed++) {
            byte[] out = BundleFile.write(bundle(seed));
            BundleFile.Read read = BundleFile.read(out, store).orElseThrow();
            assertThat(BundleFile.write(read.bundle())).as("seed %d", seed).isEqualTo(out);
            assertThat(read.bundle().file()).isEqualTo(EXAMPLE);
            assertThat(read.bundle().history()).isEqualTo(bundle(seed).history());
        }
    }

    @Test
    void nothingOfItIsReadPastOneByte() throws IOException {
        byte[] out = BundleFile.write(bundle(3));
        Random random = new Random(5);
        for (int n = 0; n < 300; n++) {
            byte[] bent = out.clone();
            bent[random.nextInt(bent.length)] ^= (byte) (1 << random.nextInt(8));
            // either it is told, or what is read is the same: dates and the list at the end of a zip are not read
            if (BundleFile.read(bent, store) instanceof Outcome.Ok<BundleFile.Read> ok) {
                assertThat(BundleFile.write(ok.value().bundle())).isEqualTo(out);
            }
        }
        for (int length = 0; length < out.length; length += 997) {
            byte[] cut = java.util.Arrays.copyOf(out, length);
            if (BundleFile.read(cut, store) instanceof Outcome.Ok<BundleFile.Read> ok) {
                assertThat(BundleFile.write(ok.value().bundle())).isEqualTo(out);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../../etc/passwd",
                "/etc/passwd",
                "pictures/../../x.jpg",
                "..\\x.jpg",
                "C:\\x.jpg",
                "pictures/x.jpg",
                "pictures/0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef.svg",
                "MANIFEST.JSON",
                "unit.yaml/x"
            })
    void aNameThatIsNoneOfItsOwnIsRefused(String name) throws IOException {
        Map<String, byte[]> files = sound();
        files.put(name, new byte[] {1});
        assertThat(faults(ZipFolder.pack(files))).hasSize(1).allMatch(words -> words.contains(name));
    }

    @Test
    void oneThatUnpacksToMoreThanThereIsRoomForIsLetGoEarly() throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(packed)) {
            zip.putNextEntry(new ZipEntry("unit.yaml"));
            byte[] block = new byte[1024 * 1024];
            for (int n = 0; n < 400; n++) {
                zip.write(block);
            }
        }
        assertThat(packed.size()).isLessThan(1024 * 1024);
        assertThat(faults(packed.toByteArray())).hasSize(1).allMatch(words -> words.contains("unpacks to more than"));
        // also where its name is none that is kept
        ByteArrayOutputStream other = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(other)) {
            zip.putNextEntry(new ZipEntry("x"));
            byte[] block = new byte[1024 * 1024];
            for (int n = 0; n < 40; n++) {
                zip.write(block);
            }
        }
        assertThat(faults(other.toByteArray())).anyMatch(words -> words.contains("unpacks to more than"));
    }

    @Test
    void manyFilesTwiceTheSameAndNoZipAreRefused() throws IOException {
        Map<String, byte[]> many = new LinkedHashMap<>();
        for (int n = 0; n <= ZipFolder.ENTRIES; n++) {
            many.put("pictures/" + "%064x".formatted(n) + ".png", new byte[0]);
        }
        assertThat(faults(ZipFolder.pack(many))).allMatch(words -> words.contains("more than"));
        Map<String, byte[]> like = sound();
        like.put("unit.yamx", EXAMPLE);
        byte[] twice = new String(ZipFolder.pack(like), StandardCharsets.ISO_8859_1)
                .replace("unit.yamx", "unit.yaml")
                .getBytes(StandardCharsets.ISO_8859_1);
        assertThat(faults(twice)).hasSize(1).allMatch(words -> words.contains("twice"));
        assertThat(faults(new byte[0])).hasSize(1);
        assertThat(faults(EXAMPLE)).hasSize(1).allMatch(words -> words.contains("no zip"));
        assertThat(faults(new byte[UnitBundle.LARGEST + 1])).hasSize(1);
        byte[] locked = ZipFolder.pack(sound());
        locked[6] |= 1;
        assertThat(faults(locked)).hasSize(1).allMatch(words -> words.contains("locked"));
    }

    @Test
    void everyFaultIsToldAtOnce() throws IOException {
        Map<String, byte[]> files = sound();
        String picture = files.keySet().stream()
                .filter(name -> name.startsWith("pictures/"))
                .findFirst()
                .orElseThrow();
        files.put(picture, "<svg onload=alert(1)>".getBytes(StandardCharsets.UTF_8));
        files.put("unit.yaml", "id: [".getBytes(StandardCharsets.UTF_8));
        files.put("pictures/" + "0".repeat(64) + ".png", new byte[0]);
        assertThat(faults(ZipFolder.pack(files)))
                .anyMatch(words -> words.contains(picture.substring(9, 20)) && words.contains("hash is another"))
                .anyMatch(words -> words.contains("unit.yaml") && words.contains("hash is another"))
                .anyMatch(words -> words.contains("unit.yaml") && words.contains("line"))
                .anyMatch(words -> words.contains("0000") && words.contains("does not name it"));
    }

    @Test
    void aFileThatIsNoPictureIsRefusedThoughItsHashHolds() {
        byte[] film = "RIFF0000WAVE".getBytes(StandardCharsets.UTF_8);
        byte[] out = BundleFile.write(new UnitBundle(
                UNIT.id(), "a unit", EXAMPLE, List.of(new BundledPicture(film, "unit", "")), "", List.of()));
        assertThat(faults(out)).hasSize(1).allMatch(words -> words.contains("a sound"));
    }

    @Test
    void aPictureOfAPartThatTheFileDoesNotHaveIsRefused() {
        byte[] out = BundleFile.write(new UnitBundle(
                UNIT.id(),
                "a unit",
                EXAMPLE,
                List.of(new BundledPicture(SamplePictures.noise(new Random(2), 4, 4), "item nobody", "")),
                "",
                List.of()));
        assertThat(faults(out)).hasSize(1).allMatch(words -> words.contains("item nobody"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[]",
                "{}",
                "{\"bundle\": 2}",
                "{\"bundle\": \"1\"}",
                "{\"bundle\": 1, \"type\": 5, \"file\": \"\"}",
                "{\"bundle\": 1, \"pictures\": {}}",
                "{\"bundle\": 1, \"history\": \"none\"}",
                "{\"bundle\": 1, \"from\": \"a\\u0007b\"}",
                "{\"bundle\": 1, \"pictures\": [1, null, {}]}",
                "{\"bundle\": 1, \"history\": [{\"changes\": [1]}]}",
                "nothing"
            })
    void aManifestOfAnotherMakingIsRefused(String json) throws IOException {
        Map<String, byte[]> files = sound();
        files.put("manifest.json", json.getBytes(StandardCharsets.UTF_8));
        assertThat(faults(ZipFolder.pack(files))).isNotEmpty();
    }

    @Test
    void oneWithoutItsManifestOrUnitSaysSo() throws IOException {
        Map<String, byte[]> files = sound();
        files.remove("manifest.json");
        assertThat(faults(ZipFolder.pack(files))).anyMatch(words -> words.contains("manifest.json"));
        Map<String, byte[]> others = sound();
        others.remove("unit.yaml");
        assertThat(faults(ZipFolder.pack(others))).anyMatch(words -> words.contains("unit.yaml"));
    }
}
