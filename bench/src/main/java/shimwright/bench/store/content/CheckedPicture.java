package shimwright.bench.store.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shimwright.bench.store.disk.Disk;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.PictureStore.Picture;

/**
 * A picture that may be kept.
 *
 * @param picture what it is
 * @param ending what its file's name ends in
 */
public record CheckedPicture(Picture picture, String ending) {
    private static final int MAX_BYTES = 12 * 1024 * 1024;
    private static final long MAX_PIXELS = 50_000_000;

    /** Refused: what is neither PNG nor JPEG, is damaged, or too large. */
    public static Outcome<CheckedPicture> of(String name, byte[] content) {
        Optional<Image.Type> type = Image.type(content);
        if (type.isEmpty()) {
            String what = Image.what(content);
            return Outcome.refused(Refusal.at(
                    name,
                    content.length == 0
                            ? "the file is empty"
                            : "the file is " + what + ", not a picture that is kept here",
                    what.contains("HEIC")
                            ? "Set the camera to JPEG (often called most compatible) and take it again"
                            : "Take a PNG or JPEG"));
        }
        Optional<Image.Size> size = Image.size(type.get(), content);
        List<Refusal> faults = faults(name, content, type.get(), size);
        if (!faults.isEmpty() || size.isEmpty()) {
            return Outcome.refused(faults);
        }
        return Outcome.ok(new CheckedPicture(
                new Picture(
                        Disk.hash(content),
                        type.get().mediaType,
                        content.length,
                        size.get().width(),
                        size.get().height()),
                type.get().ending));
    }

    private static List<Refusal> faults(String name, byte[] content, Image.Type type, Optional<Image.Size> size) {
        List<Refusal> faults = new ArrayList<>();
        if (content.length > MAX_BYTES) {
            faults.add(Refusal.at(
                    name,
                    String.format(
                            Locale.ROOT,
                            "the picture has %.1f MB, more than 12 MB",
                            content.length / (1024.0 * 1024.0)),
                    "Take it at a lower resolution"));
        }
        if (size.isEmpty()) {
            faults.add(Refusal.at(
                    name,
                    "the file begins like a " + type.word + " but is damaged or cut short",
                    "Send it again, or take the picture anew"));
        } else if (size.get().pixels() > MAX_PIXELS) {
            faults.add(Refusal.at(
                    name,
                    "the picture is %d by %d pixels, more than 50 million"
                            .formatted(size.get().width(), size.get().height()),
                    "Take it at a lower resolution"));
        }
        return faults;
    }
}
