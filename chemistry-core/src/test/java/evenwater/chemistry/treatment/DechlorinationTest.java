package evenwater.chemistry.treatment;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.MassConcentration.GRAM_PER_LITRE;
import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;
import static evenwater.chemistry.testing.Amounts.elementsOf;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.of;
import static evenwater.chemistry.treatment.ThiosulfateProduct.SULFATE;
import static evenwater.chemistry.treatment.ThiosulfateProduct.TETRATHIONATE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Element;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DechlorinationTest {

    /** One millimole of Cl₂: 70.90 mg. */
    private static final MassConcentration ONE_MILLIMOLE = milligrams(70.90);

    private static MassConcentration milligrams(double perLitre) {
        return MassConcentration.of(perLitre, MILLIGRAM_PER_LITRE);
    }

    private static double alkalinity(Change change) {
        return change.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE);
    }

    /** 248.172 g/mol over 4 · 70.90, and 2 · 248.172 over 70.90. */
    @Test
    void theDoseLiesBetweenSevenEighthsAndSevenMilligrams() {
        Dechlorination sulfate =
                Dechlorination.ofFreeChlorine(milligrams(1), SULFATE).withLeastDose();
        assertEquals(0.875, sulfate.dose().in(MILLIGRAM_PER_LITRE), 5e-4);
        Dechlorination tetrathionate =
                Dechlorination.ofFreeChlorine(milligrams(1), TETRATHIONATE).withLeastDose();
        assertEquals(7.0, tetrathionate.dose().in(MILLIGRAM_PER_LITRE), 5e-3);
        assertEquals(
                tetrathionate.dose(),
                Dechlorination.ofFreeChlorine(milligrams(1), SULFATE).dose());
        assertEquals(0.7, tetrathionate.mass(litres(100)).in(WaterUnits.GRAM), 5e-4);
    }

    /** By hand from the equations, per mmol of Cl₂ at the least dose: Na, S₂O₃, SO₄, S₄O₆, Cl, NH₄ in mmol, alkalinity in meq. */
    @ParameterizedTest(name = "{0}, chloramine {1}")
    @CsvSource({
        "SULFATE,       false, 0.5, 0.5, 0, 1, 0, -1.5",
        "SULFATE,       true,  0.5, 0.5, 0, 1, 1, -0.5",
        "TETRATHIONATE, false, 4,   0,   1, 1, 0, 1",
        "TETRATHIONATE, true,  4,   0,   1, 1, 1, 2"
    })
    void theEquationsBalance(
            ThiosulfateProduct product,
            boolean chloramine,
            double sodium,
            double sulfate,
            double tetrathionate,
            double chloride,
            double ammonium,
            double alkalinity) {
        Dechlorination treatment = (chloramine
                        ? Dechlorination.ofChloramine(ONE_MILLIMOLE, product)
                        : Dechlorination.ofFreeChlorine(ONE_MILLIMOLE, product))
                .withLeastDose();
        Change change = treatment.change();
        assertEquals(sodium, of(Ion.SODIUM, change), 1e-12);
        assertEquals(0, of(Ion.THIOSULFATE, change), 1e-12);
        assertEquals(sulfate, of(Ion.SULFATE, change), 1e-12);
        assertEquals(tetrathionate, of(Dechlorination.TETRATHIONATE, change), 1e-12);
        assertEquals(chloride, of(Ion.CHLORIDE, change), 1e-12);
        assertEquals(ammonium, of(Ion.AMMONIUM, change), 1e-12);
        assertEquals(alkalinity, alkalinity(change), 1e-12);
        assertEquals(0, change.netCharge().in(EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE), 1e-12);
        // all the sulfur of the salt, all the chlorine of the tap
        assertEquals(
                treatment.dose().in(MILLIGRAM_PER_LITRE) / 248.172 * 2,
                elementsOf(change).get(Element.SULFUR),
                1e-4);
        assertEquals(1, elementsOf(change).get(Element.CHLORINE), 1e-12);
    }

    /** Seven eighths of what is dosed at the upper end stay, if all that reacts ends as sulfate. */
    @Test
    void whatIsNotNeededStays() {
        Dechlorination treatment = Dechlorination.ofFreeChlorine(ONE_MILLIMOLE, SULFATE);
        assertEquals(1.75, of(Ion.THIOSULFATE, treatment.change()), 1e-12);
        assertEquals(4, of(Ion.SODIUM, treatment.change()), 1e-12);
        assertEquals(
                List.of("thiosulfate that is not needed stays, and bacteria take oxygen to oxidise it: aerate"),
                treatment.cautions());
        assertEquals(List.of(), treatment.withLeastDose().cautions());
        assertEquals(0, treatment.change().netCharge().in(EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE), 1e-12);
    }

    /** 3 mg/L as Cl₂ of chloramine: 0.0423 mmol/L of ammonia, 0.76 mg/L as NH₄⁺. */
    @Test
    void chloramineSetsAmmoniaFree() {
        Dechlorination treatment =
                Dechlorination.ofChloramine(milligrams(3), SULFATE).withDose(milligrams(10));
        Water treated = treatment.treat(Water.pure());
        assertEquals(3 / 70.90, treated.total(Ion.AMMONIUM).in(MILLIMOLE_PER_LITRE), 1e-12);
        assertEquals(2, treatment.cautions().size());
        assertTrue(treatment
                .cautions()
                .get(0)
                .startsWith("chloramine sets free 0.76 mg/L NH₄⁺, which thiosulfate does not bind"));
        assertEquals(
                "10 mg/L of sodium thiosulfate pentahydrate against 3 mg/L of chloramine as Cl₂", treatment.name());
        assertEquals(treatment.name(), treatment.toString());
    }

    @Test
    void withoutChlorineThereIsNothingToDo() {
        Dechlorination none = Dechlorination.ofChloramine(milligrams(0), TETRATHIONATE);
        assertEquals(Water.pure(), none.treat(Water.pure()));
        assertEquals(List.of(), none.cautions());
    }

    @Test
    void whatIsOutOfRangeIsRefused() {
        Refused.argument(
                "chlorine as Cl₂ must be from 0 to 1000 mg/L, but was -1 mg/L",
                () -> Dechlorination.ofFreeChlorine(milligrams(-1), SULFATE));
        Dechlorination treatment = Dechlorination.ofFreeChlorine(milligrams(1), SULFATE);
        Refused.argument(
                "dose of sodium thiosulfate pentahydrate must be at least the 0.8751 mg/L that 1 mg/L of chlorine takes, "
                        + "at most 100 g/L, but was 0.8 mg/L",
                () -> treatment.withDose(milligrams(0.8)));
        Refused.argument(
                "dose of sodium thiosulfate pentahydrate must be at least the 0.8751 mg/L that 1 mg/L of chlorine takes, "
                        + "at most 100 g/L, but was 101 g/L",
                () -> treatment.withDose(MassConcentration.of(101, GRAM_PER_LITRE)));
        Refused.argument("volume of the water must be positive, but was 0 L", () -> treatment.mass(litres(0)));
        Refused.asNull("product", () -> Dechlorination.ofFreeChlorine(milligrams(1), null));
        Refused.asNull("asChlorine", () -> Dechlorination.ofChloramine(null, SULFATE));
        Refused.asNull("source", () -> treatment.treat(null));
    }
}
