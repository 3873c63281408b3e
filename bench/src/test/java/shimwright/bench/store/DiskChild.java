package shimwright.bench.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import shimwright.bench.store.backup.Backup;
import shimwright.bench.store.content.FilePictureStore;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.sqlite.ReadOnlyJobLog;
import shimwright.bench.store.sqlite.SqliteJobLog;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry.NoteMade;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.PictureStore.Picture;

/** Works on a small disk of its own until it is full, and on one that can only be read; prints what it saw. */
final class DiskChild {
    private DiskChild() {}

    private static Outcome<LogEntry> note(SqliteJobLog log, int number) {
        Draft draft = new Draft(
                "job-1", "n" + number, Instant.EPOCH, "rebuilder", new NoteMade("job", "x".repeat(20_000) + number));
        return log.append(draft, stream -> List.of());
    }

    /** Arguments: a folder on a disk of a few megabytes. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path disk = Path.of(arguments[0]);
        Path data = disk.resolve("data");
        Path ballast = Files.write(disk.resolve("ballast"), new byte[5 << 20]);
        List<LogEntry> kept = new ArrayList<>();
        String full = "";
        try (SqliteJobLog log = Logs.open(data)) {
            FilePictureStore pictures =
                    FilePictureStore.open(new DataFolder(data).pictures()).orElseThrow();
            while (full.isEmpty()) {
                Outcome<LogEntry> answer = note(log, kept.size());
                if (answer instanceof Outcome.Ok<LogEntry> ok) {
                    kept.add(ok.value());
                } else {
                    full = answer.refusals().get(0).sentence();
                }
            }
            System.out.println("entry: " + full);
            System.out.println("same while full: " + log.read("job-1").equals(kept));
            // whatever room is left is taken before the picture comes
            Outcome<Picture> picture = pictures.keep("a.png", SamplePictures.noise(new Random(1), 1500, 1500));
            System.out.println("picture: " + picture.refusals().get(0).sentence());
            Files.delete(ballast);
            kept.add(note(log, kept.size()).orElseThrow());
            System.out.println("kept again: " + log.read("job-1").equals(kept));
        }
        Backup.make(data, disk.resolve("backup")).orElseThrow();
        run("mount", "-o", "remount,ro", disk.toString());
        System.out.println("read only: " + Logs.refusal(data));
        System.out.println("new: " + Logs.refusal(disk.resolve("other")));
        try (ReadOnlyJobLog log = ReadOnlyJobLog.open(disk.resolve("backup")).orElseThrow()) {
            System.out.println("backup: " + log.read("job-1").equals(kept));
        }
        run("mount", "-o", "remount,rw", disk.toString());
        try (SqliteJobLog log = Logs.open(data)) {
            kept.add(note(log, kept.size()).orElseThrow());
            System.out.println("after all: " + Logs.all(log).equals(kept));
        }
    }

    private static void run(String... command) throws IOException, InterruptedException {
        if (new ProcessBuilder(command).inheritIO().start().waitFor() != 0) {
            throw new IOException(String.join(" ", command));
        }
    }
}
