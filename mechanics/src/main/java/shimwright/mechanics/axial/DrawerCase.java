package shimwright.mechanics.axial;

import java.util.List;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * Several clearances that take their shims from one drawer.
 *
 * @param needs the clearances as read with the trial pieces in
 * @param places where shims go, each with the trial thickness that was in when the clearances were read
 * @param effects what a thicker shim at a place does to a clearance
 * @param pieces what lies in the drawer
 * @param ruleProbability conformance probability that proves one clearance
 * @param offers how many ways to offer
 */
public record DrawerCase(
        @Input(
                kind = Kind.LENGTH,
                meaning = "clearances: name, read value, standard uncertainty, lower, upper and aimed value",
                most = 12,
                example = "play: 0.2783 mm: 0.004 mm: 0.02 mm: 0.08 mm: 0.05 mm")
        List<Need> needs,

        @Input(
                kind = Kind.LENGTH,
                meaning = "places: name, family, trial thickness, fewest and most pieces",
                most = 12,
                example = "sI: SH52: 0.797 mm: 1: 2")
        List<Seat> places,

        @Input(meaning = "clearance, place, change per thickness", most = 60, example = "play: sI: -1")
        List<Effect> effects,

        @Input(
                kind = Kind.LENGTH,
                meaning = "pieces: tag, family, thickness, standard uncertainty",
                most = 200,
                example = "d52-03: SH52: 0.352 mm: 0.002 mm; d52-09: SH52: 0.681 mm: 0.002 mm")
        List<Loose> pieces,

        @Input(meaning = "probability that counts as proof", min = 0.501, max = 0.9999, orElse = "0.95")
        double ruleProbability,

        @Input(meaning = "ways to offer", min = 1, max = 20, orElse = "3")
        int offers) {

    public DrawerCase {
        needs = List.copyOf(needs);
        places = List.copyOf(places);
        effects = List.copyOf(effects);
        pieces = List.copyOf(pieces);
    }

    /**
     * A clearance, signed as play, as read with the trial pieces in.
     *
     * @param name short name
     * @param value m
     * @param u standard uncertainty of the prediction, m, trial and new pieces included
     * @param lower smallest lawful value, m
     * @param upper largest lawful value, m
     * @param aim value aimed at, m
     */
    public record Need(
            @Input(meaning = "name", example = "play") String name,

            @Input(kind = Kind.LENGTH, meaning = "read value", min = -10, max = 10, example = "0.2783 mm")
            double value,

            @Input(kind = Kind.LENGTH, meaning = "standard uncertainty", min = 0, max = 1, example = "0.004 mm")
            double u,

            @Input(kind = Kind.LENGTH, meaning = "smallest lawful", min = -10, max = 10, example = "0.02 mm")
            double lower,

            @Input(kind = Kind.LENGTH, meaning = "largest lawful", min = -10, max = 10, example = "0.08 mm")
            double upper,

            @Input(kind = Kind.LENGTH, meaning = "aimed at", min = -10, max = 10, example = "0.05 mm")
            double aim) {}

    /**
     * A place for shims.
     *
     * @param name short name
     * @param family what fits there
     * @param trial thickness that was in when the clearances were read, m
     * @param fewest pieces
     * @param most pieces
     */
    public record Seat(
            @Input(meaning = "name", example = "sI") String name,
            @Input(meaning = "family", example = "SH52") String family,

            @Input(kind = Kind.LENGTH, meaning = "trial thickness", min = 0, max = 1, example = "0.797 mm")
            double trial,

            @Input(meaning = "fewest pieces", min = 0, max = 6, example = "1")
            int fewest,

            @Input(meaning = "most pieces", min = 1, max = 6, example = "2")
            int most) {}

    /** What a place does to a clearance: its change per unit of added thickness. */
    public record Effect(
            @Input(meaning = "clearance", example = "play") String need,
            @Input(meaning = "place", example = "sI") String place,

            @Input(meaning = "change per thickness", min = -10, max = 10, example = "-1")
            double change) {}

    /** A loose piece: tag, family, thickness and its standard uncertainty, m. */
    public record Loose(
            @Input(meaning = "tag", example = "d52-03") String id,
            @Input(meaning = "family", example = "SH52") String family,

            @Input(kind = Kind.LENGTH, meaning = "thickness", min = 1e-6, max = 1, example = "0.352 mm")
            double thickness,

            @Input(kind = Kind.LENGTH, meaning = "standard uncertainty", min = 0, max = 0.01, example = "0.002 mm")
            double u) {}
}
