package evenwater.chemistry.water;

import static evenwater.chemistry.testing.Amounts.alkalinityOf;
import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.chargeOfTotals;
import static evenwater.chemistry.testing.Amounts.chargesIn;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Amounts.of;
import static evenwater.chemistry.testing.Amounts.unmeasuredOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Waters;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Laws of one water: its double entry, its views, its equality. */
class WaterPropertiesTest {

    /** Relative rounding of sums of some twenty terms. */
    private static final double ROUNDING = 1e-14;

    @Provide
    Arbitrary<Water> waters() {
        return Waters.any();
    }

    @Property
    void alkalinityIsTheChargeOfTheTotalsAndOfTheUnmeasured(@ForAll("waters") Water water) {
        double entry = chargeOfTotals(water) + unmeasuredOf(water);
        assertEquals(alkalinityOf(water), entry, ROUNDING * chargesIn(water));
        assertEquals(
                0,
                water.netCharge().in(EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE),
                2 * 0x1p-52 * chargesIn(water)); // the compensated sum leaves the rounding of the last step
    }

    @Property
    void bothWaysOfClosingTheBalanceAreTheSameWater(@ForAll("waters") Water water) {
        Water reported = parts(water).alkalinity(water.alkalinity()).build();
        Water closing = parts(water).unmeasuredCharge(water.unmeasuredCharge()).build();
        assertEquals(water.alkalinity(), reported.alkalinity());
        assertEquals(unmeasuredOf(water), unmeasuredOf(reported), ROUNDING * chargesIn(water));
        assertEquals(water.unmeasuredCharge(), closing.unmeasuredCharge());
        assertEquals(alkalinityOf(water), alkalinityOf(closing), ROUNDING * chargesIn(water));
    }

    private static WaterBuilder parts(Water water) {
        WaterBuilder builder = Water.builder().temperature(water.temperature());
        water.ions().forEach(ion -> builder.total(ion, water.total(ion)));
        water.carbon().ifPresent(builder::carbon);
        water.measuredPH().ifPresent(builder::measuredPH);
        return builder;
    }

    @Property
    void theSameStatementsInAnyOrderMakeTheSameWater(@ForAll("waters") Water water, @ForAll Random random) {
        List<Ion> shuffled = new ArrayList<>(water.ions());
        Ion absent = Ion.all().stream()
                .filter(ion -> ion.isReferenceForm() && !Counting.isCarbon(ion) && !Counting.isWater(ion))
                .filter(ion -> !water.ions().contains(ion))
                .findFirst()
                .orElseThrow();
        shuffled.add(absent); // with amount 0
        Collections.shuffle(shuffled, random);
        WaterBuilder builder = Water.builder();
        water.measuredPH().ifPresent(builder::measuredPH);
        water.carbon().ifPresent(builder::carbon);
        shuffled.forEach(ion -> builder.total(ion, water.total(ion)));
        builder.temperature(water.temperature());
        Water one = parts(water).unmeasuredCharge(water.unmeasuredCharge()).build();
        Water other = builder.unmeasuredCharge(water.unmeasuredCharge()).build();
        assertEquals(one, other);
        assertEquals(one.hashCode(), other.hashCode());
        assertEquals(one.toString(), other.toString());
    }

    @Property
    void watersAreEqualIfTheyPrintAlike(@ForAll("waters") Water a, @ForAll("waters") Water b) {
        assertEquals(a.equals(b), a.toString().equals(b.toString()));
        assertEquals(a.equals(b), b.equals(a));
        assertTrue(!a.equals(b) || a.hashCode() == b.hashCode());
    }

    @Property
    void aTraceMoreOfAnIonMakesAnotherWater(@ForAll("waters") Water water) {
        Water more = water.plus(Change.of(Map.of(Ion.BROMIDE, mmol(1e-9), Ion.LITHIUM, mmol(1e-9))));
        assertNotEquals(water, more);
        assertNotEquals(water.toString(), more.toString());
        assertNotEquals(water.hashCode(), more.hashCode()); // not a law; these do not collide
    }

    @Property
    void ionsAreThoseWithAnAmountAndSorted(@ForAll("waters") Water water) {
        List<Ion> ions = water.ions();
        ions.forEach(ion -> assertTrue(of(ion, water) > 0));
        assertEquals(ions.stream().sorted().distinct().toList(), ions);
    }

    @Property
    void carbonateAndNonCarbonateHardnessAreTheTotal(@ForAll("waters") Water water, @ForAll HardnessCount counted) {
        HardnessForms forms = water.hardnessForms(counted);
        double total = forms.total().in(Hardness.MILLIMOLE_PER_LITRE);
        double carbonate = forms.carbonate().in(Hardness.MILLIMOLE_PER_LITRE);
        double rest = forms.nonCarbonate().in(Hardness.MILLIMOLE_PER_LITRE);
        assertEquals(total, carbonate + rest, 0x1p-52 * total);
        assertTrue(carbonate >= 0 && rest >= 0);
        assertTrue(carbonate == 0 || 2 * carbonate <= alkalinityOf(water));
        assertTrue(rest == 0 || 2 * carbonate >= alkalinityOf(water));
    }

    @Property
    void countingMoreIonsNeverLowersHardness(@ForAll("waters") Water water) {
        double hardness = water.hardness().in(Hardness.MILLIMOLE_PER_LITRE);
        double earths =
                water.hardnessForms(HardnessCount.ALKALINE_EARTHS).total().in(Hardness.MILLIMOLE_PER_LITRE);
        double titrated =
                water.hardnessForms(HardnessCount.EDTA_TITRATION).total().in(Hardness.MILLIMOLE_PER_LITRE);
        assertEquals(of(Ion.CALCIUM, water) + of(Ion.MAGNESIUM, water), hardness);
        assertTrue(hardness <= earths && earths <= titrated);
    }

    @Property
    void sidesOfTheIonBalanceDifferByTheUnmeasuredCharge(@ForAll("waters") Water water) {
        IonBalance balance = water.ionBalance();
        double cations = balance.cations().in(EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE);
        double anions = balance.anions().in(EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE);
        double difference = balance.difference().in(EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE);
        assertEquals(-unmeasuredOf(water), difference, ROUNDING * chargesIn(water));
        assertTrue(cations >= 0 && anions >= 0);
        assertTrue(Math.abs(balance.percentDifference()) <= 100);
        assertEquals(Math.signum(difference), Math.signum(balance.percentDifference()));
    }

    @Property
    void ionicStrengthIsAtLeastHalfTheChargesAndTwiceForDoubleCharges(@ForAll("waters") Water water) {
        double strength = water.ionicStrength().in(AmountConcentration.MILLIMOLE_PER_LITRE);
        double charges = chargesIn(water);
        assertTrue(strength >= charges / 2 * (1 - ROUNDING)); // ½ Σ z² c ≥ ½ Σ |z| c
        assertTrue(strength <= 3 * charges / 2 * (1 + ROUNDING)); // no ion here has more than three
    }

    @Property
    void dryingLeavesLessThanWasDissolved(@ForAll("waters") Water water) {
        double dissolved = water.dissolvedSolids().in(MassConcentration.MILLIGRAM_PER_LITRE);
        double residue = water.residueAt180Celsius().in(MassConcentration.MILLIGRAM_PER_LITRE);
        double lost = Math.max(0, alkalinityOf(water)) * (61.016 - 60.008 / 2); // half of CO₂ and H₂O for each HCO₃⁻
        assertEquals(dissolved - lost, residue, ROUNDING * dissolved);
    }

    @Property
    void anotherTemperatureIsTheSameWater(
            @ForAll("waters") Water water, @ForAll @DoubleRange(min = 0, max = 100) @Scale(3) double degrees) {
        Assume.that(water.temperature().in(WaterUnits.CELSIUS) != degrees);
        Water warmed = water.with(celsius(degrees));
        assertEquals(degrees, warmed.temperature().in(WaterUnits.CELSIUS), 1e-13); // kelvin has 12 digits behind
        assertTrue(warmed.measuredPH().isEmpty());
        assertEquals(water.alkalinity(), warmed.alkalinity());
        assertEquals(water.unmeasuredCharge(), warmed.unmeasuredCharge());
        assertEquals(water.carbon(), warmed.carbon());
        water.ions().forEach(ion -> assertEquals(water.total(ion), warmed.total(ion)));
    }
}
