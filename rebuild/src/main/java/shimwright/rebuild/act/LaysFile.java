package shimwright.rebuild.act;

/** An act that lays a unit file on the shelf. */
public sealed interface LaysFile extends Act.OfShop permits UnitActs.ChangeUnit, UnitActs.ImportUnit {
    /** Id of the unit type. */
    String type();

    /** The text of the whole file. */
    String text();
}
