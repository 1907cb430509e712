package evenwater.chemistry.kernel;

import java.util.Arrays;

/** Beds for tests: how they are made and what they hold. */
final class Beds {

    /** Calcium, magnesium and sodium on a usual gel resin, by the plain ratio. */
    static final double[] CONSTANT = {5.16 / 1.98, 3.29 / 1.98, 1};

    static final int[] CHARGE = {2, 2, 1};
    static final int CALCIUM = 0;
    static final int MAGNESIUM = 1;
    static final int SODIUM = 2;
    static final double CAPACITY = 2.0;
    static final double VOID = 0.38;

    private Beds() {}

    /** A bed in the sodium form in a water of sodium salts of a strength. */
    static BedState inSodiumForm(int cells, double strength) {
        BedState bed = new BedState(CONSTANT, CHARGE, cells, VOID);
        for (int j = 0; j < cells; j++) {
            bed.resin(j, SODIUM, CAPACITY);
            bed.water(j, SODIUM, strength);
        }
        return bed;
    }

    static double[] contents(BedState bed) {
        double[] contents = new double[bed.ions()];
        Arrays.setAll(contents, bed::content);
        return contents;
    }

    static double sum(double[] values) {
        double[] ones = new double[values.length];
        Arrays.fill(ones, 1);
        return CompensatedSum.ofProducts(ones, values);
    }
}
