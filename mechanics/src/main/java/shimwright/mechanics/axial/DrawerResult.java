package shimwright.mechanics.axial;

import java.util.List;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/**
 * Ways to serve all clearances from the drawer at once, the best first.
 *
 * @param offers empty where the drawer cannot serve them all
 * @param lawful how many ways leave every clearance within its limits by nominal
 * @param advice one sentence
 */
public record DrawerResult(
        @Output(meaning = "ways, the best first") List<Way> offers,
        @Output(meaning = "lawful ways") int lawful,
        @Output(meaning = "advice") String advice) {

    public DrawerResult {
        offers = List.copyOf(offers);
    }

    /**
     * One way.
     *
     * @param pieces place and tags, such as {@code sI=d52-03+d52-09}, in the order of the places
     * @param predicted what each clearance comes out at, m, in the order of the needs
     * @param probability that all of them are lawful, their doubts taken as independent
     * @param distance sum of (distance from aim / room to the limit on that side)²
     */
    public record Way(
            @Output(meaning = "pieces") List<String> pieces,

            @Output(kind = Kind.LENGTH, meaning = "clearances", decimals = 4)
            List<Double> predicted,

            @Output(meaning = "probability that all are in") double probability,
            @Output(meaning = "distance from the aims") double distance) {
        public Way {
            pieces = List.copyOf(pieces);
            predicted = List.copyOf(predicted);
        }
    }
}
