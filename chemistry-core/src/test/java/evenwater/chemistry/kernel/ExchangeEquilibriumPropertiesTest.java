package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;

class ExchangeEquilibriumPropertiesTest {

    private static final double[] CONSTANT = {2.6, 1.7, 1, 1.46, 0.64};
    private static final int[] CHARGE = {2, 2, 1, 1, 1};

    @Provide
    Arbitrary<List<Double>> waters() {
        return Arbitraries.doubles()
                .between(1e-9, 4)
                .ofScale(12)
                .withDistribution(RandomDistribution.biased())
                .list()
                .ofSize(CONSTANT.length);
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static double[] held(double[] water, double s) {
        double[] held = new double[water.length];
        for (int i = 0; i < held.length; i++) {
            held[i] = ExchangeEquilibrium.distribution(CONSTANT[i], CHARGE[i], s) * water[i];
        }
        return held;
    }

    @Property
    void theResinIsFullAndTheWaterComesBack(@ForAll("waters") List<Double> concentrations) {
        double[] water = array(concentrations);
        double s = ExchangeEquilibrium.ratioOverWater(CONSTANT, CHARGE, water, 2);
        double[] resin = held(water, s);
        assertEquals(2, Beds.sum(resin), 1e-13);
        double back = ExchangeEquilibrium.ratioOverResin(CONSTANT, CHARGE, resin, Beds.sum(water));
        assertEquals(s, back, 1e-13 * s);
    }

    @Property
    void dilutionFavoursTheDoubleCharge(@ForAll("waters") List<Double> concentrations) {
        double[] water = array(concentrations);
        double[] diluted = array(concentrations.stream().map(c -> c / 10).toList());
        double before = doubleCharged(held(water, ExchangeEquilibrium.ratioOverWater(CONSTANT, CHARGE, water, 2)));
        double after = doubleCharged(held(diluted, ExchangeEquilibrium.ratioOverWater(CONSTANT, CHARGE, diluted, 2)));
        assertTrue(after >= before * (1 - 1e-12), before + " to " + after);
    }

    private static double doubleCharged(double[] resin) {
        return resin[0] + resin[1];
    }

    @Property
    void moreOfAnIonLoadsMoreOfIt(@ForAll("waters") List<Double> concentrations) {
        double[] water = array(concentrations);
        double[] more = water.clone();
        more[1] *= 1.5;
        double before = held(water, ExchangeEquilibrium.ratioOverWater(CONSTANT, CHARGE, water, 2))[1];
        double after = held(more, ExchangeEquilibrium.ratioOverWater(CONSTANT, CHARGE, more, 2))[1];
        assertTrue(after > before);
    }
}
