package shimwright.bench.web.kit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.web.words.Ours;
import shimwright.bench.web.words.Words;
import shimwright.mechanics.outcome.Refusal;

/**
 * What every page needs.
 *
 * @param title of the page
 * @param show how values are shown
 * @param tab the part of the job that is open, empty outside a job
 * @param bench the job, null outside a job
 * @param faults refusals of the last post, shown at the top
 * @param typed what was typed in that post
 * @param who signs entries
 * @param said a short good-news sentence after a post; empty for none
 * @param mark changes with what this page shows; empty for a page that shows nothing of the log
 * @param held how the screen is held
 * @param words in which it is said
 * @param entryId id for the entry that the page's first form makes when the script does not make one
 */
public record Page(
        String title,
        Show show,
        String tab,
        @Nullable JobOnBench bench,
        List<Refusal> faults,
        Map<String, String> typed,
        String who,
        String said,
        String mark,
        Held held,
        Words words,
        String entryId) {

    /** A word or sentence of the program where a value stands, to be said in the words of the page. */
    public Ours ours(String text) {
        return new Ours(text);
    }

    /** What was typed in a field, to show it again. */
    public String typed(String field) {
        return typed.getOrDefault(field, "");
    }

    /** What was typed, or a first value. */
    public String typed(String field, String first) {
        return typed.getOrDefault(field, first);
    }

    /** What was typed in a field of one form of the page; nothing where another form of the page was refused. */
    public String typedIn(String form, String field) {
        return !typed.containsKey("form") || typed("form").equals(form) ? typed(field) : "";
    }

    /** What was typed in a field of one form of the page, or what stands there when nothing of the form was refused. */
    public String typedIn(String form, String field, String first) {
        return refused() && typed("form").equals(form) ? typed(field) : first;
    }

    /** The lines of what was typed in a field that stands more than once; one empty line where nothing was. */
    public List<String> typedLines(String field) {
        return List.of(typed(field).split("\n", -1));
    }

    /** The same for a field of one form of the page. */
    public List<String> typedLinesIn(String form, String field) {
        return List.of(typedIn(form, field).split("\n", -1));
    }

    /** What happened, the last first. */
    public <T> List<T> newestFirst(Collection<T> inOrder) {
        List<T> turned = new ArrayList<>(inOrder);
        Collections.reverse(turned);
        return turned;
    }

    /** True where the page carries refusals. */
    public boolean refused() {
        return !faults.isEmpty();
    }

    /** The job's address. */
    public String job() {
        return bench == null ? "" : "/job/" + bench.job().id();
    }
}
