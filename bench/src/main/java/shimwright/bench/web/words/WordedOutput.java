package shimwright.bench.web.words;

import gg.jte.Content;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.html.escape.Escape;
import gg.jte.output.StringOutput;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Takes a page as its templates write it, and says it in other words. What a template says and what is a value it is told apart by them. */
public final class WordedOutput extends OwaspHtmlTemplateOutput {
    private final StringOutput page;
    private final Words words;
    private Markup.Place place = Markup.Place.BEGINNING;

    /** What stands between two marks: in turn what the template says and a value. */
    private final List<Part> parts = new ArrayList<>();

    private Markup.Place begun = Markup.Place.BEGINNING;

    /**
     * A part of what stands between two marks.
     *
     * @param text as the template has it, or a value
     * @param value true for a value
     * @param ours true for one that is a word of the program
     */
    private record Part(String text, boolean value, boolean ours) {}

    private WordedOutput(StringOutput page, Words words) {
        super(page);
        this.page = page;
        this.words = words;
    }

    /** An output for a page in these words. */
    public static WordedOutput in(Words words) {
        return new WordedOutput(new StringOutput(), words);
    }

    @Override
    public void writeContent(String text) {
        Markup.Cut cut = words.cut(text, place);
        for (Markup.Piece piece : cut.pieces()) {
            if (piece.words()) {
                add(piece.from(), new Part(piece.text(), false, false));
            } else {
                say();
                page.writeContent(piece.text());
            }
        }
        place = cut.end();
    }

    @Override
    public void writeUnsafeContent(@Nullable String text) {
        if (text != null) {
            say();
            page.writeContent(text);
        }
    }

    @Override
    public void writeUserContent(@Nullable String value) {
        if (value == null || !reads()) {
            super.writeUserContent(value);
        } else {
            add(place, new Part(value, true, false));
        }
    }

    @Override
    public void writeUserContent(Content content) {
        if (content instanceof Ours word && reads()) {
            add(place, new Part(word.text(), true, true));
        } else if (content instanceof Ours word) {
            super.writeUserContent(word.text());
        } else {
            super.writeUserContent(content);
        }
    }

    @Override
    public void writeUserContent(boolean value) {
        writeUserContent(String.valueOf(value));
    }

    @Override
    public void writeUserContent(byte value) {
        writeUserContent(String.valueOf(value));
    }

    @Override
    public void writeUserContent(short value) {
        writeUserContent(String.valueOf(value));
    }

    @Override
    public void writeUserContent(int value) {
        writeUserContent(String.valueOf(value));
    }

    @Override
    public void writeUserContent(long value) {
        writeUserContent(String.valueOf(value));
    }

    @Override
    public void writeUserContent(float value) {
        writeUserContent(String.valueOf(value));
    }

    @Override
    public void writeUserContent(double value) {
        writeUserContent(String.valueOf(value));
    }

    /** The whole page. */
    @Override
    public String toString() {
        say();
        return page.toString();
    }

    private boolean reads() {
        return place.state() == Markup.State.WORDS || place.state() == Markup.State.SHOWN;
    }

    private void add(Markup.Place at, Part part) {
        if (parts.isEmpty()) {
            begun = at;
        }
        parts.add(part);
    }

    /** Says what stood up to here between two marks. */
    private void say() {
        if (parts.isEmpty()) {
            return;
        }
        if ((parts.size() == 1 && !parts.get(0).value()) || !whole()) {
            parts.forEach(part ->
                    page.writeContent(part.value() ? shown(part) : words.piece(part.text(), begun.takesMarks())));
        }
        parts.clear();
    }

    /** Says all of it as one sentence, where it is known as one. */
    private boolean whole() {
        StringBuilder sentence = new StringBuilder();
        List<String> values = new ArrayList<>();
        for (Part part : parts) {
            if (part.value()) {
                sentence.append('{').append(values.size()).append('}');
                values.add(part.text());
            } else {
                sentence.append(part.text());
            }
        }
        String text = sentence.toString();
        if (!hasWords(text) || values.size() > 9) {
            return false;
        }
        List<String> shown = parts.stream().filter(Part::value).map(this::shown).toList();
        return words.whole(Catalogue.key(text), values, shown)
                .map(said -> {
                    page.writeContent(blanks(text, true) + said + blanks(text, false));
                    return true;
                })
                .orElse(false);
    }

    private String shown(Part part) {
        String said = part.ours() ? words.ours(part.text()) : words.value(part.text());
        StringOutput safe = new StringOutput(said.length() + 16);
        if (begun.state() == Markup.State.SHOWN) {
            Escape.htmlAttribute(said, safe);
        } else {
            Escape.htmlContent(said, safe);
        }
        return safe.toString();
    }

    private static boolean hasWords(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (Character.isLetter(text.charAt(i))) {
                return true;
            }
        }
        return false;
    }

    private static String blanks(String text, boolean first) {
        String rest = first ? text.stripLeading() : text.stripTrailing();
        int number = text.length() - rest.length();
        return number == 0 ? "" : first ? text.substring(0, number) : text.substring(rest.length());
    }
}
