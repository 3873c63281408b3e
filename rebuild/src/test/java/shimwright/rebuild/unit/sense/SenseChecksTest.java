package shimwright.rebuild.unit.sense;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.unit.fault.QuantityText;
import shimwright.rebuild.unit.file.UnitFileTexts;
import shimwright.rebuild.unit.file.UnitFiles;

/** Limits from elsewhere are not trusted: each fault here is one that printed service data has been seen to carry. */
class SenseChecksTest {

    /** One piece of the starter replaced: a problem with these words, at the place where the marker begins. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            lower: 0.02 mm        | lower: 0.20 mm          | 0.20 mm      | 0.2 mm is not below the upper limit 0.08 mm
            lower: 0.02 mm        | lower: -0.02 mm         | -0.02 mm     | lower limit of an end play is negative
            aim: 0.05 mm          | aim: 0.5 mm             | 0.5 mm       | aim 0.5 mm lies outside the limits
            upper: 0.08 mm        | upper: 8 mm             | 8 mm         | upper is 8 mm
            sense: end_play       | sense: preload          | 0.08 mm      | a preload is negative here
            effect: -1,           | effect: 1,              | 1, item      | says that a thicker piece opens, the loop says that it closes
            effect: -1,           | effect: -10,            | -10          | the effect is -10.0
            nominal: 217.05 mm    | nominal: 217.5 mm       | "            | add up to 0.5 mm
            sign: 1, material: casting | sign: 2, material: casting | 2, material | the sign is 2
            most: 2,              | most: 9,                | 9,           | from 1 to 9 pieces
            settle_within: 0.02 mm | settle_within: 0.02 in | 0.02 in      | settle_within is 0.508 mm
            indicators: 2         | indicators: 3           | 3            | indicators is 3
            setting_order: [c]    | setting_order: []       | []           | clearance c is missing
            setting_order: [c]    | setting_order: [c, c]   | [c, c]       | clearance c stands twice
            limit: 0.05 mm        | limit: 0.01 mm          | 0.01 mm      | rejects above 0.01 mm, but a new one may have 0.02 mm
            limit: 0.05 mm        | limit: 0.5 in           | 0.5 in       | the limit 0.5 in is far from new
            limit: 0.05 mm        | limit: 0.05             | 0.05,        | "0.05" has no unit
            direction: max        | direction: min          | 0.05 mm      | rejects below 0.05 mm, but a new one may have 0 mm
            as_new: [0 mm, 0.02 mm] | as_new: [0.02 mm]     | [0.02 mm]    | as_new has 1 values
            as_new: [0 mm, 0.02 mm] | as_new: [0.02 mm, 0 mm] | [0.02 mm, 0 | the least new size is above the most
            direction: max        | direction: attest       | length,      | kind none and direction attest belong together
            limit: 0.05 mm        | limit: soon             | soon,        | "limit" of wear limit "C1": "soon" is not a number
            limit: 0.05 mm        | limit: 0.05             | 0.05,        | "limit" of wear limit "C1": "0.05" has no unit
            limit: 0.05 mm        | limit: 0.05 bar         | 0.05 bar,    | "0.05 bar" is a pressure; a length is needed here
            limit: 0.05 mm        | limit: 0.05 mm (0.02 in) | 0.05 mm (   | the two do not agree
            limit: 0.05 mm        | limit: 0.05 mm, rate: slow | slow,     | "rate" of wear limit "C1": "slow" is not a number
            kind: length          | kind: none              | [0 mm, 0.02 mm], limit | "as_new" of wear limit "C1" is a quantity, but kind says none
            clearance: c}         | kind: length, upper: 5 mm, reading_factor: 0} | 0}     | the value is 0.0 times the reading
            clearance: c}         | kind: length, upper: 5 mm, judged_on: range} | range} | one reading has no range
            clearance: c}         | kind: length, upper: 5 mm, judged_on: difference, places: 3} | difference | a difference is that of two readings
            clearance: c}         | kind: length, upper: 5 mm, pieces: [left, left]} | [left | a piece has no name or that of another
            clearance: c}         | kind: length, upper: 5 mm, places: 3, judged_on: range, spread: 1 mm} | 1 mm} | range and spread say the same
            clearance: c}         | kind: length, upper: 5 mm, nominal: [6 mm]} | [6 mm] | the nominal 6 mm lies outside the limits
            clearance: c}         | kind: length, upper: 5 mm, pieces: [a, b, c], nominal: [1 mm, 2 mm]} | [1 mm | 2 nominals of 3 pieces
            clearance: c}         | kind: length, upper: 5 mm, within: 1 mm} | 1 mm} | it belongs to a nominal and is above 0
            clearance: c}         | kind: length, upper: 5 mm, relative_to: H1/plai} | H1/plai | is no other check that reads the same kind
            clearance: c}         | kind: length, upper: 5 mm, gauge: DU} | DU}    | "DU" is not among the tools
            clearance: c}         | pieces: [left, right]}  | play, what   | places, pieces or a gauge without a kind
            fasteners: [V1]       | fasteners: [V1]\\n    tightened: {V1: 9} | {V1: 9} | tightened is 9
            fasteners: [V1]       | tightened: {V1: 4}      | {V1: 4}      | it counts V1, which it does not tighten
            steps: [0 17 30 mm, 17 200 36 mm, 200 216 25 mm] | steps: [0 17 30 mm, 17 200 36 mm, 200 216 25 mm], bores: [-5 20 10 mm] | [-5 20 | a bore reaches out of the shaft
            steps: [0 17 30 mm, 17 200 36 mm, 200 216 25 mm] | steps: [0 17 30 mm, 17 200 36 mm, 200 216 25 mm], bores: [0 20 30 mm] | [0 20 | a bore of 30 mm leaves nothing of the shaft
            fasteners:\\n        | gears: [{id: g4, name: 4th, straight: true, driver: 20, driven: 20}]\\nfasteners:\\n | true, | straight through no tooth runs
            fasteners:\\n        | gears: [{id: g4, name: 4th}]\\nfasteners:\\n | {id: g4 | driver is 0
            clearance: c}         | kind: force, upper: 5 mm} | 5 mm}      | "5 mm" is a length; a force is needed here
            clearance: c}         | kind: force, upper: 5 N, places: 3, spread: x} | x} | "spread" of check "play"
            torque: 20 N.m        | torque: 20 lbf.in, preload: 13.9 kN, nut_factor: 0.18 | 13.9 kN | nut factor x preload x diameter is 20.016
            torque: 20 N.m        | torque: 2000 N.m        | 2000 N.m     | torque is 2000
            thinnest: 0.25 mm     | thinnest: 2.5 mm        | 2.5 mm       | the thinnest is not thinner
            expansion: 21.8 um/m/K | expansion: 218 um/m/K  | 218          | expansion is 218
            volume: 2.0 L         | volume: 2000 L          | 2000 L       | volume is 2000 L
            mass: 40 kg           | mass: 40 g              | 40 g         | mass is 0.04 kg
            duration: 5 min       | duration: 5 d           | 5 d          | duration is
            open: 10 min          | open: 10 d              | 10 d         | open is
            quantity: 8           | quantity: 0             | 0, torque    | quantity is 0
            clearance: c}         | clearance: c, kind: length, lower: 2 mm, upper: 1 mm} | 2 mm, upper | lower limit 2 mm is not below the upper limit 1 mm
            clearance: c}         | kind: length}           | length}      | measured against nothing
            clearance: c}         | lower: 2 mm}            | 2 mm}        | "lower" of check "play" is a quantity, but kind says none
            clearance: c\\n    phase: final | trap: none    | H1           | hold point H1 wants clearance c, the step reads none
            gauge: DI             | etched_step: 0.01 mm\\n    gauge: DI | 0.01 mm | etched_step and etched_by belong together
            gauge: DI             | etched_step: 0.01 mm\\n    etched_by: H1/play\\n    gauge: DI | H1/play | is no check that reads a number
            tell_tales: []        | tell_tales: []\\nturn_over: {UP-DOWN: 4 min} | {UP-DOWN | does not lead from one station to another
            shape: shim, shaft: input | shape: shim         | shim, along  | it is drawn but on no shaft
            shape: shim, shaft: input, along: 216 217 mm | shape: shim, shaft: input | {id: sI, name: end | along is missing
            """)
    void oneFault(String piece, String fresh, String marker, String fact) {
        String text = UnitFileTexts.with(piece.replace("\\n", "\n"), fresh.replace("\\n", "\n"));
        List<Refusal> problems = UnitFileTexts.problems(text);
        assertThat(problems)
                .as("%s", problems.stream().map(Refusal::sentence).toList())
                .filteredOn(p -> p.fact().contains(fact))
                .singleElement()
                .satisfies(p -> {
                    assertThat(p.hint()).isNotBlank();
                    if (!marker.equals("\"")) {
                        String[] place = p.place().split(":");
                        String line = text.lines().toList().get(Integer.parseInt(place[1]) - 1);
                        assertThat(line.substring(Integer.parseInt(place[2]) - 1))
                                .startsWith(marker);
                    }
                });
    }

    @Test
    void inchAndMetricMustAgree() {
        assertThat(UnitFileTexts.problems(UnitFileTexts.with("upper: 0.08 mm", "upper: 0.08 mm (0.0031 in)")))
                .isEmpty();
        // 1.07 mm was once printed as 0.074 in, from memory of a service sheet; 0.042 in is right
        assertThat(QuantityText.one("1.07 mm (0.042 in)", Kind.LENGTH).isOk()).isTrue();
        assertThat(QuantityText.one("1.07 mm (0.074 in)", Kind.LENGTH).isOk()).isFalse();
    }

    private static final String HEATED = UnitFiles.starter()
            .replace(
                    "    after: {S1: same_part}\n    duration: 20 min\n",
                    "    after: {S1: same_part, K1: same_part}\n    duration: 20 min\n    dangers: [heat]\n    windows: W1\n")
            .replace("\nsteps:\n", """

                    windows:
                      - {id: W1, name: hot case, longest: 90 min, why: it cools}
                    steps:
                      - {id: K1, todo: Heat the case., at: BENCH, duration: 45 min, dangers: [heat], windows: [W1]}
                    """);

    /** One after the other by form: what nothing refers to yet is no fault, and is asked for. */
    @Test
    void whatNoStepReadsYetIsToBeLookedAt() {
        assertThat(remarks(UnitFileTexts.with("hold: H1", "trap: none")))
                .anyMatch(said -> said.contains("no step stands in it"));
    }

    private static List<String> remarks(String text) {
        return UnitFiles.read("u.yaml", text) instanceof UnitFiles.Good good
                ? good.remarks().stream().map(Refusal::sentence).toList()
                : UnitFileTexts.sentences(text);
    }

    @Test
    void whatIsHeatedAndFittedLaterWithoutAnOpenedWindowIsRemarkedUpon() {
        assertThat(remarks(HEATED))
                .singleElement()
                .asString()
                .startsWith(UnitFileTexts.place(HEATED, "W1\n"))
                .contains("step S2: it fits what K1 heated or chilled, and no window is opened by K1 and closed by S2")
                .endsWith("Write a window with opens: K1 and closes: S2.");
        String held = HEATED.replace("longest: 90 min,", "longest: 90 min, opens: K1, closes: S2,");
        assertThat(remarks(held)).isEmpty();
        String longer = HEATED.replace("longest: 90 min,", "longest: 90 min, opens: K1, closes: S3,");
        assertThat(remarks(longer)).isEmpty();
        String other = HEATED.replace("longest: 90 min,", "longest: 90 min, opens: S2, closes: S3,");
        assertThat(remarks(other)).hasSize(1);
        // heated and fitted in one step needs no window; nor does what waits for the heat and fits nothing
        assertThat(remarks(UnitFiles.starter().replace("    undo: slow\n", "    undo: slow\n    dangers: [heat]\n")))
                .isEmpty();
        assertThat(remarks(HEATED.replace("    windows: W1\n", "").replace(", windows: [W1]", "")))
                .anySatisfy(s -> assertThat(s).contains("window W1: no step names it and none opens or closes it"));
    }

    @Test
    void aCircleIsNamedInTheWordsOfItsSteps() {
        String text = UnitFileTexts.with("    duration: 5 min\n", "    duration: 5 min\n    after: {S3: blocked}\n");
        assertThat(UnitFileTexts.sentences(text))
                .singleElement()
                .asString()
                .contains("S1 (Stand the input shaft in its front bearing) waits for S3 (Chosen shim in, cover on with"
                        + " locker) waits for S2 (Rear cup and trial shim in, cover on dry) waits for S1")
                .contains("in variant A")
                .startsWith(UnitFileTexts.place(text, "{S3: blocked}"));
    }

    @Test
    void aSideThatMakesACircleIsNamed() {
        String text = UnitFiles.starter() + """
                choices:
                  - id: O1
                    about: order
                    sides:
                      one: {before: [[S1, S2]], why: a}
                      other: {before: [[S3, S1]], why: b}
                    usual: one
                """;
        assertThat(UnitFileTexts.sentences(text))
                .singleElement()
                .asString()
                .contains("side other makes steps of variant A");
        assertThat(UnitFileTexts.sentences(text.replace("usual: one", "usual: on")))
                .anySatisfy(s -> assertThat(s).contains("\"on\" is none of its sides. Did you mean \"one\""));
        assertThat(UnitFileTexts.sentences(text.replace("[[S3, S1]]", "[[S3, S1], [S2]]")))
                .anySatisfy(s -> assertThat(s).contains("an order is a pair of steps"));
    }

    @Test
    void aWindowMustBePossible() {
        String windows = UnitFiles.starter() + """
                windows:
                  - {id: W1, name: sealant, longest: 10 min, opens: S1, closes: S3, why: it skins}
                  - {id: W2, name: locker, longest: 60 min, opens: S3, closes: S1, why: it sets}
                  - {id: W3, name: half, longest: 60 min, opens: S3, why: it sets}
                """;
        assertThat(UnitFileTexts.sentences(windows))
                .satisfiesExactly(
                        s -> assertThat(s).contains("the window is open 10 min, the steps in it take 40 min at least"),
                        s -> assertThat(s).contains("S1 does not come after S3"),
                        s -> assertThat(s).contains("W3: opens and closes belong together"));
    }

    @Test
    void aSideLeavesNoWindowThatIsClosedBeforeItIsOpened() {
        String sides = UnitFiles.starter() + """
                windows:
                  - {id: W1, name: sealant, longest: 90 min, opens: S1, closes: S3, why: it skins}
                choices:
                  - id: O1
                    about: which way
                    sides:
                      one: {why: as always}
                      two: {drops: [[S2, S3]], why: sooner}
                    usual: one
                """;
        assertThat(UnitFileTexts.sentences(sides))
                .satisfiesExactly(s ->
                        assertThat(s).contains("on side two of variant A S3, which closes W1, does not come after S1"));
    }

    /** The starter with two variants and these tell-tales. */
    private static String twoVariants(String tellTales) {
        return UnitFiles.starter()
                .replace("  A: {name: the only variant so far}", "  A: {name: first}\n  B: {name: second}")
                .replace("tell_tales: []", "tell_tales:\n" + tellTales.indent(2).stripTrailing());
    }

    @Test
    void variantsMustBeToldApart() {
        String two = twoVariants("""
                - {id: I1, look: teeth, weight: strong, shows: {A: 25, B: 29}}
                - {id: I2, look: tag, weight: weak, shows: {A: a}}
                - {id: I3, look: plug, weight: strong, shows: {A: round, B: round}}
                """);
        // a variant can be written before what tells it apart; until then the variant is asked for at each intake
        assertThat(remarks(two))
                .satisfiesExactlyInAnyOrder(
                        s -> assertThat(s).contains("1 strong tell-tale keeps variant A and variant B apart"),
                        s -> assertThat(s).contains("tell tale I2: it does not say what variant B shows"));
        assertThat(UnitFileTexts.sentences(two.replace("{A: 25, B: 29}", "{A: 25, C: 29}")))
                .anySatisfy(s -> assertThat(s).contains("\"C\" is not among the variants"));
    }

    @Test
    void whatIsMissingInAVariantIsNamed() {
        String two = twoVariants("""
                - {id: I1, look: teeth, weight: strong, shows: {A: 25, B: 29}}
                - {id: I2, look: ring, weight: strong, shows: {A: 9, B: 8}}
                """);
        assertThat(UnitFileTexts.sentences(two)).isEmpty();
        String missing = two.replace("  - id: H1\n", "  - id: H1\n    only: [A]\n");
        assertThat(UnitFileTexts.sentences(missing))
                .singleElement()
                .asString()
                .contains("step S3: it holds for variant B, but \"H1\" of the hold points does not");
        String twice = two.replace("  - {id: cover, name: rear cover", "  - {id: cover, name: rear cover, only: [A]")
                .replace(
                        "  - {id: input, name: input shaft, material: steel}",
                        "  - {id: cover, name: other cover, only: [B]}\n"
                                + "  - {id: input, name: input shaft, material: steel}");
        assertThat(UnitFileTexts.sentences(twice)).isEmpty();
    }

    @Test
    void growthMustFollowFromTheMaterials() {
        String grown = UnitFileTexts.with("    loop:\n", "    growth: 0.0967 mm\n    loop:\n");
        assertThat(UnitFileTexts.sentences(grown)).isEmpty();
        assertThat(UnitFileTexts.sentences(grown.replace("growth: 0.0967 mm", "growth: -0.0967 mm")))
                .singleElement()
                .asString()
                .contains("the growth is -0.0967 mm, the materials of the loop give 0.0967");
    }

    @Test
    void clearancesInACircle() {
        assertThat(UnitFileTexts.sentences(
                        UnitFileTexts.with("    positions:\n", "    depends_on: [c]\n    positions:\n")))
                .anySatisfy(s -> assertThat(s).contains("depend on each other in a circle"));
    }

    @Test
    void dragBelongsToAPreload() {
        String preload =
                UnitFiles.example().replace("at_zero: 0.30 N.m, rise: 26 kN", "at_zero: 0.30 N.m, rise: 2.6 kN");
        assertThat(UnitFileTexts.sentences(preload))
                .hasSize(2)
                .allSatisfy(s -> assertThat(s).contains("at that limit of the preload at_zero and rise give"));
        String play = UnitFileTexts.with(
                "    positions:\n", "    drag: [{where: nut, lower: 0.8 N.m, upper: 1.9 N.m}]\n    positions:\n");
        assertThat(UnitFileTexts.sentences(play)).anySatisfy(s -> assertThat(s).contains("clearance c is none"));
    }

    @Test
    void reasonsAndChoicesOfTheExample() {
        String text = UnitFiles.example()
                .replace("because: {P07: M10}", "because: {P07: M100}")
                .replace("because: {S03: B7}", "because: {S02: B7}")
                .replace("{pinion preload lost: 45,", "{pinion preload lost: 4.5,");
        assertThat(UnitFileTexts.sentences(text))
                .satisfiesExactlyInAnyOrder(
                        s -> assertThat(s).contains("\"M100\" is not among the reasons. Did you mean \"M10\"?"),
                        s -> assertThat(s).contains("\"M100\" is not among the reasons. Did you mean \"M10\"?"),
                        s -> assertThat(s).contains("step S04: a reason is given for S02, but it does not wait for it"),
                        s -> assertThat(s).contains("symptom Y1: the shares of its causes add up to 59.5 percent"));
    }

    @Test
    void gearsSplinesAndBearingsOfTheExample() {
        String text = UnitFiles.example()
                .replace("driver: 12, driven: 43", "driver: 12, driven: 34")
                .replace("over_pins: 23.572 mm", "over_pins: 32.572 mm")
                .replace(
                        "{id: 25k6, where: \"input rear cone, pinion rear inner ring\", nominal: 25 mm, least: 2 um, most: 15 um}",
                        "{id: 25k6, where: x, nominal: 25 mm, least: 20 um, most: 15 um}")
                .replace("width: 24.75 mm, width_tolerance: 0 0.20 mm", "width: 24.75 mm, width_tolerance: 0.20 0 mm");
        assertThat(UnitFileTexts.sentences(text))
                .satisfiesExactlyInAnyOrder(
                        s -> assertThat(s)
                                .contains("gear pair g1: centre distance 74 mm, but module, teeth and helix give"),
                        s -> assertThat(s).contains("spline CL: over_pins is 32.572 mm"),
                        s -> assertThat(s).contains("fit 25k6: the least deviation is above the most"),
                        s -> assertThat(s)
                                .contains("bearing PH: width_tolerance must be two values, the smaller first"));
    }
}
