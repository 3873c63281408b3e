package shimwright.bench.bundle;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import shimwright.bench.bundle.UnitBundle.BundledPicture;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.PictureStore;
import shimwright.rebuild.job.UnitPicture;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.workbench.PinnedUnit;

/** A bundle as the bytes of one file, both ways: {@code manifest.json}, {@code unit.yaml} and {@code pictures/HASH.jpg}. */
public final class BundleFile {
    private static final String MANIFEST = "manifest.json";
    private static final String UNIT = "unit.yaml";
    private static final String PICTURES = "pictures/";
    private static final Pattern NAMES =
            Pattern.compile("manifest\\.json|unit\\.yaml|pictures/[0-9a-f]{64}\\.(jpg|png)");

    /** The longest unit file that the acts take. */
    private static final int LONGEST_UNIT = 190_000;

    private BundleFile() {}

    /** What was read of a bundle that is sound. */
    @SuppressWarnings("ArrayRecordComponent") // the bytes are what is kept
    public record Read(UnitBundle bundle, UnitType unit, byte[] manifest) {}

    /** The bytes; the same bundle gives the same ones. */
    public static byte[] write(UnitBundle bundle) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        List<BundleManifest.Row> rows = new ArrayList<>();
        files.put(MANIFEST, new byte[0]);
        files.put(UNIT, bundle.file());
        for (BundledPicture picture : bundle.pictures()) {
            String hash = PinnedUnit.hash(picture.content());
            if (files.put(PICTURES + hash + (isPng(picture.content()) ? ".png" : ".jpg"), picture.content()) == null) {
                rows.add(new BundleManifest.Row(hash, picture.about(), picture.caption()));
            }
        }
        files.put(
                MANIFEST,
                new BundleManifest(
                                bundle.type(),
                                bundle.name(),
                                PinnedUnit.hash(bundle.file()),
                                bundle.from(),
                                rows,
                                bundle.history())
                        .json());
        return ZipFolder.pack(files);
    }

    /**
     * Reads a bundle from anybody.
     *
     * @param packed its bytes
     * @param pictures says which pictures may be kept
     * @return refused with every fault: of the zip, of what it says of itself, of the unit file and of each picture
     */
    public static Outcome<Read> read(byte[] packed, PictureStore pictures) {
        if (packed.length > UnitBundle.LARGEST) {
            return Outcome.refused(fault(
                    "bundle",
                    "it is larger than " + UnitBundle.LARGEST / (1024 * 1024) + " MB",
                    "Have it saved with fewer pictures"));
        }
        return ZipFolder.unpack(packed, NAMES).flatMap(files -> new Reader(files, pictures).bundle());
    }

    private static Refusal fault(String place, String fact, String hint) {
        return new Refusal("file", place, fact, hint);
    }

    private static boolean isPng(byte[] content) {
        return content.length > 1 && content[0] == (byte) 0x89 && content[1] == 'P';
    }

    /** Looks through the files of a bundle, all of them, before anything is said of it. */
    private static final class Reader {
        private final Map<String, byte[]> files;
        private final PictureStore pictures;
        private final List<Refusal> faults = new ArrayList<>();

        Reader(Map<String, byte[]> files, PictureStore pictures) {
            this.files = files;
            this.pictures = pictures;
        }

        Outcome<Read> bundle() {
            Optional<BundleManifest> manifest = file(MANIFEST).flatMap(json -> good(BundleManifest.read(json)));
            Optional<UnitType> unit = file(UNIT).flatMap(this::unit);
            manifest.ifPresent(said -> whole(said, unit));
            if (!faults.isEmpty() || manifest.isEmpty() || unit.isEmpty()) {
                return Outcome.refused(faults);
            }
            List<BundledPicture> shown = manifest.get().pictures().stream()
                    .map(row -> new BundledPicture(picture(row).orElseThrow(), row.about(), row.caption()))
                    .toList();
            UnitBundle bundle = new UnitBundle(
                    unit.get().id(),
                    manifest.get().name(),
                    file(UNIT).orElseThrow(),
                    shown,
                    manifest.get().from(),
                    manifest.get().history());
            return Outcome.ok(new Read(bundle, unit.get(), file(MANIFEST).orElseThrow()));
        }

        private <T> Optional<T> good(Outcome<T> outcome) {
            faults.addAll(outcome.refusals());
            return outcome.isOk() ? Optional.of(outcome.orElseThrow()) : Optional.empty();
        }

        private Optional<byte[]> file(String name) {
            byte[] content = files.get(name);
            if (content == null
                    && faults.stream().noneMatch(known -> known.place().equals(name))) {
                faults.add(fault(name, "it is not in the bundle", "Have the bundle saved again"));
            }
            return Optional.ofNullable(content);
        }

        private Optional<UnitType> unit(byte[] content) {
            if (content.length > LONGEST_UNIT) {
                faults.add(fault(UNIT, "it has " + content.length + " bytes", "Keep it under " + LONGEST_UNIT));
                return Optional.empty();
            }
            return good(UnitFiles.read(UNIT, content).outcome());
        }

        private void whole(BundleManifest said, Optional<UnitType> unit) {
            byte[] content = files.get(UNIT);
            if (content != null && !said.file().equals(PinnedUnit.hash(content))) {
                faults.add(changed(UNIT));
            }
            unit.filter(type -> !type.id().equals(said.type()))
                    .ifPresent(type -> faults.add(fault(
                            "manifest",
                            "it speaks of " + said.type() + ", but the unit file is one of " + type.id(),
                            "Have the bundle saved again")));
            Set<String> places = new HashSet<>(Set.of(UnitPicture.UNIT));
            unit.ifPresent(type -> {
                type.items().forEach(item -> places.add(UnitPicture.item(item.id())));
                type.steps().forEach(step -> places.add(UnitPicture.step(step.id())));
            });
            Set<String> named = new HashSet<>();
            for (BundleManifest.Row row : said.pictures()) {
                if (!named.add(row.sha256())) {
                    faults.add(fault("picture " + row.sha256(), "it is named twice", "Have the bundle saved again"));
                }
                check(row, unit.isPresent() ? places : Set.of(row.about()));
            }
            files.keySet().stream()
                    .filter(name -> name.startsWith(PICTURES) && !named.contains(hash(name)))
                    .forEach(name ->
                            faults.add(fault(name, "the manifest does not name it", "Have the bundle saved again")));
        }

        private static String hash(String name) {
            return name.substring(PICTURES.length(), name.lastIndexOf('.'));
        }

        private Optional<byte[]> picture(BundleManifest.Row row) {
            return Optional.ofNullable(files.get(PICTURES + row.sha256() + ".jpg"))
                    .or(() -> Optional.ofNullable(files.get(PICTURES + row.sha256() + ".png")));
        }

        private void check(BundleManifest.Row row, Set<String> places) {
            String name = "picture " + row.sha256();
            Optional<byte[]> content = picture(row);
            if (content.isEmpty()) {
                faults.add(fault(name, "it is not in the bundle", "Have the bundle saved again"));
            } else if (!row.sha256().equals(PinnedUnit.hash(content.get()))) {
                faults.add(changed(name));
            } else {
                pictures.check(name, content.get()).refusals().stream()
                        .map(why -> why.placed("file", name))
                        .forEach(faults::add);
            }
            if (!places.contains(row.about())) {
                faults.add(fault(
                        name,
                        "it is said to show \"" + row.about() + "\", which the unit file does not have",
                        "Have the bundle saved again"));
            }
        }

        private static Refusal changed(String place) {
            return fault(place, "it is not what was saved: its hash is another", "Have the bundle saved again");
        }
    }
}
