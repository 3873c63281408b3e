/**
 * One mechanism for every calculation. A worksheet is an annotated input record, an annotated output record and a pure
 * function between them; text door, JSON answer, help, web form and uncertainty are all derived from these three.
 *
 * <p>To add one, in its own topic package:
 *
 * <pre>{@code
 * public record LiftCase(
 *         @Input(kind = Kind.LENGTH, meaning = "travel read", min = 0, max = 0.1, example = "0.28 mm") double travel,
 *         @Input(kind = Kind.ANGLE, meaning = "angle of the stylus", orElse = "0", max = 1.0) double angle) {}
 *
 * public record LiftResult(@Output(kind = Kind.LENGTH, meaning = "true travel") double play) {}
 *
 * static Outcome<Worked<LiftResult>> work(LiftCase c) {
 *     Working w = new Working();
 *     double play = w.line("play", "travel × cos(angle)", c.travel() * Math.cos(c.angle()), Kind.LENGTH, "geometry");
 *     return Outcome.ok(w.worked(new LiftResult(play)));
 * }
 *
 * static final Worksheet<LiftCase, LiftResult> LIFT = new Worksheet<>(
 *         "lift", "Lift", "True travel from a slanting stylus.", List.of("geometry"),
 *         LiftCase.class, LiftResult.class, Lifts::work);
 * }</pre>
 *
 * and one line in {@link shimwright.mechanics.registry.Registry}. Rules:
 *
 * <ul>
 *   <li>Components are {@code double} (needed), {@code Double} (may be left out, then null), {@code int},
 *       {@code boolean}, an enum, {@code String}, another annotated record, or a {@code List} of any of these (also of
 *       lists). {@code min}, {@code max} are SI values. An {@code orElse} is text as a person would type it.
 *   <li>Single-value ranges stand in the annotation; what depends on several inputs is refused by the function.
 *   <li>The function is pure and total over the annotated ranges: it refuses with a sentence or gives finite numbers.
 *   <li>No formula handles ±: a number typed as {@code value ± u} is propagated by {@link
 *       shimwright.mechanics.worksheet.Propagation}. A result that computes its own doubt names it with
 *       {@code @Output(u = "component")}.
 *   <li>{@code example} on every needed input: together they are the worked example of help, manual and tests.
 * </ul>
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.worksheet;
