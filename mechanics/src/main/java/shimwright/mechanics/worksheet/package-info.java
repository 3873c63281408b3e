/**
 * One mechanism for every calculation: a worksheet is an annotated input record, an annotated output record and a pure
 * function between them; text door, JSON answer, help, web form and uncertainty are all derived from these three. It may
 * touch measuring, quantities, outcomes, working and diagrams, and knows no topic.
 *
 * <p>To add one, in its own topic package:
 *
 * <pre>{@code
 * public final class SlantedStylus {
 *     public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
 *             "slanted-stylus", "Slanted stylus", "True travel from a slanting stylus.", List.of("geometry"),
 *             Case.class, Result.class, SlantedStylus::work);
 *
 *     private SlantedStylus() {}
 *
 *     public record Case(
 *             @Input(kind = Kind.LENGTH, meaning = "travel read", min = 0, max = 0.1, example = "0.28 mm") double travel,
 *             @Input(kind = Kind.ANGLE, meaning = "angle of the stylus", orElse = "0", max = 1.0) double angle) {}
 *
 *     public record Result(@Output(kind = Kind.LENGTH, meaning = "true travel") double play) {}
 *
 *     public static Outcome<Worked<Result>> work(Case c) {
 *         Working w = new Working();
 *         double play = w.line("play", "travel × cos(angle)", c.travel() * Math.cos(c.angle()), Kind.LENGTH, "geometry");
 *         return Outcome.ok(w.worked(new Result(play)));
 *     }
 * }
 * }</pre>
 *
 * and its {@code SHEET} in the list of its topic. Rules:
 *
 * <ul>
 *   <li>Components are {@code double} (needed), {@code Double} (may be left out, then null), {@code int},
 *       {@code boolean}, an enum, {@code String}, another annotated record, or a {@code List} of any of these (also of
 *       lists). {@code min}, {@code max} are SI values. An {@code orElse} is text as a person would type it.
 *   <li>Single-value ranges stand in the annotation; what depends on several inputs is refused by the function.
 *   <li>The function is pure and total over the annotated ranges: it refuses with a sentence or gives finite numbers.
 *   <li>No formula handles ±: a number typed as {@code value ± u} is propagated by {@link
 *       shimwright.mechanics.worksheet.Propagation}. A result that computes its own uncertainty names it with
 *       {@code @Output(u = "component")}.
 *   <li>{@code example} on every needed input: together they are the worked example of help, manual and tests.
 * </ul>
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.worksheet;
