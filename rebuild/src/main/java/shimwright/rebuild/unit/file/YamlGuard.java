package shimwright.rebuild.unit.file;

import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.parser.Parser;
import shimwright.rebuild.unit.fault.Place;
import shimwright.rebuild.unit.fault.ProblemCollector;

/**
 * The events of a YAML text on their way to the tree, stopped where they lie too deep, are too many or start a second
 * document: whoever builds the tree calls itself for each level, so the bound must stand before it.
 */
final class YamlGuard implements Parser {
    /** How deep lists may lie in lists. */
    static final int DEEPEST = 40;

    /** Most events of one text. */
    static final int MOST_EVENTS = 400_000;

    private final Parser parser;
    private int depth;
    private int events;
    private int documents;

    YamlGuard(Parser parser) {
        this.parser = parser;
    }

    /** Why no tree is built, where that is not the text's grammar. */
    static final class Stopped extends YamlEngineException {
        private static final long serialVersionUID = 1L;

        private final transient Event at;
        private final String hint;

        private Stopped(Event at, String fact, String hint) {
            super(fact);
            this.at = at;
            this.hint = hint;
        }

        void tell(ProblemCollector problems) {
            problems.add(Place.of(at.getStartMark()), String.valueOf(getMessage()), hint);
        }
    }

    @Override
    public boolean checkEvent(Event.ID id) {
        return parser.checkEvent(id);
    }

    @Override
    public Event peekEvent() {
        return parser.peekEvent();
    }

    @Override
    public boolean hasNext() {
        return parser.hasNext();
    }

    @Override
    public Event next() {
        Event event = parser.next();
        switch (event.getEventId()) {
            case MappingStart, SequenceStart -> depth++;
            case MappingEnd, SequenceEnd -> depth--;
            case DocumentStart -> documents++;
            default -> {}
        }
        events++;
        if (depth > DEEPEST) {
            throw new Stopped(
                    event,
                    "lists lie in lists more than " + DEEPEST + " deep",
                    "A unit file is never that deep; look for a bracket that is not closed");
        }
        if (events > MOST_EVENTS) {
            throw new Stopped(event, "the file holds too much for one unit", "Split it");
        }
        if (documents > 1) {
            throw new Stopped(
                    event, "a second document starts here", "One file holds one unit; delete the line with ---");
        }
        return event;
    }
}
