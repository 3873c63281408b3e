package shimwright.rebuild.unit.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.unit.model.UnitType;

/** Unit files for the tests, made from the starter by changing one thing. */
public final class UnitFileTexts {
    private UnitFileTexts() {}

    static UnitType example() {
        return UnitFiles.read("example.yaml", UnitFiles.example()).outcome().orElseThrow();
    }

    /** The starter with one piece of text replaced; the piece must be there. */
    public static String with(String old, String fresh) {
        String starter = UnitFiles.starter();
        assertThat(starter).contains(old);
        int at = starter.indexOf(old);
        return starter.substring(0, at) + fresh + starter.substring(at + old.length());
    }

    public static List<Refusal> problems(String text) {
        return UnitFiles.read("u.yaml", text).problems();
    }

    public static List<String> sentences(String text) {
        return problems(text).stream().map(Refusal::sentence).toList();
    }

    /** Line and column of a piece of text, the first being 1. */
    public static String place(String text, String piece) {
        int at = text.indexOf(piece);
        assertThat(at).as(piece).isNotNegative();
        String before = text.substring(0, at);
        int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
        return "u.yaml:" + line + ":" + (at - before.lastIndexOf('\n'));
    }

    /** The line a problem is on. */
    public static int line(Refusal problem) {
        return number(problem, 2);
    }

    /** The column a problem is at. */
    public static int column(Refusal problem) {
        return number(problem, 1);
    }

    private static int number(Refusal problem, int fromEnd) {
        String[] parts = problem.place().split(":");
        return Integer.parseInt(parts[parts.length - fromEnd]);
    }
}
