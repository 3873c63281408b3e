package shimwright.planted.bench.web;

import shimwright.planted.rebuild.job.Entry;

/** Planted to break a rule of the house. */
final class MakesAnEntry {
    private MakesAnEntry() {}

    static Entry made() {
        return new Entry.Note("made on a page");
    }
}
