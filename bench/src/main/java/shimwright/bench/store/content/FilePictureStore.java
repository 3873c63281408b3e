package shimwright.bench.store.content;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shimwright.bench.store.disk.Disk;
import shimwright.bench.store.log.Fault;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.PictureStore;

/** Pictures as files of the data folder. */
public final class FilePictureStore implements PictureStore {
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
    public static FilePictureStore over(Path folder) {
        List<String> endings =
                Stream.of(Image.Type.values()).map(type -> "." + type.ending).toList();
        return new FilePictureStore(new HashedFiles(folder, endings));
    }

    @Override
    public Outcome<Picture> keep(String name, byte[] content) {
        Outcome<CheckedPicture> checked = CheckedPicture.of(name, content);
        if (!(checked instanceof Outcome.Ok<CheckedPicture> ok)) {
            return Outcome.refused(checked.refusals());
        }
        Picture picture = ok.value().picture();
        try {
            files.keep(picture.hash(), "." + ok.value().ending(), content);
            return Outcome.ok(picture);
        } catch (IOException failed) {
            return Outcome.refused(List.of(
                    Refusal.at(name, "not kept: " + Disk.why(failed), "Put that right and send the picture again")));
        }
    }

    @Override
    public Outcome<Picture> check(String name, byte[] content) {
        return CheckedPicture.of(name, content).map(CheckedPicture::picture);
    }

    /** Where a kept picture lies; empty when there is none of this hash. */
    public Optional<Path> file(String hash) {
        return files.file(hash);
    }

    @Override
    public Optional<byte[]> find(String hash) {
        return files.find(hash);
    }
}
