package evenwater.chemistry.water;

import static evenwater.chemistry.testing.Amounts.alkalinityOf;
import static evenwater.chemistry.testing.Amounts.chargesIn;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Amounts.of;
import static evenwater.chemistry.testing.Amounts.unmeasuredOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Waters;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The books still balance after a thousand entries. */
class LongRunPropertiesTest {

    private static final int ENTRIES = 1000;

    private static final List<Ion> EXCHANGED =
            List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.STRONTIUM, Ion.BARIUM, Ion.IRON_II, Waters.LEAD);

    @Provide
    Arbitrary<Water> waters() {
        return Waters.any();
    }

    @Property(tries = 100)
    void chargeBalancesAfterAThousandOperations(
            @ForAll("waters") Water start, @ForAll("waters") Water other, @ForAll Random random) {
        Water water = start;
        double most = chargesIn(start);
        for (int i = 0; i < ENTRIES; i++) {
            water = operate(water, other, random);
            most = Math.max(most, chargesIn(water)); // what takes nearly all out again leaves the rounding of the whole
            assertEquals(0, water.netCharge().in(EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE), 1e-12 * most);
            for (Ion ion : water.balance().ions()) {
                assertTrue(water.balance().total(ion) >= 0, ion::symbol);
            }
        }
    }

    private static Water operate(Water water, Water other, Random random) {
        return switch (random.nextInt(7)) {
            case 0 -> water.mixedWith(other, random.nextDouble());
            case 1 -> water.dilutedBy(1 + random.nextDouble());
            case 2 -> chargesIn(water) < 1000 ? water.concentratedBy(1 + random.nextDouble()) : water.dilutedBy(10);
            case 3 -> water.plus(Change.exchanging(water, EXCHANGED, Ion.SODIUM, random.nextDouble()));
            case 4 -> water.plus(dose(random));
            case 5 -> water.plus(saltTakenOut(water, random.nextDouble()));
            default -> water.plus(Change.between(water, water.mixedWith(other, random.nextDouble())));
        };
    }

    private static Change dose(Random random) {
        Compound compound = Compound.all().get(random.nextInt(Compound.all().size()));
        return Change.dissolving(
                compound, MassConcentration.of(100 * random.nextDouble(), MassConcentration.MILLIGRAM_PER_LITRE));
    }

    private static Change saltTakenOut(Water water, double share) {
        double most = Math.min(of(Ion.SODIUM, water), of(Ion.CHLORIDE, water));
        return Change.of(Map.of(Ion.SODIUM, mmol(-share * most), Ion.CHLORIDE, mmol(-share * most)));
    }

    @Property(tries = 100)
    void aThousandNeutralChangesLeaveAlkalinityAndUnmeasuredChargeBitForBit(
            @ForAll("waters") Water start, @ForAll Random random) {
        Water water = start;
        for (int i = 0; i < ENTRIES; i++) {
            water = random.nextBoolean()
                    ? water.plus(Change.exchanging(water, EXCHANGED, Ion.SODIUM, random.nextDouble()))
                    : water.plus(Change.dissolving(
                            Compound.CALCIUM_CHLORIDE_DIHYDRATE,
                            MassConcentration.of(random.nextDouble(), MassConcentration.MILLIGRAM_PER_LITRE)));
        }
        assertEquals(alkalinityOf(start), alkalinityOf(water));
        assertEquals(unmeasuredOf(start), unmeasuredOf(water));
    }

    @Property(tries = 100)
    void fiftyLinesAddUpToOne(@ForAll("waters") Water start, @ForAll("waters") Water other, @ForAll Random random) {
        Water water = start;
        Change sum = Change.of(Map.of());
        double turnover = chargesIn(start);
        for (int i = 0; i < 50; i++) {
            Water next = operate(water, other, random);
            Change line = Change.between(water, next);
            sum = sum.plus(line);
            turnover += chargesIn(line);
            water = next;
        }
        Change inOneLine = Change.between(start, water);
        double rounding = 1e-14 * (turnover + 100); // fifty sums, and neutral solutes
        for (Ion ion : water.ions()) {
            assertEquals(of(ion, inOneLine), of(ion, sum), rounding, ion::symbol);
        }
        assertEquals(inOneLine.alkalinity().getValue(), sum.alkalinity().getValue(), rounding);
        assertEquals(
                inOneLine.unmeasuredCharge().getValue(), sum.unmeasuredCharge().getValue(), rounding);
    }
}
