package shimwright.bench.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.PictureStore;

/**
 * Pictures as files named by the SHA-256 of their content, in two levels of folders. A picture without an entry that
 * names it does no harm; it is there when the entry is posted again.
 */
public final class FilePictureStore implements PictureStore {
    private static final int MAX_BYTES = 12 * 1024 * 1024;
    private static final long MAX_PIXELS = 50_000_000;
    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

    private final Path folder;
    private final Path parts;

    private FilePictureStore(Path folder) {
        this.folder = folder;
        this.parts = folder.resolve("part");
    }

    /** Opens or makes the folder and throws away what was being written when the program last died. */
    public static Outcome<FilePictureStore> open(Path folder) {
        FilePictureStore store = over(folder);
        try {
            Disk.makeFolder(store.parts);
            try (Stream<Path> left = Files.list(store.parts)) {
                for (Path part : left.toList()) {
                    Files.delete(part);
                }
            }
            return Outcome.ok(store);
        } catch (IOException failed) {
            return Outcome.refused(List.of(Fault.notWritable(folder, Disk.why(failed))));
        }
    }

    /** The same for finding only: makes and removes nothing. */
    static FilePictureStore over(Path folder) {
        return new FilePictureStore(folder.toAbsolutePath());
    }

    @Override
    public Outcome<Picture> keep(String name, byte[] content) {
        Optional<Image.Type> type = Image.type(content);
        if (type.isEmpty()) {
            String what = Image.what(content);
            return Outcome.refused(
                    name,
                    content.length == 0
                            ? "the file is empty"
                            : "the file is " + what + ", not a picture that is kept here",
                    what.contains("HEIC")
                            ? "Set the camera to JPEG (often called most compatible) and take it again"
                            : "Take a PNG or JPEG");
        }
        Optional<Image.Size> size = Image.size(type.get(), content);
        List<Refusal> faults = faults(name, content, type.get(), size);
        if (!faults.isEmpty() || size.isEmpty()) {
            return Outcome.refused(faults);
        }
        Picture picture = new Picture(
                Disk.hash(content),
                type.get().mediaType,
                content.length,
                size.get().width(),
                size.get().height());
        try {
            write(picture, type.get(), content);
            return Outcome.ok(picture);
        } catch (IOException failed) {
            return Outcome.refused(List.of(
                    new Refusal(name, "not kept: " + Disk.why(failed), "Put that right and send the picture again")));
        }
    }

    private static List<Refusal> faults(String name, byte[] content, Image.Type type, Optional<Image.Size> size) {
        List<Refusal> faults = new ArrayList<>();
        if (content.length > MAX_BYTES) {
            faults.add(new Refusal(
                    name,
                    String.format(
                            Locale.ROOT,
                            "the picture has %.1f MB, more than 12 MB",
                            content.length / (1024.0 * 1024.0)),
                    "Take it at a lower resolution"));
        }
        if (size.isEmpty()) {
            faults.add(new Refusal(
                    name,
                    "the file begins like a " + type.word + " but is damaged or cut short",
                    "Send it again, or take the picture anew"));
        } else if (size.get().pixels() > MAX_PIXELS) {
            faults.add(new Refusal(
                    name,
                    "the picture is %d by %d pixels, more than 50 million"
                            .formatted(size.get().width(), size.get().height()),
                    "Take it at a lower resolution"));
        }
        return faults;
    }

    private void write(Picture picture, Image.Type type, byte[] content) throws IOException {
        Path file = place(picture.hash(), type);
        if (!Files.exists(file) || !picture.hash().equals(Disk.hash(file))) {
            Disk.makeFolder(Disk.parent(file));
            Disk.write(file, parts.resolve(UUID.randomUUID().toString()), content);
        }
        // also for a file that was there: the one who put it there may have died before this
        for (Path names = Disk.parent(file); !names.equals(Disk.parent(folder)); names = Disk.parent(names)) {
            Disk.syncFolder(names);
        }
    }

    private Path place(String hash, Image.Type type) {
        return folder.resolve(hash.substring(0, 2))
                .resolve(hash.substring(2, 4))
                .resolve(hash + "." + type.ending);
    }

    /** Where a kept picture lies; empty when there is none of this hash. */
    Optional<Path> file(String hash) {
        if (!HASH.matcher(hash).matches()) {
            return Optional.empty();
        }
        return Stream.of(Image.Type.values())
                .map(type -> place(hash, type))
                .filter(Files::isRegularFile)
                .findFirst();
    }

    @Override
    public Optional<byte[]> find(String hash) {
        Optional<Path> file = file(hash);
        if (file.isEmpty()) {
            return Optional.empty();
        }
        try {
            byte[] content = Files.readAllBytes(file.get());
            return hash.equals(Disk.hash(content)) ? Optional.of(content) : Optional.empty();
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }
}
