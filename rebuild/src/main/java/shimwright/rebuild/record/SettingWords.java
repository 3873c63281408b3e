package shimwright.rebuild.record;

import static shimwright.rebuild.record.History.because;
import static shimwright.rebuild.record.History.tail;
import static shimwright.rebuild.record.History.values;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.PieceIn;

/** Words for what was found and decided of a part, and for what is read and chosen to set a clearance: all by their names, a piece by its size. */
final class SettingWords {
    private SettingWords() {}

    static Map<Class<? extends Entry.OfJob>, BiFunction<Entry.OfJob, PlaceNames, String>> all() {
        Map<Class<? extends Entry.OfJob>, BiFunction<Entry.OfJob, PlaceNames, String>> words = new LinkedHashMap<>();
        put(
                words,
                Entry.PackIn.class,
                (e, names) -> "In for the reading of " + names.clearance(e.clearance()) + ": "
                        + e.pieces().entrySet().stream()
                                .map(place -> names.place(place.getKey()) + " " + pieces(place.getValue()))
                                .collect(Collectors.joining("; ")));
        put(
                words,
                Entry.RoundRead.class,
                (e, names) -> "Read " + names.clearance(e.clearance()) + tail(values(e.values(), Kind.LENGTH))
                        + tail(e.gauge()));
        put(words, Entry.RoundStruck.class, (e, names) -> "A reading struck" + because(e.reason()));
        put(
                words,
                Entry.PackChosen.class,
                (e, names) -> "Chosen for " + names.clearance(e.clearance()) + ", " + names.place(e.position()) + ": "
                        + pieces(e.pieces()) + ", predicted " + length(e.predicted()) + because(e.overruledBecause()));
        put(
                words,
                Entry.ClearanceAccepted.class,
                (e, names) -> "Accepted " + names.clearance(e.clearance()) + " at " + length(e.value())
                        + because(e.overruledBecause()));
        put(
                words,
                Entry.Found.class,
                (e, names) -> "Found: " + e.what() + tail(names.piece(e.piece())) + tail(values(e.values(), e.kind()))
                        + tail(e.words()) + tail(e.outcome()));
        put(
                words,
                Entry.Judged.class,
                (e, names) -> "Decided: "
                        + (e.limit().equals(Entry.Judged.PART)
                                ? names.piece(e.piece())
                                : e.what() + tail(names.piece(e.piece())))
                        + ", " + e.decision().name().toLowerCase(Locale.ROOT) + because(e.reason()));
        return Map.copyOf(words);
    }

    private static <E extends Entry.OfJob> void put(
            Map<Class<? extends Entry.OfJob>, BiFunction<Entry.OfJob, PlaceNames, String>> words,
            Class<E> type,
            BiFunction<E, PlaceNames, String> say) {
        words.put(type, (entry, names) -> say.apply(type.cast(entry), names));
    }

    private static String pieces(List<PieceIn> pieces) {
        return pieces.isEmpty()
                ? "none"
                : pieces.stream()
                        .map(piece -> length(piece.thickness()) + " (" + piece.piece() + ")")
                        .collect(Collectors.joining(" + "));
    }

    private static String length(double length) {
        return Quantities.print(length, Kind.LENGTH, UnitSystem.METRIC);
    }
}
