package shimwright.bench.web.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What a template says as it stands, cut into marks and the words between them. */
final class Markup {
    /** Attributes that somebody reads or hears. */
    private static final Set<String> SHOWN = Set.of("placeholder", "aria-label", "title", "alt");

    /** Elements whose text is no sentence of ours, or would be sent. */
    private static final Set<String> VERBATIM = Set.of("script", "style", "textarea");

    /** An article that ends so is evidence: it reads alike on every screen. */
    private static final String EVIDENCE = " lang=\"en\"";

    private final String text;
    private final List<Piece> pieces = new ArrayList<>();
    private State state;
    private String tag;
    private int at;

    private Markup(String text, Place from) {
        this.text = text;
        this.state = from.state();
        this.tag = from.tag();
    }

    /** Where in a page something stands. */
    enum State {
        /** Between marks. */
        WORDS,
        /** Between the marks of an element whose text is left as it is. */
        VERBATIM,
        /** Within a mark. */
        TAG,
        /** In an attribute that somebody reads. */
        SHOWN,
        /** In another attribute. */
        HIDDEN
    }

    /**
     * Where a text begins or ends.
     *
     * @param state between or within marks
     * @param tag the element of the last mark
     */
    record Place(State state, String tag) {
        static final Place BEGINNING = new Place(State.WORDS, "");

        /** True where a text may get a mark of its own around it. */
        boolean takesMarks() {
            return state == State.WORDS && !tag.equals("title") && !tag.equals("option");
        }
    }

    /**
     * A piece of a text.
     *
     * @param words true for what somebody reads
     * @param text the piece
     * @param from where it stands
     */
    record Piece(boolean words, String text, Place from) {}

    /**
     * A text that was cut.
     *
     * @param pieces in order
     * @param end where it ends
     */
    record Cut(List<Piece> pieces, Place end) {}

    /** Cuts a text that begins at a place. */
    static Cut cut(String text, Place from) {
        Markup markup = new Markup(text, from);
        while (markup.at < text.length()) {
            markup.next();
        }
        return new Cut(List.copyOf(markup.pieces), new Place(markup.state, markup.tag));
    }

    private void next() {
        switch (state) {
            case WORDS -> words(text.indexOf('<', at));
            case VERBATIM -> verbatim();
            case SHOWN -> words(text.indexOf('"', at));
            case HIDDEN -> marks(after(text.indexOf('"', at)), State.TAG);
            default -> tag();
        }
    }

    private void verbatim() {
        marks(text.indexOf("</" + tag, at), State.TAG);
        if (state == State.TAG) {
            state = open();
        }
    }

    private static int after(int found) {
        return found < 0 ? found : found + 1;
    }

    /** What is read up to the next mark, and on into it. */
    private void words(int end) {
        int to = end < 0 ? text.length() : end;
        if (to > at) {
            pieces.add(new Piece(true, text.substring(at, to), new Place(state, tag)));
        }
        at = to;
        if (end >= 0) {
            state = state == State.WORDS ? open() : State.TAG;
            if (text.charAt(at) == '"') {
                marks(at + 1, State.TAG);
            }
        }
    }

    /** Takes the name of a mark that begins here. */
    private State open() {
        int to = at + 1;
        while (to < text.length() && (Character.isLetterOrDigit(text.charAt(to)) || text.charAt(to) == '/')) {
            to++;
        }
        tag = text.substring(at + 1, to);
        return State.TAG;
    }

    private void marks(int end, State then) {
        int to = end < 0 ? text.length() : end;
        if (to > at) {
            pieces.add(new Piece(false, text.substring(at, to), new Place(state, tag)));
        }
        at = to;
        state = end < 0 ? state : then;
    }

    /** On to the end of the mark, or into the next attribute that has a value. */
    private void tag() {
        int to = at;
        while (to < text.length() && text.charAt(to) != '>' && text.charAt(to) != '"') {
            to++;
        }
        if (to == text.length()) {
            marks(-1, State.TAG);
        } else if (text.charAt(to) == '>') {
            boolean bare = tag.equals("option") && text.startsWith("<option>", Math.max(0, to - "<option".length()));
            boolean evidence = tag.equals("article") && text.substring(0, to).endsWith(EVIDENCE);
            marks(to + 1, VERBATIM.contains(tag) || bare || evidence ? State.VERBATIM : State.WORDS);
        } else {
            marks(to + 1, SHOWN.contains(attribute(to)) ? State.SHOWN : State.HIDDEN);
        }
    }

    /** The name of the attribute whose value begins behind a quotation mark. */
    private String attribute(int quote) {
        int end = quote > 0 && text.charAt(quote - 1) == '=' ? quote - 1 : quote;
        int from = end;
        while (from > 0 && (Character.isLetter(text.charAt(from - 1)) || text.charAt(from - 1) == '-')) {
            from--;
        }
        return text.substring(from, end);
    }
}
