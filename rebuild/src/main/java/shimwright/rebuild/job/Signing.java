package shimwright.rebuild.job;

import java.util.Optional;

/**
 * What a shop signs, and what it remembers apart from its data folder, so that it can be told later whether something
 * kept here is gone or was made anew.
 */
public interface Signing {
    /** Signs and remembers nothing: a demo or a test. */
    Signing NONE = new Signing() {
        @Override
        public void remember(Occasion occasion, String stream, Head head) {
            // nothing is remembered of a shop that is thrown away
        }

        @Override
        public byte[] sign(byte[] document, String stream, Head head) {
            return document;
        }

        @Override
        public Optional<String> line(String stream, Head head) {
            return Optional.empty();
        }
    };

    /** On what occasion a head went out of the data folder. */
    enum Occasion {
        STOPPED("when the program stopped"),
        BACKED_UP("in a backup"),
        PRINTED("on a printed record"),
        HANDED_BACK("at a hand-back"),
        PAIRED("at the pairing of a device"),
        ACCEPTED("when its loss was accepted");

        private final String words;

        Occasion(String words) {
            this.words = words;
        }

        /** The same for a sentence: "(the head was seen) in a backup". */
        public String words() {
            return words;
        }
    }

    /**
     * Remembers a head; where the disk does not take it, nothing else is hindered.
     *
     * @param stream the job's stream; empty for the head of the whole log
     */
    void remember(Occasion occasion, String stream, Head head);

    /**
     * The document with one line at its end that signs it, and its job's head with it. A PDF stays one: the line is a
     * comment.
     *
     * @param document any bytes
     * @param stream the job's stream
     * @param head of that stream when the document was made
     */
    byte[] sign(byte[] document, String stream, Head head);

    /**
     * One line that signs a job's head alone, to be printed where a camera can read it; empty where nothing is signed.
     *
     * @param stream the job's stream
     * @param head of that stream
     */
    Optional<String> line(String stream, Head head);
}
