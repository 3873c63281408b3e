package shimwright.planted.mechanics.axial;

import com.tngtech.archunit.ArchConfiguration;

/** Planted to break a rule of the house. */
final class UsesALibrary {
    private UsesALibrary() {}

    static ArchConfiguration library() {
        return ArchConfiguration.get();
    }
}
