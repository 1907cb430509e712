package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.testing.Amounts.chargesIn;
import static evenwater.chemistry.testing.Amounts.elementsOf;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Element;
import evenwater.chemistry.testing.Waters;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import javax.measure.Quantity;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Laws of what life does: no charge is made, and roundabout ways end where the straight ones do. */
class MetabolismPropertiesTest {

    private static final List<Function<Quantity<AmountConcentration>, Change>> ALL = List.of(
            Metabolism::nitrifying,
            Metabolism::ammoniaFromFood,
            Metabolism::nitrateFromFood,
            Metabolism::denitrifying,
            Metabolism::takingUpNitrate,
            Metabolism::takingUpAmmonium,
            Metabolism::takingUpPhosphate,
            Metabolism::takingUpPotassium,
            Metabolism::takingUpCarbonDioxide,
            Metabolism::breathing);

    @Provide
    Arbitrary<Function<Quantity<AmountConcentration>, Change>> changes() {
        return Arbitraries.of(ALL);
    }

    @Provide
    Arbitrary<Water> waters() {
        return Waters.any();
    }

    @Property
    void noChargeIsMade(
            @ForAll("changes") Function<Quantity<AmountConcentration>, Change> process,
            @ForAll @DoubleRange(min = 0, max = 10) @Scale(9) double amount) {
        Change change = process.apply(mmol(amount));
        assertEquals(0, change.netCharge().getValue());
        assertEquals(0, change.unmeasuredCharge().getValue());
    }

    @Property
    void amountsAddUp(
            @ForAll("changes") Function<Quantity<AmountConcentration>, Change> process,
            @ForAll @DoubleRange(min = 0, max = 10) @Scale(9) double amount) {
        Change once = process.apply(mmol(amount));
        assertEquals(once.plus(once), process.apply(mmol(2 * amount)));
        assertEquals(once.times(4), process.apply(mmol(4 * amount)));
    }

    @Property
    void roundaboutWaysEndWhereTheStraightOnesDo(@ForAll @DoubleRange(min = 0, max = 10) @Scale(9) double amount) {
        AmountConcentration n = mmol(amount);
        // food to nitrate by way of ammonium
        assertEquals(
                Metabolism.nitrateFromFood(n), Metabolism.ammoniaFromFood(n).plus(Metabolism.nitrifying(n)));
        // a plant that takes the nitrate of nitrified ammonium might have taken the ammonium
        assertEquals(Metabolism.takingUpAmmonium(n), Metabolism.nitrifying(n).plus(Metabolism.takingUpNitrate(n)));
        // what is eaten and excreted has never happened
        Change nothing = Change.of(Map.of());
        assertEquals(nothing, Metabolism.ammoniaFromFood(n).plus(Metabolism.takingUpAmmonium(n)));
        assertEquals(nothing, Metabolism.nitrateFromFood(n).plus(Metabolism.takingUpNitrate(n)));
        assertEquals(nothing, Metabolism.breathing(n).plus(Metabolism.takingUpCarbonDioxide(n)));
        // to the water, bacteria and plants take nitrate alike
        assertEquals(Metabolism.takingUpNitrate(n), Metabolism.denitrifying(n));
    }

    @Property
    void nitrificationKeepsNitrogenAndUnmeasuredCharge(
            @ForAll("waters") Water water, @ForAll @DoubleRange(min = 0, max = 1) @Scale(6) double amount) {
        Water fed = water.plus(Metabolism.ammoniaFromFood(mmol(amount)));
        Water nitrified = fed.plus(Metabolism.nitrifying(mmol(amount)));
        double nitrogen = elementsOf(fed).getOrDefault(Element.NITROGEN, 0.0);
        assertEquals(nitrogen, elementsOf(nitrified).getOrDefault(Element.NITROGEN, 0.0), 1e-14 * (nitrogen + amount));
        assertEquals(water.unmeasuredCharge(), nitrified.unmeasuredCharge());
        assertEquals(0, nitrified.netCharge().getValue(), 1e-12 * chargesIn(nitrified));
    }
}
