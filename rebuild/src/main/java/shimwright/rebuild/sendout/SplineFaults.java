package shimwright.rebuild.sendout;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.tooth.SplineRework;

/** What is wrong with a spline's sheet of which some inputs could not be read: all that hangs on none of them, so that it is said at once. */
final class SplineFaults {
    /** What going home hangs on beside the worksheet. */
    static final Set<String> GOES_HOME =
            Set.of("more.length", "more.hubOutside", "more.shaftBore", "more.spare", "more.ceiling");

    private static final Set<String> TOOTH = Set.of("teeth", "module", "diametralPitch", "pressureAngle");

    /** What a fault of the worksheet hangs on beside its own input; one that is not named hangs on everything. */
    private static final Map<String, Set<String>> HANGS = Map.of(
            "hardnessPlan", Set.of("flanks"),
            "dialPlay", Set.of("dialRadius"),
            "variations", Set.of("counts", "dialPlay"),
            "module", Set.of("diametralPitch"),
            "diametralPitch", Set.of("module"),
            "overPins", with("shaftPin"),
            "shaftPin", with("overPins"),
            "betweenPins", with("hubPin"),
            "hubPin", with("betweenPins"));

    private SplineFaults() {}

    private static Set<String> with(String pin) {
        return java.util.stream.Stream.concat(TOOTH.stream(), java.util.stream.Stream.of(pin))
                .collect(Collectors.toUnmodifiableSet());
    }

    /** True where all of these could be read. */
    static boolean known(List<Refusal> unread, String... inputs) {
        return Arrays.stream(inputs)
                .noneMatch(input -> unread.stream().anyMatch(one -> one.key().equals(input)));
    }

    /** The case with the worksheet's example for what could not be read; empty where even so it is none. */
    static Optional<SplineRework.Case> filled(Map<String, Object> typed, List<Refusal> unread, UnitSystem system) {
        Map<String, Object> filled = new LinkedHashMap<>(typed);
        Map<String, String> example = SplineRework.SHEET.example();
        for (Refusal one : unread) {
            filled.remove(one.key());
            if (example.containsKey(one.key())) {
                filled.put(one.key(), example.get(one.key()));
            }
        }
        Outcome<SplineRework.Case> read =
                SplineRework.SHEET.read(filled, system).map(bound -> bound.value());
        return read.isOk() ? Optional.of(read.orElseThrow()) : Optional.empty();
    }

    /** The faults of a filled case that hang on nothing that was filled in. */
    static List<Refusal> beside(SplineRework.Case filled, List<Refusal> unread) {
        return SplineRework.work(filled).refusals().stream()
                .filter(fault -> HANGS.containsKey(fault.key()))
                .filter(fault -> known(unread, fault.key()))
                .filter(fault ->
                        HANGS.getOrDefault(fault.key(), Set.of()).stream().allMatch(input -> known(unread, input)))
                .map(fault -> fault.placed(
                        fault.key(),
                        SplineRework.SHEET.inputs().stream()
                                .filter(field -> field.name().equals(fault.key()))
                                .map(field -> field.label())
                                .findFirst()
                                .orElse(fault.place())))
                .toList();
    }

    /** A fault of going home at the input that it speaks of. */
    static Refusal ofHome(Refusal fault) {
        return GOES_HOME.contains("more." + fault.key())
                ? fault.placed("more." + fault.key(), fault.place())
                : fault.placed("in.clearance", "clearance wanted when finished");
    }
}
