package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class KitKernelTest {

    private static final double LARGEST = 0.1;

    private static KitState state(double leastPH, double mostPH, double microsiemens) {
        KitState state = new KitState(leastPH, mostPH, 298.15);
        state.conductivity(microsiemens, microsiemens, LARGEST);
        return state;
    }

    private static double conductivity(KitQuantity cation, KitQuantity anion, double equivalents) {
        double[] z = new double[CompositionRanges.AMOUNTS];
        z[cation.place()] = equivalents;
        z[anion.place()] = equivalents;
        return new CompositionConductivity(298.15).of(z, 7);
    }

    /** Without hardness and alkalinity the bounds are those of single salts, here found by hand. */
    @Test
    void withoutHardnessAndAlkalinityTheSlowestAndTheFastestSaltAreTheBounds() {
        KitState state = state(7, 7, 500);
        state.measured(KitQuantity.HARDNESS, 0, 0);
        state.measured(KitQuantity.ALKALINITY, 0, 0);
        assertEquals(KitKernel.FOUND, KitKernel.prepare(state));
        double most = KitKernel.bound(state, KitQuantity.SODIUM_AND_POTASSIUM, 1);
        double least = KitKernel.bound(state, KitQuantity.SODIUM_AND_POTASSIUM, -1);
        // the margin of the search and its tolerance: 0.2 % and 0.05 %
        assertEquals(500, conductivity(KitQuantity.SODIUM, KitQuantity.NITRATE, most), 500 * 3e-3);
        assertEquals(500, conductivity(KitQuantity.POTASSIUM, KitQuantity.CHLORIDE, least), 500 * 3e-3);
        assertEquals(0, KitKernel.bound(state, KitQuantity.SODIUM, -1));
        assertEquals(most, KitKernel.bound(state, KitQuantity.SODIUM, 1), 1e-3 * most);
        assertEquals(0, KitKernel.bound(state, KitQuantity.CALCIUM, 1));
    }

    /** Half of magnesium and sulfate is paired where they are strong: some other anion with it conducts more, and some with less. */
    @Test
    void pairsMakeConductivityLowestWithSulfate() {
        CompositionRanges ranges = new CompositionRanges();
        for (int q = 0; q < ranges.most.length; q++) {
            ranges.most[q] = 0.02;
        }
        ranges.least[KitQuantity.MAGNESIUM.place()] = 0.02;
        ranges.most[KitQuantity.SODIUM_AND_POTASSIUM.place()] = 0;
        ranges.most[KitQuantity.ALKALINITY.place()] = 0;
        double[] where = new double[CompositionRanges.AMOUNTS + 1];
        ConductivityExtreme search = new ConductivityExtreme(new CompositionConductivity(298.15), 7, 7);
        double low = search.find(ranges, -1, where);
        assertEquals(conductivity(KitQuantity.MAGNESIUM, KitQuantity.SULFATE, 0.02), low, 1e-9 * low);
        double high = search.find(ranges, 1, where);
        assertTrue(high >= conductivity(KitQuantity.MAGNESIUM, KitQuantity.CHLORIDE, 0.02));
    }

    @Test
    void aMeasuredIonNarrowsItself() {
        KitState state = state(7, 7.2, 500);
        state.measured(KitQuantity.CHLORIDE, 1e-3, 1.5e-3);
        assertEquals(KitKernel.FOUND, KitKernel.prepare(state));
        assertEquals(1e-3, KitKernel.bound(state, KitQuantity.CHLORIDE, -1), 1e-15);
        assertEquals(1.5e-3, KitKernel.bound(state, KitQuantity.CHLORIDE, 1), 1e-15);
    }

    @Test
    void whatNoWaterHasIsSaidByAStatus() {
        KitState hard = state(7, 7.5, 100);
        hard.measured(KitQuantity.HARDNESS, 7e-3, 7.2e-3);
        assertEquals(KitKernel.CONDUCTS_MORE, KitKernel.prepare(hard));
        assertTrue(hard.leastConductivity() > 500);

        KitState weak = state(7, 7.5, 1000);
        weak.measured(KitQuantity.HARDNESS, 0, 1e-3);
        weak.measured(KitQuantity.SODIUM_AND_POTASSIUM, 0, 1e-3);
        assertEquals(KitKernel.CONDUCTS_LESS, KitKernel.prepare(weak));
        assertTrue(weak.mostConductivity() < 400);

        KitState charged = state(7, 7.5, 100);
        charged.measured(KitQuantity.HARDNESS, 0, 1e-3);
        charged.measured(KitQuantity.SODIUM_AND_POTASSIUM, 0, 0);
        charged.measured(KitQuantity.CHLORIDE, 2e-3, 3e-3);
        assertEquals(KitKernel.NO_BALANCE, KitKernel.prepare(charged));

        KitState basic = state(10.5, 10.8, 100);
        basic.measured(KitQuantity.ALKALINITY, 0, 2e-4);
        assertEquals(KitKernel.PH_TOO_HIGH, KitKernel.prepare(basic));
    }

    @Test
    void quantitiesHaveWordsAndPlacesWithoutGaps() {
        int place = 0;
        for (KitQuantity quantity : KitQuantity.values()) {
            assertEquals(place++, quantity.place());
        }
        assertEquals(place, KitQuantity.count());
        assertEquals("sodium and potassium", KitQuantity.SODIUM_AND_POTASSIUM.toString());
    }
}
