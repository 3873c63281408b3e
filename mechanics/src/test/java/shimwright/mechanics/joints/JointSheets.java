package shimwright.mechanics.joints;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import shimwright.mechanics.lifting.LiftingSheets;
import shimwright.mechanics.oil.OilSheets;
import shimwright.mechanics.published.SheetAnswers;
import shimwright.mechanics.seal.SealSheets;
import shimwright.mechanics.spring.SpringSheets;
import shimwright.mechanics.thread.ThreadSheets;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Worksheet;

/** Asks worksheets as a person would. */
final class JointSheets {
    static final List<Worksheet<?, ?>> MINE = Stream.of(
                    ThreadSheets.ALL, SpringSheets.ALL, SealSheets.ALL, OilSheets.ALL, LiftingSheets.ALL)
            .<Worksheet<?, ?>>flatMap(List::stream)
            .toList();

    private JointSheets() {}

    static Answer answer(String sheet, String inputs) {
        return SheetAnswers.ask(sheet, SheetAnswers.typed(inputs)).orElseThrow();
    }

    static Answer answer(String sheet, String format, Object... values) {
        return answer(sheet, String.format(Locale.ROOT, format, values));
    }

    /** A result by path such as {@code stages.0.share}, SI. */
    static Object result(Answer answer, String path) {
        return requireNonNull(SheetAnswers.value(answer, path), path);
    }

    static double number(Answer answer, String path) {
        return (Double) result(answer, path);
    }
}
