package shimwright.rebuild.unit.file;

import java.util.Locale;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.composer.Composer;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;
import shimwright.rebuild.unit.fault.Place;
import shimwright.rebuild.unit.fault.ProblemCollector;

/** Text to a tree of YAML nodes that know where they stand. */
final class YamlTree {
    private YamlTree() {}

    /** The tree; empty where there is none, and then the problems say why. */
    static Optional<Node> read(String text, ProblemCollector problems) {
        LoadSettings settings = LoadSettings.builder()
                .setUseMarks(true)
                .setAllowDuplicateKeys(true)
                .setMaxAliasesForCollections(YamlGuard.MOST_EVENTS)
                .setCodePointLimit(UnitFiles.LARGEST)
                .build();
        try {
            StreamReader reader = new StreamReader(settings, text);
            return new Composer(settings, new YamlGuard(new ParserImpl(settings, reader))).getSingleNode();
        } catch (YamlGuard.Stopped stopped) {
            stopped.tell(problems);
        } catch (MarkedYamlEngineException e) {
            problems.add(
                    Place.of(e.getProblemMark()),
                    "this is not YAML: " + String.valueOf(e.getProblem()).strip(),
                    "Look at this line and the one before it: indent, colon with a blank, closing quote or bracket");
        } catch (ReaderException e) {
            problems.add(
                    place(text, e.getPosition()),
                    String.format(Locale.ROOT, "there is a character that no text has (U+%04X)", e.getCodePoint()),
                    "This may be no text file; else delete the character");
        } catch (IllegalArgumentException e) {
            // the library refuses a tag of blanks this way, and does not say where
            problems.add(
                    Place.START,
                    "there is a YAML tag (a word after !) that is none",
                    "A unit file needs no tags: look for ! and delete it, or put the text in quotes");
        } catch (YamlEngineException e) {
            problems.add(Place.START, "this is not YAML: " + firstLine(e), "Look at the file in a text editor");
        }
        return Optional.empty();
    }

    private static Place place(String text, int position) {
        int end = text.offsetByCodePoints(0, Math.min(position, text.codePointCount(0, text.length())));
        String before = text.substring(0, end);
        int line = (int) before.chars().filter(c -> c == '\n').count();
        return new Place(line + 1, end - before.lastIndexOf('\n'));
    }

    private static String firstLine(YamlEngineException e) {
        return String.valueOf(e.getMessage())
                .lines()
                .findFirst()
                .orElse("it cannot be read")
                .strip();
    }
}
