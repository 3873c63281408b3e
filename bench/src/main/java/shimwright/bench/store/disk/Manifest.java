package shimwright.bench.store.disk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/** The list of a backup's files with the size and hash of each, and at its end the hash of the list itself. */
public final class Manifest {
    private static final Pattern LINE = Pattern.compile("([0-9a-f]{64}) ([0-9]{1,18}) (.+)");
    private static final String SELF = "manifest";
    private static final String ANOTHER = "Use another backup";

    private Manifest() {}

    /** Lists every file of the folder. */
    public static String of(Path folder) throws IOException {
        String lines = lines(folder, files(folder));
        return lines + Disk.hash(bytes(lines)) + " " + lines.length() + " " + SELF + "\n";
    }

    /** A line for each file. */
    public static String lines(Path folder, List<Path> files) throws IOException {
        StringBuilder text = new StringBuilder();
        for (Path file : files) {
            text.append(line(folder, file));
        }
        return text.toString();
    }

    /** The files that the folder's manifest lists, if each is there as listed and no other; otherwise all that is wrong. */
    public static Outcome<List<Path>> check(DataFolder given) throws IOException {
        DataFolder backup = new DataFolder(given.root().toAbsolutePath().normalize());
        // by its bytes: damaged text is a damaged list, not a broken program
        String text = Files.isRegularFile(backup.manifest(), LinkOption.NOFOLLOW_LINKS)
                ? new String(Files.readAllBytes(backup.manifest()), StandardCharsets.UTF_8)
                : "";
        int last = text.lastIndexOf('\n', text.length() - 2) + 1;
        String listed = text.substring(0, last);
        if (!text.substring(last).equals(Disk.hash(bytes(listed)) + " " + last + " " + SELF + "\n")) {
            return Outcome.refused(Refusal.at(
                    backup.root().toString(),
                    "this is not a whole backup: its list of files is missing or damaged",
                    ANOTHER));
        }
        List<Refusal> faults = new ArrayList<>(faults(backup.root(), listed, "since the backup was made"));
        Set<Path> known = new HashSet<>(List.of(backup.manifest(), backup.signature()));
        List<Path> files = new ArrayList<>();
        for (String line : listed.lines().toList()) {
            place(backup.root(), line).ifPresent(files::add);
        }
        known.addAll(files);
        faults.addAll(strange(backup.root(), known));
        return faults.isEmpty() ? Outcome.ok(files) : Outcome.refused(faults);
    }

    /** Every listed file that is missing or not as listed, and every line that lists none. */
    public static List<Refusal> faults(Path folder, String listed, String since) throws IOException {
        List<Refusal> faults = new ArrayList<>();
        for (String line : listed.lines().toList()) {
            fault(folder, line, since).ifPresent(faults::add);
        }
        return faults;
    }

    private static Optional<Refusal> fault(Path folder, String listed, String since) throws IOException {
        Optional<Path> file = place(folder, listed);
        if (file.isEmpty()) {
            return Optional.of(Refusal.at(
                    folder.resolve(SELF).toString(),
                    "a line of the list of files cannot be read: \""
                            + listed.substring(0, Math.min(80, listed.length())) + "\"",
                    ANOTHER));
        }
        if (!Files.isRegularFile(file.get(), LinkOption.NOFOLLOW_LINKS)) {
            return Optional.of(Refusal.at(file.get().toString(), "the file is missing", ANOTHER));
        }
        return line(folder, file.get()).equals(listed + "\n")
                ? Optional.empty()
                : Optional.of(Refusal.at(file.get().toString(), "the file was changed " + since, ANOTHER));
    }

    /** The file of a line; empty for a line that names none below the folder. */
    private static Optional<Path> place(Path folder, String listed) {
        Matcher line = LINE.matcher(listed);
        if (!line.matches()) {
            return Optional.empty();
        }
        try {
            Path file = folder.resolve(line.group(3));
            return file.normalize().equals(file) && file.startsWith(folder) ? Optional.of(file) : Optional.empty();
        } catch (InvalidPathException noName) {
            return Optional.empty();
        }
    }

    /** What lies in the folder and is not known: a file that is not listed, a link, a pipe. */
    private static List<Refusal> strange(Path folder, Set<Path> known) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(path -> !Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS))
                    .filter(path -> !known.contains(path) || !Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS))
                    .sorted()
                    .map(path -> Refusal.at(
                            path.toString(),
                            Files.isSymbolicLink(path)
                                    ? "this is a link, which no backup holds"
                                    : "this was not in the backup when it was made",
                            "Take it away, or use another backup"))
                    .toList();
        }
    }

    private static String line(Path folder, Path file) throws IOException {
        return "%s %d %s\n".formatted(Disk.hash(file), Files.size(file), folder.relativize(file));
    }

    /** The files below a folder in the order of their names. */
    public static List<Path> files(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
