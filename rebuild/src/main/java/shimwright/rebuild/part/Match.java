package shimwright.rebuild.part;

import java.util.List;
import java.util.stream.Stream;

/**
 * A part that a stamp or measured sizes may mean.
 *
 * @param part the part
 * @param certainty how sure it is
 * @param remarks what else was read, and what to look at
 */
public record Match(StandardPart part, Certainty certainty, List<String> remarks) {
    public Match {
        remarks = List.copyOf(remarks);
    }

    /** The same, as sure as said. */
    Match as(Certainty other) {
        return new Match(part, other, remarks);
    }

    /** The same with more remarks. */
    Match with(List<String> more) {
        return new Match(
                part, certainty, Stream.concat(remarks.stream(), more.stream()).toList());
    }

    /** How sure a match is. */
    public enum Certainty {
        /** The stamp says this part and no other. */
        STAMPED("what the stamp says"),
        /** The stamp says this part as well as others: the person chooses. */
        ONE_OF_SEVERAL("one of several"),
        /** The sizes stand in the call-out; no table has them. */
        SIZES_ONLY("sizes as typed"),
        /** The sizes fit within what a caliper can be out. */
        FITS("fits what was measured"),
        /** It is near what was typed, or fits what can be read of it. */
        NEAR("near");

        private final String words;

        Certainty(String words) {
            this.words = words;
        }

        /** In the words of the page. */
        public String words() {
            return words;
        }
    }
}
