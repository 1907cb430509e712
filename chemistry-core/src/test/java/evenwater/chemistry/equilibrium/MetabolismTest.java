package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Element;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class MetabolismTest {

    @Test
    void tenMilligramsOfNitrateCostNearlyHalfADegree() { // 10 / 62.004 mmol/L, each one equivalent; 0.35665 meq/L is
        // 1 °dKH
        Change change = Metabolism.nitrateFromFood(AmountConcentration.of(10, Ion.NITRATE.milligramPerLitre()));
        assertEquals(-0.4522, change.alkalinity().in(Alkalinity.DEGREE_OF_CARBONATE_HARDNESS), 0.0001);
    }

    private static List<Arguments> equivalents() { // by the reaction that each method states
        AmountConcentration one = mmol(1);
        return List.of(
                Arguments.of("nitrification", Metabolism.nitrifying(one), -2),
                Arguments.of("nitrate from food", Metabolism.nitrateFromFood(one), -1),
                Arguments.of("ammonia from food", Metabolism.ammoniaFromFood(one), 1),
                Arguments.of("nitrate taken up", Metabolism.takingUpNitrate(one), 1),
                Arguments.of("ammonium taken up", Metabolism.takingUpAmmonium(one), -1),
                Arguments.of("phosphate taken up", Metabolism.takingUpPhosphate(one), 1),
                Arguments.of("potassium taken up", Metabolism.takingUpPotassium(one), -1),
                Arguments.of("denitrification", Metabolism.denitrifying(one), 1),
                Arguments.of("breathing", Metabolism.breathing(one), 0),
                Arguments.of("photosynthesis", Metabolism.takingUpCarbonDioxide(one), 0));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("equivalents")
    void everyChangeIsNeutralAndMovesItsAlkalinity(String name, Change change, int equivalents) {
        assertEquals(equivalents, change.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE));
        assertEquals(0, change.netCharge().getValue());
        assertEquals(0, change.unmeasuredCharge().getValue());
    }

    @Test
    void foodThatBecomesAmmoniaAndThenNitrateIsFoodThatBecomesNitrate() {
        Change inSteps = Metabolism.ammoniaFromFood(mmol(0.3)).plus(Metabolism.nitrifying(mmol(0.3)));
        assertEquals(Metabolism.nitrateFromFood(mmol(0.3)), inSteps);
    }

    @Test
    void breathingBringsCarbonAlone() {
        assertEquals(Optional.of(mmol(0.5)), Metabolism.breathing(mmol(0.5)).carbon());
        assertEquals(List.of(), Metabolism.breathing(mmol(0.5)).ions());
    }

    @Test
    void whetherPhosphateLeavesAsOneFormOrTheOtherIsTheSame() {
        Change one = Change.of(Map.of(Ion.DIHYDROGEN_PHOSPHATE, mmol(-0.5), Ion.HYDROGEN, mmol(-0.5)));
        Change other = Change.of(Map.of(Ion.HYDROGEN_PHOSPHATE, mmol(-0.5), Ion.HYDROGEN, mmol(-1)));
        assertEquals(one, Metabolism.takingUpPhosphate(mmol(0.5)));
        assertEquals(other, Metabolism.takingUpPhosphate(mmol(0.5)));
    }

    @Test
    void amountsMayBeStatedInTheMassesOfTheHobby() {
        AmountConcentration nitrogen =
                AmountConcentration.of(14.007, Ion.NITRATE.milligramPerLitreAs(Element.NITROGEN));
        assertEquals(mmol(-1), Metabolism.takingUpNitrate(nitrogen).total(Ion.NITRATE));
        AmountConcentration phosphate = AmountConcentration.of(94.970, Ion.PHOSPHATE.milligramPerLitre());
        assertEquals(mmol(-1), Metabolism.takingUpPhosphate(phosphate).total(Ion.DIHYDROGEN_PHOSPHATE));
    }

    @Test
    void nothingLivesOnWhatIsNotThere() {
        Water tank = Water.builder().total(Ion.NITRATE, mmol(0.1)).build();
        Refused.argument(
                "cannot take 0.2 mmol/L of NO₃⁻ out of a water that holds 0.1 mmol/L",
                () -> tank.plus(Metabolism.takingUpNitrate(mmol(0.2))));
    }

    @Test
    void aMassOfSomethingElseIsRefused() {
        Refused.argument(
                "1 mg/L Cl⁻ is no concentration of ammonium: NH₄⁺ cannot be expressed as Cl⁻: they share no element "
                        + "other than hydrogen and oxygen",
                () -> Metabolism.nitrifying(AmountConcentration.of(1, Ion.CHLORIDE.milligramPerLitre())));
    }

    @Test
    void negativeAmountsAreRefused() {
        Refused.argument(
                "amount of nitrate must not be negative, but was -1 mmol/L",
                () -> Metabolism.nitrateFromFood(mmol(-1)));
        Refused.asNull("ammonium", () -> Metabolism.nitrifying(null));
    }
}
