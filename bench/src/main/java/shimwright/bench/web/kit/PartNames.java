package shimwright.bench.web.kit;

import org.jspecify.annotations.Nullable;
import shimwright.bench.desk.JobOnBench;
import shimwright.rebuild.inspect.JudgedPiece;

/** Parts by their names where an entry has their short ids. */
public final class PartNames {
    private PartNames() {}

    /** What was said of a part, with its name before it where its id stood there; as it was where the unit has no such part. */
    public static String led(@Nullable JobOnBench bench, String words) {
        int blank = words.indexOf(' ');
        String first = blank < 0 ? words : words.substring(0, blank);
        return bench == null
                ? words
                : JudgedPiece.part(bench.unit(), first)
                        .map(part -> part.name() + words.substring(first.length()))
                        .orElse(words);
    }
}
