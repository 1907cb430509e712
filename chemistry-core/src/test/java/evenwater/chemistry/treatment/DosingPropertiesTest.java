package evenwater.chemistry.treatment;

import static evenwater.chemistry.testing.Amounts.chargesIn;
import static evenwater.chemistry.testing.Amounts.grams;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.of;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Waters;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.Set;
import java.util.TreeSet;
import javax.measure.Unit;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Laws of dosing: what is dosed adds up. */
class DosingPropertiesTest {

    /** Relative rounding of a few operations. */
    private static final double ROUNDING = 1e-14;

    @Provide
    Arbitrary<Compound> compounds() {
        return Arbitraries.of(Compound.all());
    }

    @Provide
    Arbitrary<Water> waters() {
        return Waters.any();
    }

    @Provide
    Arbitrary<Unit<Mass>> masses() {
        return Arbitraries.of(WaterUnits.MILLIGRAM, WaterUnits.GRAM, WaterUnits.OUNCE, WaterUnits.GRAIN);
    }

    @Provide
    Arbitrary<Unit<Volume>> volumes() {
        return Arbitraries.of(WaterUnits.MILLILITRE, WaterUnits.LITRE, WaterUnits.US_GALLON, WaterUnits.CUBIC_METRE);
    }

    private static void assertAlike(Change expected, Change actual) {
        Set<Ion> ions = new TreeSet<>(expected.ions());
        ions.addAll(actual.ions());
        double size = chargesIn(expected);
        for (Ion ion : ions) {
            assertEquals(of(ion, expected), of(ion, actual), ROUNDING * (size + of(ion, expected)), ion::symbol);
        }
        assertEquals(expected.alkalinity().getValue(), actual.alkalinity().getValue(), ROUNDING * size);
        assertEquals(
                expected.carbon().orElseThrow().getValue(),
                actual.carbon().orElseThrow().getValue(),
                ROUNDING * size);
    }

    @Property
    void twoDosesAreOneOfTheirSum(
            @ForAll("compounds") Compound compound,
            @ForAll @DoubleRange(min = 0, max = 100) @Scale(3) double first,
            @ForAll @DoubleRange(min = 0, max = 100) @Scale(3) double second) {
        Change both = Dosing.of(compound, grams(first), litres(50))
                .change()
                .plus(Dosing.of(compound, grams(second), litres(50)).change());
        assertAlike(Dosing.of(compound, grams(first + second), litres(50)).change(), both);
    }

    @Property
    void aDoseIsLinearInMassAndInverseInVolume(
            @ForAll("compounds") Compound compound,
            @ForAll @DoubleRange(min = 0, max = 100) @Scale(3) double mass,
            @ForAll @DoubleRange(min = 0.1, max = 1000) @Scale(3) double volume,
            @ForAll @DoubleRange(min = 0.1, max = 10) @Scale(3) double factor) {
        Change one = Dosing.of(compound, grams(mass), litres(volume)).change();
        assertAlike(
                one.times(factor),
                Dosing.of(compound, grams(mass * factor), litres(volume)).change());
        assertAlike(
                one.times(1 / factor),
                Dosing.of(compound, grams(mass), litres(volume * factor)).change());
        assertAlike(
                one,
                Dosing.of(compound, grams(mass * factor), litres(volume * factor))
                        .change());
    }

    @Property
    void unitsOfMassAndVolumeDoNotMatter(
            @ForAll("compounds") Compound compound,
            @ForAll("masses") Unit<Mass> mass,
            @ForAll("volumes") Unit<Volume> volume,
            @ForAll @DoubleRange(min = 0, max = 100) @Scale(3) double g,
            @ForAll @DoubleRange(min = 0.1, max = 1000) @Scale(3) double l) {
        Dosing expected = Dosing.of(compound, grams(g), litres(l));
        Dosing restated = Dosing.of(compound, grams(g).to(mass), litres(l).to(volume));
        assertAlike(expected.change(), restated.change());
        assertEquals(
                expected.dose().in(MassConcentration.GRAM_PER_LITRE),
                restated.dose().in(MassConcentration.GRAM_PER_LITRE),
                ROUNDING * expected.dose().getValue());
    }

    @Property
    void teaspoonsAreTheirMass(
            @ForAll("compounds") Compound compound, @ForAll @DoubleRange(min = 0, max = 20) @Scale(2) double spoons) {
        compound.teaspoon().ifPresent(one -> {
            double g = spoons * one.mass().in(WaterUnits.GRAM);
            assertEquals(
                    Dosing.of(compound, grams(g), litres(100)).change(),
                    Dosing.teaspoons(compound, spoons, litres(100)).change());
        });
    }

    @Property
    void orderOfTwoDosesDoesNotMatter(
            @ForAll("waters") Water water,
            @ForAll("compounds") Compound one,
            @ForAll("compounds") Compound other,
            @ForAll @DoubleRange(min = 0, max = 10) @Scale(3) double mass) {
        Dosing first = Dosing.of(one, grams(mass), litres(20));
        Dosing second = Dosing.of(other, grams(2 * mass), litres(20));
        Water there = Train.of(first, second).treat(water);
        Water back = Train.of(second, first).treat(water);
        for (Ion ion : there.ions()) {
            assertEquals(of(ion, there), of(ion, back), ROUNDING * (chargesIn(there) + 1), ion::symbol);
        }
        assertEquals(water.unmeasuredCharge(), there.unmeasuredCharge());
        assertEquals(0, there.netCharge().getValue(), 1e-12 * chargesIn(there));
    }

    @Property
    void moreThanASolubleDoseIsNeverSoluble(
            @ForAll("compounds") Compound compound,
            @ForAll @DoubleRange(min = 0, max = 3000) @Scale(2) double mass,
            @ForAll @DoubleRange(min = 1, max = 10) @Scale(2) double factor) {
        boolean some = Dosing.of(compound, grams(mass), litres(1)).exceedsSolubility();
        boolean more = Dosing.of(compound, grams(mass * factor), litres(1)).exceedsSolubility();
        assertTrue(more || !some);
        assertTrue(compound.solubility().isPresent() || !more);
    }
}
