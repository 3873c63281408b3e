package shimwright.bench.picture.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import shimwright.bench.picture.part.PartSize.Origin;
import shimwright.bench.picture.part.PartSize.Place;
import shimwright.bench.picture.section.Extent;
import shimwright.bench.picture.section.PartFigure;
import shimwright.bench.picture.section.PartFigures;
import shimwright.bench.picture.section.ShaftFigures;
import shimwright.rebuild.part.StandardPart;
import shimwright.rebuild.unit.model.Bearing;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * What is drawn: a part with all that is known of it.
 *
 * @param name as a person calls it
 * @param form what it looks like
 * @param sizes those that are known
 * @param figure its section as the unit file gives it; empty where it gives none
 * @param thread its thread as it is called; empty for none
 * @param holes bolt holes, where the fasteners of its step tell how many; 0 where they do not
 * @param quantity pieces in one unit
 * @param brass true for brass or bronze
 * @param chosen true where its thickness is chosen for a clearance
 * @param notes further sentences
 */
record PartSubject(
        String name,
        PartForm form,
        PartSizes sizes,
        Optional<PartFigure> figure,
        String thread,
        int holes,
        int quantity,
        boolean brass,
        boolean chosen,
        List<String> notes) {

    static PartSubject of(StandardPart part) {
        PartSizes sizes = new PartSizes();
        boolean typed = part.standard().isEmpty();
        StandardSizes.add(sizes, part, typed ? Origin.CALL_OUT : Origin.STANDARD);
        PartForm form = StandardSizes.form(part);
        boolean threaded = form == PartForm.SCREW || form == PartForm.SOCKET_SCREW || form == PartForm.PLUG;
        String thread = threaded ? part.designation().replaceFirst("^DIN \\d+( A)? ", "") : "";
        String name = part.designation() + ", " + part.family().words();
        return new PartSubject(name, form, sizes, Optional.empty(), thread, 0, 1, false, false, List.of());
    }

    static PartSubject of(Unit unit, Fastener fastener) {
        PartForm named = FormWords.of(fastener.where());
        boolean bolt = !fastener.propertyClass().isBlank() || fastener.quantity() > 1;
        PartForm form = bolt || !(named == PartForm.NUT || named == PartForm.SWITCH) ? PartForm.SCREW : named;
        if (!bolt && fastener.where().toLowerCase(Locale.ROOT).contains("plug")) {
            form = PartForm.PLUG;
        }
        PartSizes sizes = new PartSizes();
        String thread = NameSizes.threadOf(fastener.thread());
        NameSizes.add(sizes, form, fastener.thread(), Origin.UNIT_FILE);
        NameSizes.standard(sizes, thread, form);
        List<String> notes = new ArrayList<>();
        if (!fastener.propertyClass().isBlank()) {
            notes.add(
                    fastener.propertyClass().startsWith("grade")
                            ? fastener.propertyClass()
                            : "class " + fastener.propertyClass());
        }
        if (form == PartForm.SCREW) {
            notes.add("drawn with the usual hexagon head");
        }
        String name = fastener.thread() + ", " + fastener.where();
        return new PartSubject(
                name, form, sizes, Optional.empty(), thread, 0, fastener.quantity(), false, false, List.copyOf(notes));
    }

    static PartSubject of(Unit unit, Item item, Optional<Step> step) {
        PartForm form = FormWords.of(item);
        PartSizes sizes = new PartSizes();
        boolean scheme = unit.type().section().scheme();
        Optional<PartFigure> figure = new PartFigures(unit, 0).of(item);
        if (figure.isEmpty()) {
            figure = shaft(unit, item);
            form = figure.isPresent() && !form.outline() ? PartForm.SHAFT : form;
        }
        if (figure.isPresent() && !scheme) {
            measured(sizes, item, figure.get(), chosen(unit, item).isEmpty());
        }
        NameSizes.add(sizes, form, item.name(), Origin.NAME);
        String thread = thread(unit, item, form);
        if (NameSizes.threadOf(item.name()).isEmpty() && !thread.isEmpty()) {
            NameSizes.add(sizes, form, thread, Origin.UNIT_FILE);
        }
        List<String> notes = new ArrayList<>();
        bearing(unit, item).ifPresent(bearing -> {
            notes.add("belongs to the bearing " + bearing.size() + ", " + bearing.where());
            if (bearing.items().equals(List.of(item.id()))) {
                NameSizes.standard(sizes, bearing.size().split(" ", 2)[0], FormWords.of(item));
            }
        });
        unit.type().gears().stream()
                .filter(g -> g.driverItem().equals(item.id()) || g.drivenItem().equals(item.id()))
                .findFirst()
                .ifPresent(g -> sizes.with(
                                Place.TEETH,
                                g.driverItem().equals(item.id()) ? g.driver() : g.driven(),
                                Origin.UNIT_FILE)
                        .with(Place.MODULE, g.module(), Origin.UNIT_FILE));
        chosen(unit, item).ifPresent(c -> notes.add("its thickness is chosen for: " + c.name()));
        if (scheme && figure.isPresent()) {
            notes.add("a scheme, nothing measured yet");
        }
        return new PartSubject(
                item.name(),
                form,
                sizes,
                figure,
                NameSizes.threadOf(thread),
                holes(unit, item, step),
                item.quantity(),
                Set.of("brass", "bronze").contains(item.material()),
                chosen(unit, item).isPresent(),
                List.copyOf(notes));
    }

    /** The thread of a nut, plug or switch: that of its name, else of the fastener that is it. */
    private static String thread(Unit unit, Item item, PartForm form) {
        boolean threaded = form == PartForm.NUT || form == PartForm.PLUG || form == PartForm.SWITCH;
        if (!threaded || !NameSizes.threadOf(item.name()).isEmpty()) {
            return threaded ? item.name() : "";
        }
        String own = FormWords.head(item.name());
        return unit.type().fasteners().stream()
                .filter(f -> f.quantity() == 1 && FormWords.head(f.where()).equals(own))
                .map(Fastener::thread)
                .findFirst()
                .orElse("");
    }

    /** The clearance by which its thickness is chosen. */
    private static Optional<Clearance> chosen(Unit unit, Item item) {
        return unit.type().clearances().stream()
                .filter(c -> c.positions().stream().anyMatch(p -> p.item().equals(item.id())))
                .findFirst();
    }

    private static void measured(PartSizes sizes, Item item, PartFigure figure, boolean fixed) {
        Extent.of(item).ifPresent(e -> {
            sizes.with(Place.WIDTH, fixed ? e.to() - e.from() : 0, Origin.UNIT_FILE)
                    .with(Place.OUTSIDE, 2 * e.outer(), Origin.UNIT_FILE)
                    .with(Place.INSIDE, 2 * e.inner(), Origin.UNIT_FILE);
        });
        if (Extent.of(item).isEmpty()) {
            sizes.with(Place.LENGTH, figure.box().getWidth(), Origin.UNIT_FILE)
                    .with(Place.OUTSIDE, figure.box().getHeight(), Origin.UNIT_FILE);
        }
    }

    /** Where the main ring of it begins and ends along its axis, m; the whole of a view that has no such ring. */
    double[] span(PartFigure view) {
        return figure.flatMap(given -> Extent.of(given.item()))
                .map(e -> new double[] {e.from(), e.to()})
                .orElse(new double[] {view.box().getMinX(), view.box().getMaxX()});
    }

    /** The shaft that an item is, from its steps. */
    private static Optional<PartFigure> shaft(Unit unit, Item item) {
        return unit.type().section().shafts().stream()
                .filter(shaft -> shaft.item().equals(item.id()))
                .findFirst()
                .flatMap(shaft -> ShaftFigures.figure(shaft, item));
    }

    private static Optional<Bearing> bearing(Unit unit, Item item) {
        return unit.type().bearings().stream()
                .filter(bearing -> bearing.items().contains(item.id()))
                .findFirst();
    }

    /** How many bolts the step tightens that brings it in: of several sets those whose place is named most like it. */
    private static int holes(Unit unit, Item item, Optional<Step> step) {
        List<Step> steps = step.map(List::of)
                .orElseGet(() -> unit.type().steps().stream()
                        .filter(s -> s.installs().contains(item.id()))
                        .toList());
        String own = FormWords.head(item.name());
        return steps.stream()
                .flatMap(s -> s.fasteners().stream().map(unit::fastener))
                .filter(f -> f.quantity() > 1 && alike(f.where(), item.name()) > 0)
                .max(Comparator.comparingLong(f -> alike(f.where(), item.name())))
                .or(() -> unit.type().fasteners().stream()
                        .filter(f -> f.quantity() > 1 && f.where().startsWith(own))
                        .findFirst())
                .map(Fastener::quantity)
                .orElse(0);
    }

    private static long alike(String where, String name) {
        List<String> words = List.of(where.toLowerCase(Locale.ROOT).split("[^a-z]+"));
        return List.of(name.toLowerCase(Locale.ROOT).split("[^a-z]+")).stream()
                .filter(word -> word.length() > 3 && words.contains(word))
                .count();
    }
}
