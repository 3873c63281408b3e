package shimwright.bench.store.verify;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import shimwright.bench.store.content.FileDocumentStore;
import shimwright.bench.store.content.FilePictureStore;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.disk.Disk;
import shimwright.bench.store.log.Fault;
import shimwright.mechanics.outcome.Refusal;

/** Pictures and documents of a data folder or backup as a check sees them. */
final class FolderContents implements EntriesCheck.Contents {
    private final DataFolder files;
    private final FilePictureStore pictures;
    private final FileDocumentStore documents;

    FolderContents(DataFolder files) {
        this.files = files;
        this.pictures = FilePictureStore.over(files.pictures());
        this.documents = FileDocumentStore.over(files.documents());
    }

    @Override
    public Optional<byte[]> picture(String hash) {
        return pictures.find(hash);
    }

    @Override
    public Optional<byte[]> document(String hash) {
        return documents.find(hash);
    }

    @Override
    public List<Refusal> strayPictures(Set<String> named) throws IOException {
        return strays(files.pictures(), named, "picture");
    }

    @Override
    public List<Refusal> strayDocuments(Set<String> named) throws IOException {
        return strays(files.documents(), named, "document");
    }

    private static List<Refusal> strays(Path folder, Set<String> named, String word) throws IOException {
        List<Refusal> faults = new ArrayList<>();
        if (!Files.isDirectory(folder)) {
            return faults;
        }
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile)
                    .filter(file -> !file.startsWith(folder.resolve("part")))
                    .toList()) {
                String hash = file.getFileName().toString().replaceFirst("\\..*", "");
                if (!named.contains(hash) && !hash.equals(Disk.hash(file))) {
                    faults.add(Fault.at(file, "this is not a " + word + " as it was kept", ""));
                }
            }
        }
        return faults;
    }
}
