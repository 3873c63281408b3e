package shimwright.rebuild.unit.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.unit.begin.Construction;
import shimwright.rebuild.unit.begin.Construction.Housing;
import shimwright.rebuild.unit.begin.Construction.Layout;
import shimwright.rebuild.unit.begin.Construction.Reverse;
import shimwright.rebuild.unit.begin.Construction.Shift;
import shimwright.rebuild.unit.begin.FirstUnit;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;

/** Facts put in one by one: each leaves a file that reads without a problem, and each gap is mended by its fact. */
class UnitEditTest {
    private static UnitType begun() {
        Construction box = new Construction(
                Layout.ACROSS,
                Set.of(Housing.BELL),
                Collections.nCopies(5, 1),
                0,
                Reverse.SLIDING,
                Shift.SINGLE_RAIL,
                0);
        return read(FirstUnit.text(box, "Maker", "Model").orElseThrow());
    }

    private static UnitType read(String text) {
        UnitFiles.Result result = UnitFiles.read("u.yaml", text);
        assertThat(result.problems().stream().map(Refusal::sentence)).as(text).isEmpty();
        return result.outcome().orElseThrow();
    }

    private static UnitType edited(UnitType type, UnitEdit edit) {
        Outcome<String> text = UnitEdit.text(type, edit);
        assertThat(text.refusals().stream().map(Refusal::sentence))
                .as(edit.toString())
                .isEmpty();
        return read(text.orElseThrow());
    }

    private static AddClearance endPlay(String after) {
        return new AddClearance(
                "input end play",
                Clearance.Sense.END_PLAY,
                0.05e-3,
                0.15e-3,
                "told by the last owner",
                "under the front cover",
                new AddClearance.Shims(44e-3, 52e-3, 0.2e-3, 1e-3),
                true,
                "dial indicator 0.01 mm",
                after);
    }

    private static List<UnitGap.Kind> lacks(UnitType type) {
        return UnitGap.of(type).stream().map(UnitGap::kind).toList();
    }

    @Test
    void eachGapGoesWithItsFact() {
        UnitType type = begun();
        assertThat(lacks(type))
                .contains(
                        UnitGap.Kind.MASS,
                        UnitGap.Kind.FLUID,
                        UnitGap.Kind.CLEARANCE,
                        UnitGap.Kind.FASTENER,
                        UnitGap.Kind.PART,
                        UnitGap.Kind.ORDER);
        assertThat(lacks(edited(type, new UnitEdit.Weigh(31.5)))).doesNotContain(UnitGap.Kind.MASS);
        UnitType filled = edited(type, new UnitEdit.Fill("API GL-4, 75W-80", 2.1e-3, "lower lip of the filler"));
        assertThat(lacks(filled)).doesNotContain(UnitGap.Kind.FLUID);
        assertThat(filled.fluid().volume()).isEqualTo(2.1e-3);
        String cover = step(type, "bell");
        UnitType tight =
                edited(type, new UnitEdit.AddFastener("bell housing", "M8x30", "8.8", 10, 22, "book, page 12", cover));
        assertThat(lacks(tight)).doesNotContain(UnitGap.Kind.FASTENER);
        assertThat(tight.fasteners().get(0).origin()).isEqualTo("book, page 12");
        UnitType set = edited(type, endPlay(step(type, "input_front_bearing")));
        assertThat(lacks(set)).doesNotContain(UnitGap.Kind.CLEARANCE);
        UnitType named = type;
        for (Item item : type.items()) {
            if (item.renew()) {
                named = edited(named, new UnitEdit.NameItem(item.id(), item.name(), "25x47x7", true));
            }
        }
        assertThat(lacks(named)).doesNotContain(UnitGap.Kind.PART);
    }

    private static String step(UnitType type, String item) {
        return type.steps().stream()
                .filter(step -> step.installs().contains(item) || step.builds().contains(item))
                .map(Step::id)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aClearanceIsReadTwiceBeforeWhatShutsItIn() {
        UnitType type = begun();
        String into = type.steps().stream()
                .filter(step -> step.installs().contains("input_shaft"))
                .map(Step::id)
                .findFirst()
                .orElseThrow();
        UnitType set = edited(type, endPlay(into));
        Step last = set.steps().stream()
                .filter(step -> step.phase() == Step.Phase.FINAL)
                .findFirst()
                .orElseThrow();
        Step bell = set.steps().stream()
                .filter(step -> step.installs().contains("bell"))
                .findFirst()
                .orElseThrow();
        assertThat(bell.after()).containsEntry(last.id(), Step.Why.MEASURE_FIRST);
        assertThat(set.clearances().get(0).origin()).isEqualTo("told by the last owner");
        UnitType two = edited(set, endPlay(into));
        assertThat(two.clearances()).extracting(Clearance::id).containsExactly("a", "b");
        assertThat(two.settingOrder()).containsExactly("a", "b");
        assertThat(two.tools()).hasSize(1);
    }

    @Test
    void takingPartsAwayInAnyOrderLeavesAFileThatReadsAndAPlan() {
        Random random = new Random(3);
        for (int round = 0; round < 2; round++) {
            UnitType type = begun();
            List<String> ids =
                    new ArrayList<>(type.items().stream().map(Item::id).toList());
            Collections.shuffle(ids, random);
            for (String id : ids.subList(0, ids.size() - 3)) {
                if (!id.equals("main_case")) {
                    type = edited(type, new UnitEdit.RemoveItem(id));
                }
            }
            assertThat(Planner.hindrances(type.resolve("A"), Map.of(), Set.of()))
                    .isEmpty();
        }
    }

    @Test
    void whatWaitedForAPartThatIsGoneWaitsForWhatThatOneWaitedFor() {
        UnitType type = begun();
        Step hub = byId(type, step(type, "hub_12"));
        Step wheel = byId(type, step(type, "ring_1"));
        assertThat(hub.after()).containsKey(wheel.id());
        UnitType less = edited(type, new UnitEdit.RemoveItem("ring_1"));
        assertThat(byId(less, hub.id()).after().keySet())
                .containsAll(wheel.after().keySet())
                .doesNotContain(wheel.id());
    }

    private static Step byId(UnitType type, String id) {
        return type.steps().stream()
                .filter(step -> step.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aPartAddedIsFittedAfterTheStepThatWasNamed() {
        UnitType type = begun();
        UnitType more = edited(type, new UnitEdit.AddItem("oil baffle", "", 1, "C01"));
        assertThat(more.items()).extracting(Item::id).contains("oil_baffle");
        assertThat(more.steps().get(1).installs()).containsExactly("oil_baffle");
        UnitType twice = edited(more, new UnitEdit.AddItem("oil baffle", "", 2, "C01"));
        assertThat(twice.items()).hasSize(type.items().size() + 2);
        assertThat(edited(twice, new UnitEdit.RemoveItem("oil_baffle")).items())
                .hasSize(type.items().size() + 1);
    }

    @Test
    void whatCannotBeIsRefusedAndTheFileStays() {
        UnitType type = begun();
        assertThat(UnitEdit.text(type, new UnitEdit.Weigh(5000)).refusals()).isNotEmpty();
        assertThat(UnitEdit.text(type, new UnitEdit.RemoveItem("nothing")).refusals())
                .hasSize(1);
        assertThat(UnitEdit.text(type, new UnitEdit.NameItem("nothing", "x", "", false))
                        .refusals())
                .hasSize(1);
        assertThat(UnitEdit.text(type, new UnitEdit.AddItem("x", "", 1, "Z9")).refusals())
                .hasSize(1);
        assertThat(UnitEdit.text(type, endPlay("Z9")).refusals()).hasSize(1);
        UnitEdit upside = new AddClearance(
                "x",
                Clearance.Sense.END_PLAY,
                0.15e-3,
                0.05e-3,
                "guess",
                "here",
                new AddClearance.Shims(44e-3, 52e-3, 0.2e-3, 1e-3),
                true,
                "dial indicator",
                "C01");
        assertThat(UnitEdit.text(type, upside).refusals()).isNotEmpty();
        assertThat(UnitEdit.text(type, signed(Clearance.Sense.PRELOAD, 0.05e-3, 0.15e-3, AddClearance.Proof.NONE))
                        .refusals())
                .singleElement()
                .matches(r -> r.key().equals("sense"));
        assertThat(UnitEdit.text(type, signed(Clearance.Sense.END_PLAY, -0.15e-3, -0.05e-3, AddClearance.Proof.NONE))
                        .refusals())
                .singleElement()
                .matches(r -> r.key().equals("sense"));
    }

    private static AddClearance signed(Clearance.Sense sense, double lower, double upper, AddClearance.Proof proof) {
        return new AddClearance(
                "x",
                sense,
                lower,
                upper,
                "guess",
                "here",
                new AddClearance.Shims(44e-3, 52e-3, 0.2e-3, 1e-3),
                true,
                "dial indicator",
                "C01",
                proof);
    }

    @Test
    void aPreloadIsReadAsPlayAndProvenByItsTorque() {
        AddClearance.Proof drag = new AddClearance.Proof(0, List.of(0.8, 1.9));
        UnitType type = edited(begun(), signed(Clearance.Sense.PRELOAD, -0.06e-3, -0.02e-3, drag));
        assertThat(type.clearances().get(0).method()).isEqualTo(Clearance.Method.TRAVEL);
        assertThat(type.steps().stream()
                        .filter(step -> !step.clearance().isEmpty())
                        .map(Step::phase))
                .containsExactly(Step.Phase.TRIAL);
        UnitType.HoldPoint hold = type.holdPoints().get(0);
        assertThat(type.steps()).anyMatch(step -> step.hold().equals(hold.id()));
        assertThat(hold.checks().get(0).lower().orElseThrow().si()).isEqualTo(0.8);
        UnitType unsaid = edited(begun(), signed(Clearance.Sense.PRELOAD, -0.06e-3, -0.02e-3, AddClearance.Proof.NONE));
        assertThat(unsaid.holdPoints().get(0).checks().get(0).kind()).isEqualTo(UnitType.CheckKind.NONE);
    }

    @Test
    void aDistanceIsReadAsItStands() {
        AddClearance.Proof bar = new AddClearance.Proof(20e-3, List.of());
        Clearance depth = edited(begun(), signed(Clearance.Sense.DISTANCE, 51.97e-3, 52.03e-3, bar))
                .clearances()
                .get(0);
        assertThat(depth.method()).isEqualTo(Clearance.Method.SERIES);
        assertThat(depth.value(List.of(32e-3))).isCloseTo(52e-3, within(1e-12));
    }

    @Test
    void shimsThatTheFileHasAreTheOnesAndThoseOfOneRingAreOneFamily() {
        UnitType type = edited(begun(), endPlay("C01"));
        int items = type.items().size();
        String has = type.items().get(0).id();
        AddClearance other = new AddClearance(
                "output end play",
                Clearance.Sense.END_PLAY,
                0.05e-3,
                0.15e-3,
                "guess",
                "behind the cup",
                new AddClearance.Shims(44e-3, 52e-3, 0.1e-3, 1.2e-3, has),
                true,
                "dial indicator",
                "C01");
        UnitType two = edited(type, other);
        assertThat(two.items()).hasSize(items);
        assertThat(two.shimFamilies()).hasSize(1);
        assertThat(two.shimFamilies().values().iterator().next().thickest()).isEqualTo(1.2e-3);
        assertThat(two.clearances().get(1).positions().get(0).item()).isEqualTo(has);
    }

    @Test
    void whatTheBoxDoesNotHaveGoesAtOnce() {
        UnitType type = begun();
        UnitType less = edited(type, new UnitEdit.RemoveItems(List.of("magnet", "breather")));
        assertThat(less.items()).hasSize(type.items().size() - 2);
        assertThat(UnitEdit.text(type, new UnitEdit.RemoveItems(List.of())).refusals())
                .hasSize(1);
        assertThat(UnitEdit.text(type, new UnitEdit.RemoveItems(List.of("magnet", "magnet")))
                        .refusals())
                .hasSize(1);
    }

    @Test
    void theShippedUnitsCanBeChangedToo() {
        UnitType shipped =
                UnitFiles.read("example.yaml", UnitFiles.example()).outcome().orElseThrow();
        for (UnitEdit edit : List.of(
                new UnitEdit.Weigh(40),
                new UnitEdit.AddItem("oil baffle", "", 1, shipped.steps().get(3).id()),
                new UnitEdit.NameItem(shipped.items().get(0).id(), "case", "X-1", false))) {
            edited(shipped, edit);
        }
    }
}
