package shimwright.bench.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/** The list of a backup's files with the size and hash of each, and at its end the hash of the list itself. */
final class Manifest {
    private static final Pattern LINE = Pattern.compile("([0-9a-f]{64}) ([0-9]{1,18}) (.+)");
    private static final String SELF = "manifest";

    private Manifest() {}

    /** Lists every file of the folder. */
    static String of(Path folder) throws IOException {
        StringBuilder text = new StringBuilder();
        for (Path file : files(folder)) {
            text.append(line(folder, file));
        }
        return text + Disk.hash(bytes(text.toString())) + " " + text.length() + " " + SELF + "\n";
    }

    /** How many files the folder's manifest lists, if each is there as listed; otherwise every one that is not. */
    static Outcome<Integer> check(DataFolder backup) throws IOException {
        String text =
                Files.exists(backup.manifest()) ? Files.readString(backup.manifest(), StandardCharsets.UTF_8) : "";
        int last = text.lastIndexOf('\n', text.length() - 2) + 1;
        String listed = text.substring(0, last);
        if (!text.substring(last).equals(Disk.hash(bytes(listed)) + " " + last + " " + SELF + "\n")) {
            return Outcome.refused(
                    backup.root().toString(),
                    "this is not a whole backup: its list of files is missing or damaged",
                    "Use another backup");
        }
        List<Refusal> faults = new ArrayList<>();
        List<String> lines = listed.lines().toList();
        for (String line : lines) {
            fault(backup.root(), line).ifPresent(faults::add);
        }
        return faults.isEmpty() ? Outcome.ok(lines.size()) : Outcome.refused(faults);
    }

    private static Optional<Refusal> fault(Path folder, String listed) throws IOException {
        Matcher line = LINE.matcher(listed);
        if (!line.matches()) {
            throw new IllegalStateException("a manifest with the right sum and a line that cannot be read: " + listed);
        }
        Path file = folder.resolve(line.group(3));
        if (!Files.isRegularFile(file)) {
            return Optional.of(
                    new Refusal(file.toString(), "the file is missing from the backup", "Use another backup"));
        }
        return line(folder, file).strip().equals(listed)
                ? Optional.empty()
                : Optional.of(new Refusal(
                        file.toString(), "the file is not as it was when the backup was made", "Use another backup"));
    }

    private static String line(Path folder, Path file) throws IOException {
        return "%s %d %s\n".formatted(Disk.hash(file), Files.size(file), folder.relativize(file));
    }

    /** The files below a folder in the order of their names. */
    static List<Path> files(Path folder) throws IOException {
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
