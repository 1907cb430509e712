package evenwater.chemistry.instrument;

import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;
import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.MassConcentration;
import javax.measure.Unit;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Laws of meters of both types; the solutions have curves that are easy to compute, not their own. */
class DissolvedSolidsMeterPropertiesTest {

    @Provide
    Arbitrary<DissolvedSolidsMeter> meters() {
        MassConcentration end = MassConcentration.of(10_000, MILLIGRAM_PER_LITRE);
        return Arbitraries.oneOf(
                Arbitraries.doubles().between(0.4, 1).ofScale(3).map(FactorMeter::of),
                Arbitraries.of(
                        SolutionScaleMeter.of(
                                ReferenceSolution.SODIUM_CHLORIDE, end, c -> 2.2 * c - 0.006 * c * Math.sqrt(c)),
                        SolutionScaleMeter.of(
                                ReferenceSolution.POTASSIUM_CHLORIDE, end, c -> 2 * c / (1 + 0.003 * Math.sqrt(c))),
                        SolutionScaleMeter.of(
                                ReferenceSolution.SULFATE_BICARBONATE_CHLORIDE,
                                end,
                                c -> 12_000 * Math.log1p(c / 6000))));
    }

    @Property
    void thereAndBack(
            @ForAll("meters") DissolvedSolidsMeter meter,
            @ForAll @DoubleRange(max = 5000) @Scale(4) double microsiemens) {
        Conductivity water = Conductivity.of(microsiemens, MICROSIEMENS_PER_CENTIMETRE);
        double back = meter.conductivity(meter.reading(water)).in(MICROSIEMENS_PER_CENTIMETRE);
        assertEquals(microsiemens, back, 1e-14 * microsiemens); // some units in the last place
    }

    @Property
    void moreConductivityShowsMoreSolids(
            @ForAll("meters") DissolvedSolidsMeter meter,
            @ForAll @DoubleRange(max = 5000) @Scale(4) double one,
            @ForAll @DoubleRange(max = 5000) @Scale(4) double other) {
        double ofOne =
                meter.reading(Conductivity.of(one, MICROSIEMENS_PER_CENTIMETRE)).getValue();
        double ofOther = meter.reading(Conductivity.of(other, MICROSIEMENS_PER_CENTIMETRE))
                .getValue();
        assertEquals(Double.compare(one, other), Double.compare(ofOne, ofOther));
    }

    @Property
    void theUnitOfTheConductivityDoesNotMatter(
            @ForAll("meters") DissolvedSolidsMeter meter,
            @ForAll @DoubleRange(max = 5000) @Scale(4) double microsiemens) {
        Conductivity water = Conductivity.of(microsiemens, MICROSIEMENS_PER_CENTIMETRE);
        double shown = meter.reading(water).in(MILLIGRAM_PER_LITRE);
        for (Unit<Conductivity> unit : Conductivity.units()) {
            assertEquals(shown, meter.reading(water.to(unit)).in(MILLIGRAM_PER_LITRE), 1e-14 * shown, unit::toString);
        }
    }
}
