package shimwright.bench.picture.part;

/**
 * One known size of a part.
 *
 * @param place what it is the size of
 * @param value m; of a count a plain number
 * @param origin where it comes from
 */
record PartSize(Place place, double value, Origin origin) {

    /** Where a size comes from. */
    enum Origin {
        UNIT_FILE("from the unit file"),
        NAME("from its name in the unit file"),
        STANDARD("from the standard"),
        CALL_OUT("as the call-out says");

        private final String words;

        Origin(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /** What a size is the size of, in the words of the picture. */
    enum Place {
        INSIDE("inside"),
        OUTSIDE("outside"),
        WIDTH("width"),
        LENGTH("length"),
        CONE_WIDTH("width of the cone"),
        CUP_WIDTH("width of the cup"),
        CUP_INSIDE("small inside of the cup"),
        INNER_RACEWAY("raceway of the inner ring"),
        OUTER_RACEWAY("raceway of the outer ring"),
        CORD("cord"),
        THREAD("thread"),
        PITCH("pitch"),
        FLATS("across flats"),
        HEAD("head"),
        HEAD_HEIGHT("height of the head"),
        SOCKET("key"),
        HEIGHT("height"),
        FITS("for"),
        RING_WIDTH("width of the ring"),
        LUG("lug at most"),
        HOLE("hole of the lug"),
        GROOVE("groove"),
        GROOVE_WIDTH("groove at least wide"),
        CHAMFER("chamfer"),
        COLLAR("collar"),
        ROOT("root"),
        TEETH("teeth"),
        MODULE("module"),
        ROWS("rows");

        private final String words;

        Place(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }
}
