package shimwright.bench.web;

import java.util.ArrayList;
import java.util.List;
import shimwright.bench.picture.Plots;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Shown;

/** The pictures of an answered worksheet, for screen and paper alike. */
final class SheetPictures {
    private static final double WIDTH = 620;
    private static final int MOST_BUDGETS = 3;

    private SheetPictures() {}

    /** SVG of each picture: what the sheet draws, then where the doubt comes from. */
    static List<String> of(Answer answer) {
        List<String> pictures = new ArrayList<>();
        answer.shown().stream()
                .filter(shown -> !shown.budget().isEmpty())
                .limit(MOST_BUDGETS)
                .forEach(shown -> pictures.add(budget(shown, answer)));
        return pictures;
    }

    private static String budget(Shown shown, Answer answer) {
        return Plots.budgetBars(
                "Doubt of " + shown.field().meaning(),
                shown.budget().stream()
                        .map(part -> new Plots.Share(part.name(), part.share()))
                        .toList(),
                new Plots.Page("budget-" + shown.field().name(), WIDTH, answer.system()));
    }
}
