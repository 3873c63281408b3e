package shimwright.bench.web.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import shimwright.bench.picture.plot.Plots;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Shape;
import shimwright.mechanics.worksheet.ShownValue;

/** The pictures of an answered worksheet. */
final class SheetPictures {
    /** So wide that letters keep their size on a phone. */
    static final double SCREEN = 350;

    static final double PAPER = 620;
    private static final double K = 2;
    private static final int MOST_BUDGETS = 3;

    private SheetPictures() {}

    /**
     * SVG of each picture: what the sheet draws, then where the uncertainty comes from.
     *
     * @param width of each, in px of the screen or points of the paper
     */
    static List<String> of(Answer answer, double width) {
        List<String> pictures = new ArrayList<>();
        for (Diagram diagram : answer.diagrams()) {
            pictures.add(drawn(diagram, new Plots.Page("picture-" + pictures.size(), width, answer.system())));
        }
        answer.shown().stream()
                .filter(shown -> !shown.budget().isEmpty())
                .limit(MOST_BUDGETS)
                .forEach(shown -> pictures.add(budget(shown, answer, width)));
        return pictures;
    }

    private static String drawn(Diagram diagram, Plots.Page page) {
        if (diagram instanceof Diagram.Graph graph) {
            return Plots.graph(graph, page);
        }
        if (diagram instanceof Diagram.Distribution d) {
            return Plots.conformity(
                    new Plots.Conformity(
                            d.title(),
                            d.kind(),
                            d.value(),
                            d.u(),
                            d.nu(),
                            d.lower(),
                            d.upper(),
                            d.probability(),
                            OptionalDouble.empty()),
                    page);
        }
        return offers((Diagram.Offers) diagram, page);
    }

    private static String offers(Diagram.Offers offers, Plots.Page page) {
        List<Plots.Pack> packs = new ArrayList<>();
        for (Diagram.Offer offer : offers.offers()) {
            String sure = SheetView.percent(offer.probability());
            packs.add(new Plots.Pack(offer.name(), offer.value(), K * offer.u(), sure, packs.isEmpty()));
        }
        return Plots.packs(
                new Plots.Packs(
                        offers.title(),
                        offers.lower(),
                        offers.upper(),
                        offers.aim(),
                        packs,
                        offers.drawer(),
                        offers.taken()),
                page);
    }

    private static String budget(ShownValue shown, Answer answer, double width) {
        return Plots.budgetBars(
                shown.field().shape() == Shape.BUDGET
                        ? "Where the uncertainty comes from"
                        : "Uncertainty of " + shown.field().meaning(),
                shown.budget().stream()
                        .map(part -> new Plots.Share(part.name(), part.share()))
                        .toList(),
                new Plots.Page("budget-" + shown.field().name(), width, answer.system()));
    }
}
