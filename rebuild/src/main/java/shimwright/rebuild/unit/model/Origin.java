package shimwright.rebuild.unit.model;

import java.util.Locale;
import java.util.Optional;

/**
 * Where a number of a unit file comes from, written as {@code printed: book, page 12}: a source, and words behind a colon.
 *
 * @param source empty where the words begin with none
 * @param words which book, which job, who; may be empty
 */
public record Origin(Optional<Source> source, String words) {
    /** Key under which it stands in each record that has one. */
    public static final String KEY = "origin";

    /** What a number can rest on. */
    public enum Source {
        PRINTED("printed book and page"),
        STANDARD("standard"),
        COMPUTED("computed"),
        MEASURED("measured on a job"),
        TOLD("told by somebody"),
        COMMON_PRACTICE("common practice"),
        GUESS("a guess");

        private final String words;

        Source(String words) {
            this.words = words;
        }

        /** In words, as a person chooses it. */
        public String words() {
            return words;
        }

        /** As a unit file writes it. */
        public String written() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    /** What a text says; words alone where it begins with no source. */
    public static Origin of(String text) {
        String typed = text.strip();
        String low = typed.toLowerCase(Locale.ROOT);
        for (Source source : Source.values()) {
            String written = source.written();
            if (low.equals(written) || low.startsWith(written + ":")) {
                String rest = typed.substring(Math.min(typed.length(), written.length() + 1));
                return new Origin(Optional.of(source), rest.strip());
            }
        }
        return new Origin(Optional.empty(), typed);
    }

    /** The text of a source and words. */
    public static String text(String source, String words) {
        return source.isBlank()
                ? words.strip()
                : words.isBlank() ? source.strip() : source.strip() + ": " + words.strip();
    }

    /** True where a text says that the number is a guess, by its source or by its first word. */
    public static boolean guess(String text) {
        Origin origin = of(text);
        return origin.source().equals(Optional.of(Source.GUESS))
                || (origin.source().isEmpty()
                        && origin.words().toLowerCase(Locale.ROOT).startsWith("guess"));
    }
}
