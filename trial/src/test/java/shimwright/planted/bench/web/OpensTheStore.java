package shimwright.planted.bench.web;

import shimwright.planted.bench.store.Store;

/** Planted to break a rule of the house. */
final class OpensTheStore {
    private OpensTheStore() {}

    static int number() {
        return Store.number();
    }
}
