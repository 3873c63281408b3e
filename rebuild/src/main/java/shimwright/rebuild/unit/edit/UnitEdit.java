package shimwright.rebuild.unit.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.unit.begin.FirstUnit;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;

/** One fact that a person puts into a unit file: the same file with it, checked as any other file is. */
public sealed interface UnitEdit
        permits UnitEdit.Weigh,
                UnitEdit.Fill,
                UnitEdit.CopyAs,
                UnitEdit.NameItem,
                UnitEdit.AddItem,
                UnitEdit.RemoveItem,
                UnitEdit.RemoveItems,
                UnitEdit.AddFastener,
                AddClearance,
                AsVariant,
                OwnTimes,
                StripDownOrder,
                PutEntry,
                DropEntry {
    /** The unit type with the fact in it; refused where the fact cannot be. */
    Outcome<UnitType> on(UnitType type);

    /** What was changed, in a few words. */
    String words();

    /**
     * The text of the changed file.
     *
     * @param type as it stands
     * @param edit what is put into it
     * @return text that reads without a problem; refused with every problem that the change would bring
     */
    static Outcome<String> text(UnitType type, UnitEdit edit) {
        return edit.on(type).flatMap(UnitFiles::writeSound);
    }

    /**
     * What it weighs.
     *
     * @param kilograms dry mass, kg, above 0
     */
    record Weigh(double kilograms) implements UnitEdit {
        @Override
        public Outcome<UnitType> on(UnitType type) {
            return Outcome.ok(Component.with(type, "mass", kilograms));
        }

        @Override
        public String words() {
            return "what it weighs";
        }
    }

    /**
     * Which oil, and how much.
     *
     * @param spec specification and grade
     * @param volume m³
     * @param level where the level is read
     */
    record Fill(String spec, double volume, String level) implements UnitEdit {
        @Override
        public Outcome<UnitType> on(UnitType type) {
            return Outcome.ok(Component.with(type, "fluid", new UnitType.Fluid(spec, volume, level)));
        }

        @Override
        public String words() {
            return "its oil";
        }
    }

    /**
     * Another unit type that is like this one: the same parts, steps and limits under another name.
     *
     * @param maker who made the other
     * @param model what the other is called
     */
    record CopyAs(String maker, String model) implements UnitEdit {
        @Override
        public Outcome<UnitType> on(UnitType type) {
            UnitType other = Component.with(type, "id", FirstUnit.id(maker, model));
            other = Component.with(other, "maker", maker);
            other = Component.with(other, "model", model);
            return Outcome.ok(Component.with(other, "invented", false));
        }

        @Override
        public String words() {
            return maker + " " + model;
        }
    }

    /**
     * An item gets another name or the number or stamp of its part.
     *
     * @param id of the item
     * @param name in the trade's words
     * @param part number or stamp; empty where it is not known
     * @param renewed true where it is renewed whenever it has been out
     */
    record NameItem(String id, String name, String part, boolean renewed) implements UnitEdit {
        @Override
        public Outcome<UnitType> on(UnitType type) {
            if (type.items().stream().noneMatch(item -> item.id().equals(id))) {
                return Outcome.refused(Refusal.of("item", "there is no item " + id, "Load the page again"));
            }
            List<Item> items = type.items().stream()
                    .map(item -> item.id().equals(id) ? named(item) : item)
                    .toList();
            return Outcome.ok(Component.with(type, "items", items));
        }

        private Item named(Item item) {
            Item named = Component.with(item, "name", name);
            return Component.with(Component.with(named, "part", part), "renew", renewed);
        }

        @Override
        public String words() {
            return name;
        }
    }

    /**
     * A part that the file does not have, with the step that fits it.
     *
     * @param name in the trade's words
     * @param part number or stamp; may be empty
     * @param quantity pieces, 1 or more
     * @param after the step after which it goes in
     */
    record AddItem(String name, String part, int quantity, String after) implements UnitEdit {
        @Override
        public Outcome<UnitType> on(UnitType type) {
            Step before = type.steps().stream()
                    .filter(step -> step.id().equals(after))
                    .findFirst()
                    .orElse(null);
            if (before == null) {
                return Outcome.refused(Refusal.of(
                        "after",
                        after.isEmpty() ? "no step is chosen" : "there is no step \"" + after + "\"",
                        "Choose what it goes in after"));
            }
            String id = TypeParts.freeId(
                    TypeParts.idOf(name), type.items().stream().map(Item::id).toList());
            Item item = Item.plain(id, name, part, quantity);
            Step fit = TypeParts.step(
                    TypeParts.freeId("N", type.steps().stream().map(Step::id).toList()),
                    "Fit " + name + ".",
                    before.at(),
                    Map.of(after, Step.Why.HABIT),
                    List.of(id));
            List<Step> steps = new ArrayList<>(type.steps());
            steps.add(steps.indexOf(before) + 1, fit);
            List<Item> items =
                    Stream.concat(type.items().stream(), Stream.of(item)).toList();
            return Outcome.ok(Component.with(Component.with(type, "items", items), "steps", steps));
        }

        @Override
        public String words() {
            return name;
        }
    }

    /**
     * An item that this unit does not have goes out of the file, with the steps that only fit it; what waited for such a step
     * waits for what that one waited for.
     *
     * @param id of the item
     */
    record RemoveItem(String id) implements UnitEdit {
        @Override
        public Outcome<UnitType> on(UnitType type) {
            if (type.items().stream().noneMatch(item -> item.id().equals(id))) {
                return Outcome.refused(Refusal.of("item", "there is no item " + id, "Load the page again"));
            }
            return Outcome.ok(ItemRemoval.of(type, id));
        }

        @Override
        public String words() {
            return "a part that it does not have";
        }
    }

    /**
     * Items that this unit does not have go out of the file, each as {@link RemoveItem} does it.
     *
     * @param ids of the items, one or more
     */
    record RemoveItems(List<String> ids) implements UnitEdit {
        public RemoveItems {
            ids = List.copyOf(ids);
        }

        @Override
        public Outcome<UnitType> on(UnitType type) {
            Outcome<UnitType> less = ids.isEmpty()
                    ? Outcome.refused(Refusal.of("gone", "nothing chosen", "Tap what this box does not have"))
                    : Outcome.ok(type);
            for (String id : ids) {
                less = less.flatMap(new RemoveItem(id)::on);
            }
            return less;
        }

        @Override
        public String words() {
            return ids.size() + " parts that it does not have";
        }
    }

    /**
     * Bolts or nuts tightened alike.
     *
     * @param where what they hold
     * @param thread thread and length
     * @param propertyClass such as 8.8; may be empty
     * @param quantity how many
     * @param torque N·m, above 0
     * @param origin where the torque comes from: book and page, standard, computed, told, guess
     * @param step the step that tightens them
     */
    record AddFastener(
            String where, String thread, String propertyClass, int quantity, double torque, String origin, String step)
            implements UnitEdit {
        @Override
        public Outcome<UnitType> on(UnitType type) {
            if (type.steps().stream().noneMatch(one -> one.id().equals(step))) {
                return Outcome.refused(Refusal.of(
                        "step",
                        step.isEmpty() ? "no step is chosen" : "there is no step \"" + step + "\"",
                        "Choose where they are tightened"));
            }
            String id = TypeParts.freeId(
                    "B", type.fasteners().stream().map(Fastener::id).toList());
            Fastener bolt = new Fastener(
                    id,
                    where,
                    thread,
                    propertyClass,
                    quantity,
                    torque,
                    0,
                    0,
                    "",
                    "",
                    false,
                    "",
                    origin,
                    "",
                    0,
                    Set.of());
            List<Fastener> all =
                    Stream.concat(type.fasteners().stream(), Stream.of(bolt)).toList();
            List<Step> steps = type.steps().stream()
                    .map(one -> one.id().equals(step) ? tightening(one, id) : one)
                    .toList();
            return Outcome.ok(Component.with(Component.with(type, "fasteners", all), "steps", steps));
        }

        private static Step tightening(Step one, String fastener) {
            List<String> all = new ArrayList<>(one.fasteners());
            all.add(fastener);
            return Component.with(one, "fasteners", List.copyOf(all));
        }

        @Override
        public String words() {
            return where;
        }
    }

    /** The names of the steps that a fact can be tied to, by id, in order. */
    static Map<String, String> steps(UnitType type) {
        Map<String, String> steps = new LinkedHashMap<>();
        type.steps().forEach(step -> steps.putIfAbsent(step.id(), step.todo()));
        return steps;
    }
}
