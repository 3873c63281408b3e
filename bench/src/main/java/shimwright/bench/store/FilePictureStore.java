package shimwright.bench.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.PictureStore;

/** Pictures as files of the data folder. */
public final class FilePictureStore implements PictureStore {
    private static final int MAX_BYTES = 12 * 1024 * 1024;
    private static final long MAX_PIXELS = 50_000_000;

    private final HashedFiles files;

    private FilePictureStore(HashedFiles files) {
        this.files = files;
    }

    /** Opens or makes the folder and throws away what was being written when the program last died. */
    public static Outcome<FilePictureStore> open(Path folder) {
        FilePictureStore store = over(folder);
        try {
            store.files.begin();
            return Outcome.ok(store);
        } catch (IOException failed) {
            return Outcome.refused(List.of(Fault.notWritable(folder, Disk.why(failed))));
        }
    }

    /** The same for finding only: makes and removes nothing. */
    static FilePictureStore over(Path folder) {
        List<String> endings =
                Stream.of(Image.Type.values()).map(type -> "." + type.ending).toList();
        return new FilePictureStore(new HashedFiles(folder, endings));
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
            files.keep(picture.hash(), "." + type.get().ending, content);
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

    /** Where a kept picture lies; empty when there is none of this hash. */
    Optional<Path> file(String hash) {
        return files.file(hash);
    }

    @Override
    public Optional<byte[]> find(String hash) {
        return files.find(hash);
    }
}
