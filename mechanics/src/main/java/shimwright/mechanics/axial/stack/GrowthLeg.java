package shimwright.mechanics.axial.stack;

import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * One length that case and shaft share between the faces that make the play.
 *
 * @param name what it is
 * @param length m
 * @param caseExpansion linear expansion coefficient of the case, 1/K
 * @param shaftExpansion linear expansion coefficient of shaft and bearings, 1/K
 */
public record GrowthLeg(
        @Input(meaning = "what it is", example = "case") String name,

        @Input(kind = Kind.LENGTH, meaning = "length", min = 0, max = 10, example = "200 mm")
        double length,

        @Input(
                kind = Kind.EXPANSION,
                meaning = "expansion coefficient of the case",
                min = 0,
                max = 1e-4,
                example = "21.8")
        double caseExpansion,

        @Input(
                kind = Kind.EXPANSION,
                meaning = "expansion coefficient of shaft and bearings",
                min = 0,
                max = 1e-4,
                example = "11.3")
        double shaftExpansion) {}
