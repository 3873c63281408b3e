package shimwright.rebuild.unit.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.ShimFamily;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitKeys;
import shimwright.rebuild.unit.model.UnitType;

/** A unit type with one of its parts exchanged. */
final class TypeParts {
    private static final double USUAL_MINUTES = 3 * 60;

    private TypeParts() {}

    static UnitType with(UnitType t, UnitKeys.Identity identity) {
        return new UnitType(
                identity,
                t.materials(),
                t.bench(),
                t.parts(),
                t.setting(),
                t.renewal(),
                t.build(),
                t.symptoms(),
                t.handling(),
                t.reasons(),
                t.lessons(),
                t.openings());
    }

    static UnitType with(UnitType t, UnitKeys.Bench bench) {
        return new UnitType(
                t.identity(),
                t.materials(),
                bench,
                t.parts(),
                t.setting(),
                t.renewal(),
                t.build(),
                t.symptoms(),
                t.handling(),
                t.reasons(),
                t.lessons(),
                t.openings());
    }

    static UnitType with(UnitType t, UnitKeys.Parts parts) {
        return new UnitType(
                t.identity(),
                t.materials(),
                t.bench(),
                parts,
                t.setting(),
                t.renewal(),
                t.build(),
                t.symptoms(),
                t.handling(),
                t.reasons(),
                t.lessons(),
                t.openings());
    }

    static UnitType with(UnitType t, UnitKeys.Setting setting) {
        return new UnitType(
                t.identity(),
                t.materials(),
                t.bench(),
                t.parts(),
                setting,
                t.renewal(),
                t.build(),
                t.symptoms(),
                t.handling(),
                t.reasons(),
                t.lessons(),
                t.openings());
    }

    static UnitType with(UnitType t, UnitKeys.Build build) {
        return new UnitType(
                t.identity(),
                t.materials(),
                t.bench(),
                t.parts(),
                t.setting(),
                t.renewal(),
                build,
                t.symptoms(),
                t.handling(),
                t.reasons(),
                t.lessons(),
                t.openings());
    }

    static UnitType withItems(UnitType t, List<Item> items) {
        UnitKeys.Parts p = t.parts();
        return with(
                t,
                new UnitKeys.Parts(
                        items, p.section(), p.gears(), p.bearings(), p.seals(), p.splines(), p.fits(), p.fasteners()));
    }

    static UnitType withFasteners(UnitType t, List<Fastener> fasteners) {
        UnitKeys.Parts p = t.parts();
        return with(
                t,
                new UnitKeys.Parts(
                        p.items(), p.section(), p.gears(), p.bearings(), p.seals(), p.splines(), p.fits(), fasteners));
    }

    static UnitType withSteps(UnitType t, List<Step> steps) {
        UnitKeys.Build b = t.build();
        return with(t, new UnitKeys.Build(b.holdPoints(), b.windows(), steps, b.choices(), b.proof()));
    }

    static UnitType withClearance(UnitType t, Map<String, ShimFamily> families, List<Clearance> clearances) {
        List<String> order = new ArrayList<>(t.settingOrder());
        clearances.stream().map(Clearance::id).filter(id -> !order.contains(id)).forEach(order::add);
        return with(t, new UnitKeys.Setting(families, clearances, order));
    }

    static Item named(Item i, String name, String part, boolean renewed) {
        return new Item(
                i.id(),
                name,
                part,
                i.shape(),
                i.shaft(),
                i.along(),
                i.diameters(),
                i.also(),
                i.quantity(),
                i.trial(),
                renewed,
                i.sideways(),
                i.material(),
                i.only());
    }

    static Item plain(String id, String name, String part, int quantity) {
        return new Item(
                id,
                name,
                part,
                Item.Shape.NONE,
                "",
                List.of(),
                List.of(),
                List.of(),
                quantity,
                false,
                false,
                false,
                "",
                Set.of());
    }

    /** A step of three minutes that fits items. */
    static Step step(String id, String todo, String at, Map<String, Step.Why> after, List<String> installs) {
        return new Step(
                id,
                todo,
                at,
                new Step.Order(after, Map.of()),
                USUAL_MINUTES,
                List.of(),
                new Step.Undoing(Step.Undo.FREE, 0, List.of()),
                new Step.Care("", List.of(), "", ""),
                new Step.Parts(List.of(), installs, List.of(), List.of(), Map.of(), List.of()),
                new Step.Reading("", Step.Phase.NONE),
                List.of(),
                1,
                Set.of());
    }

    static Step reading(Step s, String clearance, Step.Phase phase, String tool) {
        return new Step(
                s.id(),
                s.todo(),
                s.at(),
                s.order(),
                s.duration(),
                List.of(tool),
                s.undoing(),
                s.care(),
                s.parts(),
                new Step.Reading(clearance, phase),
                s.dangers(),
                s.persons(),
                s.only());
    }

    static Step ordered(Step s, Step.Order order) {
        return new Step(
                s.id(),
                s.todo(),
                s.at(),
                order,
                s.duration(),
                s.tools(),
                s.undoing(),
                s.care(),
                s.parts(),
                s.reading(),
                s.dangers(),
                s.persons(),
                s.only());
    }

    static Step fitting(Step s, Step.Parts parts) {
        return new Step(
                s.id(),
                s.todo(),
                s.at(),
                s.order(),
                s.duration(),
                s.tools(),
                s.undoing(),
                s.care(),
                parts,
                s.reading(),
                s.dangers(),
                s.persons(),
                s.only());
    }

    static Step tightening(Step s, String fastener) {
        Step.Parts p = s.parts();
        List<String> fasteners = new ArrayList<>(p.fasteners());
        fasteners.add(fastener);
        return fitting(
                s, new Step.Parts(p.builds(), p.installs(), p.removes(), fasteners, p.tightened(), p.consumables()));
    }

    /** A name as an id: small letters, digits and low lines. */
    static String idOf(String name) {
        String id = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "_").replaceAll("^_|_$", "");
        return id.isEmpty() || Character.isDigit(id.charAt(0)) ? "part_" + id : id;
    }

    /** The beginning itself where it is no id yet and a word, else with the first free number behind it. */
    static String freeId(String begin, Collection<String> taken) {
        if (begin.length() > 1 && !taken.contains(begin)) {
            return begin;
        }
        int number = 1;
        while (taken.contains(begin + number)) {
            number++;
        }
        return begin + number;
    }
}
