package shimwright.rebuild.unit;

import java.util.Locale;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;

/** Text to a tree of YAML nodes that know where they stand. */
final class YamlTree {
    private static final int DEEPEST = 40;
    private static final int MOST_EVENTS = 400_000;

    private YamlTree() {}

    /** The tree; empty where there is none, and then the troubles say why. */
    static Optional<Node> read(String text, Troubles troubles) {
        LoadSettings settings = LoadSettings.builder()
                .setUseMarks(true)
                .setAllowDuplicateKeys(true)
                .setMaxAliasesForCollections(MOST_EVENTS)
                .setCodePointLimit(UnitFiles.LARGEST)
                .build();
        try {
            if (!sound(text, settings, troubles)) {
                return Optional.empty();
            }
            return new Compose(settings).composeString(text);
        } catch (MarkedYamlEngineException e) {
            troubles.add(
                    Place.of(e.getProblemMark()),
                    "this is not YAML: " + String.valueOf(e.getProblem()).strip(),
                    "Look at this line and the one before it: indent, colon with a blank, closing quote or bracket");
        } catch (ReaderException e) {
            troubles.add(
                    place(text, e.getPosition()),
                    String.format(Locale.ROOT, "there is a character that no text has (U+%04X)", e.getCodePoint()),
                    "This may be no text file; else delete the character");
        } catch (IllegalArgumentException e) {
            // the library refuses a tag of blanks this way, and does not say where
            troubles.add(
                    Place.START,
                    "there is a YAML tag (a word after !) that is none",
                    "A unit file needs no tags: look for ! and delete it, or put the text in quotes");
        } catch (YamlEngineException e) {
            troubles.add(Place.START, "this is not YAML: " + firstLine(e), "Look at the file in a text editor");
        }
        return Optional.empty();
    }

    /** Walks the events first: no recursion, so depth and number can be bounded before a tree is built. */
    private static boolean sound(String text, LoadSettings settings, Troubles troubles) {
        int depth = 0;
        int events = 0;
        int documents = 0;
        for (Event event : new Parse(settings).parseString(text)) {
            Event.ID id = event.getEventId();
            if (id == Event.ID.MappingStart || id == Event.ID.SequenceStart) {
                depth++;
            } else if (id == Event.ID.MappingEnd || id == Event.ID.SequenceEnd) {
                depth--;
            } else if (id == Event.ID.DocumentStart) {
                documents++;
            }
            events++;
            if (depth > DEEPEST) {
                troubles.add(
                        Place.of(event.getStartMark()),
                        "lists lie in lists more than " + DEEPEST + " deep",
                        "A unit file is never that deep; look for a bracket that is not closed");
                return false;
            }
            if (events > MOST_EVENTS) {
                troubles.add(Place.of(event.getStartMark()), "the file holds too much for one unit", "Split it");
                return false;
            }
            if (documents > 1) {
                troubles.add(
                        Place.of(event.getStartMark()),
                        "a second document starts here",
                        "One file holds one unit; delete the line with ---");
                return false;
            }
        }
        return true;
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
