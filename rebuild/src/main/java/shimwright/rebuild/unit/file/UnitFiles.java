package shimwright.rebuild.unit.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.unit.fault.Place;
import shimwright.rebuild.unit.fault.ProblemCollector;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.sense.SenseChecks;

/** The door for unit files: text in, unit type or every problem out. */
public final class UnitFiles {
    /** Largest file that is read, in bytes. */
    public static final int LARGEST = 4 * 1024 * 1024;

    /** One change reads the same text when it is tried, kept, told and laid. */
    private static final ReadLately LATELY = new ReadLately();

    private UnitFiles() {}

    /** What reading a unit file comes to. */
    public sealed interface Result {
        /** The unit type, or the problems as refusals. */
        default Outcome<UnitType> outcome() {
            if (this instanceof Good good) {
                return Outcome.ok(good.type());
            }
            return Outcome.refused(problems());
        }

        /** All problems by place; empty for a good file. */
        default List<Refusal> problems() {
            return this instanceof Bad bad ? bad.found() : List.of();
        }
    }

    /**
     * A file without a problem.
     *
     * @param type what it says
     * @param stepLines the line on which each step begins, by id; of steps with one id for several variants the first
     * @param remarks what is no problem and should still be looked at, by place
     */
    public record Good(UnitType type, Map<String, Integer> stepLines, List<Refusal> remarks) implements Result {}

    /** All problems of a file, by place; never empty. */
    public record Bad(List<Refusal> found) implements Result {
        public Bad {
            found = List.copyOf(found);
            if (found.isEmpty()) {
                throw new IllegalArgumentException("bad without a problem");
            }
        }
    }

    /**
     * Reads a unit file.
     *
     * @param name of the file, for the problems
     * @param bytes UTF-8 text, with or without a byte order mark
     */
    public static Result read(String name, byte[] bytes) {
        ProblemCollector problems = new ProblemCollector(name);
        if (bytes.length > LARGEST) {
            problems.add(
                    Place.START,
                    "the file has " + bytes.length / 1024 / 1024 + " MB",
                    "A unit file has at most 4 MB; this may be another kind of file");
            return new Bad(problems.sorted());
        }
        return decoded(bytes, problems).map(text -> read(name, text)).orElseGet(() -> new Bad(problems.sorted()));
    }

    /**
     * Reads the keys and values of a unit file that is not written yet; each problem's key is its path among them.
     *
     * @param name of the file, for the problems
     */
    static Result readTree(String name, Map<String, Object> tree) {
        ProblemCollector problems = ProblemCollector.withoutLines(name);
        Result read = TreeNodes.of(tree, problems)
                .map(nodes -> bound(nodes, problems, true))
                .orElseGet(() -> new Bad(problems.sorted()));
        if (read instanceof Good good) {
            LATELY.keepJudged(tree, good);
        }
        return read;
    }

    /**
     * The text of a unit file that says what a changed unit type says, judged as any other.
     *
     * @return text that reads without a problem; refused with every problem that it would have
     */
    public static Outcome<String> writeSound(UnitType changed) {
        String name = changed.id() + ".yaml";
        Map<String, Object> tree = TreeWriter.tree(changed);
        Result read = LATELY.judged(changed, tree).<Result>map(good -> good).orElseGet(() -> readTree(name, tree));
        if (!(read instanceof Good good)) {
            return Outcome.refused(read.problems());
        }
        String text = UnitWriter.text(good.type());
        if (text.length() > LARGEST) {
            return Outcome.refused(tooLong(name).sorted());
        }
        UnitTree.written(good.type(), tree);
        LATELY.keep(name, text, new Good(good.type(), UnitWriter.stepLines(text, good.type()), good.remarks()));
        return Outcome.ok(text);
    }

    private static ProblemCollector tooLong(String name) {
        ProblemCollector problems = new ProblemCollector(name);
        problems.add(Place.START, "the text is longer than 4 MB", "This may be another kind of file");
        return problems;
    }

    /**
     * Reads a unit file.
     *
     * @param name of the file, for the problems
     * @param text of the file
     */
    public static Result read(String name, String text) {
        ProblemCollector problems = new ProblemCollector(name);
        if (text.length() > LARGEST) {
            return new Bad(tooLong(name).sorted());
        }
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        Optional<Good> known = LATELY.find(name, plain);
        if (known.isPresent()) {
            return known.get();
        }
        Result read = readAnew(plain, problems);
        if (read instanceof Good good) {
            LATELY.keep(name, plain, good);
        }
        return read;
    }

    private static Result readAnew(String plain, ProblemCollector problems) {
        Optional<Node> tree = YamlTree.read(plain, problems);
        if (tree.isEmpty()) {
            if (problems.count() == 0) {
                problems.add(Place.START, "the file is empty", "Start from the file that \"unit new\" writes");
            }
            return new Bad(problems.sorted());
        }
        return bound(tree.get(), problems, false);
    }

    /** The text of a unit file that reads as this unit type. */
    public static String write(UnitType type) {
        return UnitWriter.text(type);
    }

    /** The text that a new unit file starts from: small, commented and without a problem. */
    public static String starter() {
        return resource("/shimwright/rebuild/unit/starter.yaml");
    }

    /** The text of the example that is shipped: an invented transaxle with everything that a unit file can hold. */
    public static String example() {
        return resource("/units/ambleholt-l5-74.yaml");
    }

    private static String resource(String path) {
        try (InputStream in = UnitFiles.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException("not shipped: " + path);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The tree as a unit file with all checks; those on what it means are spared where they were made lately. */
    private static Result bound(Node tree, ProblemCollector problems, boolean unwritten) {
        problems.keys(() -> YamlKeys.of(tree));
        Binder binder = new Binder(problems);
        Optional<UnitType> type = binder.bind(tree, UnitType.class);
        if (!binder.bounded()) {
            ProblemCollector one = problems.fresh();
            one.add(Place.START, "aliases repeat more than one unit can hold", "Write out what is meant");
            return new Bad(one.sorted());
        }
        Optional<Good> judged = unwritten && problems.count() == 0 ? type.flatMap(LATELY::judged) : Optional.empty();
        if (judged.isPresent()) {
            return judged.get();
        }
        if (type.isPresent()) {
            binder.ids().check(problems);
            SenseChecks.check(type.get(), binder.sources(), problems);
        }
        if (problems.count() > 0 || type.isEmpty()) {
            return new Bad(problems.sorted());
        }
        Map<String, Integer> lines = new LinkedHashMap<>();
        for (Step step : type.get().steps()) {
            lines.putIfAbsent(step.id(), binder.sources().of(step).line());
        }
        return new Good(type.get(), lines, problems.remarks());
    }

    private static Optional<String> decoded(byte[] bytes, ProblemCollector problems) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            int line = (int) text.chars().filter(c -> c == '\n').count() + 1;
            problems.add(
                    new Place(line, text.length() - text.lastIndexOf('\n')),
                    "the file is not UTF-8 text",
                    "Save it as UTF-8 text; a picture or a spreadsheet is no unit file");
            return Optional.empty();
        }
        return Optional.of(text);
    }
}
