package shimwright.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The program in a process of its own, as {@code serve} starts it, with temporary files in a folder of its own. */
final class ProgramProcess implements AutoCloseable {
    private static final Pattern AT = Pattern.compile("Shimwright is at http://127\\.0\\.0\\.1:(\\d+)/");

    private final Process process;
    private final Path temporary;
    private final Path errors;
    private final int port;

    private ProgramProcess(Process process, Path temporary, Path errors, int port) {
        this.process = process;
        this.temporary = temporary;
        this.errors = errors;
        this.port = port;
    }

    /**
     * Starts it and waits until it listens.
     *
     * @param work for what it writes beside its data
     * @param data the data folder
     * @param files file handles it may have; 0 for as many as the system gives
     * @param jvm options of the Java machine
     */
    static ProgramProcess serve(Path work, Path data, int files, List<String> jvm, String... options)
            throws IOException {
        Path temporary = Files.createDirectories(work.resolve("temporary"));
        List<String> command = new ArrayList<>();
        if (files > 0) {
            command.addAll(List.of("sh", "-c", "ulimit -n " + files + " && exec \"$@\"", "sh"));
        }
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Djava.awt.headless=true"));
        command.add("-Djava.io.tmpdir=" + temporary);
        command.add("-Dorg.sqlite.tmpdir=" + Files.createDirectories(work.resolve("native")));
        command.addAll(jvm);
        command.addAll(
                List.of("-cp", System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"))));
        command.addAll(List.of(Main.class.getName(), "serve", "--data", data.toString(), "--port", "0"));
        command.addAll(List.of("--no-browser", "--owner", work.resolve("owner").toString()));
        command.addAll(List.of(options));
        Path errors = work.resolve("program-errors");
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.appendTo(errors.toFile()))
                .start();
        BufferedReader said =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        for (String line = said.readLine(); line != null; line = said.readLine()) {
            Matcher at = AT.matcher(line);
            if (at.find()) {
                return new ProgramProcess(process, temporary, errors, Integer.parseInt(at.group(1)));
            }
        }
        process.destroyForcibly();
        throw new IOException("it did not start: " + Files.readString(errors));
    }

    int port() {
        return port;
    }

    boolean lives() {
        return process.isAlive();
    }

    /** What it wrote on its error output so far. */
    String errors() throws IOException {
        return Files.readString(errors);
    }

    /** Where it would lay down what it does not hold in memory. */
    Path temporary() {
        return temporary;
    }

    /** Ends it as a power cut would. */
    void kill() throws InterruptedException {
        process.destroyForcibly();
        process.waitFor();
    }

    @Override
    public void close() {
        // its folder is free once it has ended
        process.destroyForcibly().onExit().join();
    }
}
