package shimwright.planted.mechanics.axial;

/** Planted to break a rule of the house: nobody tells its values apart. */
record TwentyInARow(
        int a,
        int b,
        int c,
        int d,
        int e,
        int f,
        int g,
        int h,
        int i,
        int j,
        int k,
        int l,
        int m,
        int n,
        int o,
        int p,
        int q,
        int r,
        int s,
        int t) {}
