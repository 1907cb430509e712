package evenwater.chemistry.treatment;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.charge;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Amounts.of;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.testing.Waters;
import evenwater.chemistry.water.Water;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a membrane cannot be or do, in full words and with the numbers. */
class ReverseOsmosisErrorsTest {

    private static final ReverseOsmosis MEMBRANE = ReverseOsmosis.rejecting(0.75, 0.875);

    /** By rejection 0.5 + 0.25 − 0.5 meq/L are left over. */
    private static final Water FEED = Water.builder()
            .total(Ion.CALCIUM, mmol(2))
            .total(Ion.SODIUM, mmol(1))
            .total(Ion.POTASSIUM, mmol(0.125))
            .total(Ion.SULFATE, mmol(2))
            .alkalinity(alkalinity(1.125))
            .build();

    @Test
    void anIonThatCannotTakeTheExcessIsRefused() {
        // calcium 0.5, sodium 0.25, potassium 0.03125, sulfate −0.5, alkalinity −0.28125: nothing is left
        assertEquals(0.25, of(Ion.SODIUM, MEMBRANE.adjusting(Ion.SODIUM).treat(FEED)));
        // all sulfate held back: 0.5 meq/L too much, and potassium passes 0.03125
        Refused.withoutAnswer(
                "adjusting K⁺ cannot make the permeate neutral: the rejections leave 0.5 meq/L, "
                        + "and the feed holds 0.125 mmol/L of it",
                List.of(charge(0.5), mmol(0.125)),
                () -> MEMBRANE.rejecting(Ion.SULFATE, 1)
                        .adjusting(Ion.POTASSIUM)
                        .treat(FEED));
        // all calcium held back: 0.5 meq/L too little, and potassium has 0.09375 more
        Refused.withoutAnswer(
                "adjusting K⁺ cannot make the permeate neutral: the rejections leave -0.5 meq/L, "
                        + "and the feed holds 0.125 mmol/L of it",
                List.of(charge(-0.5), mmol(0.125)),
                () -> MEMBRANE.rejecting(Ion.CALCIUM, 1)
                        .adjusting(Ion.POTASSIUM)
                        .treat(FEED));
    }

    @Test
    void anIonThatTheFeedLacksCannotBeAdjusted() {
        Refused.withoutAnswer(
                "adjusting Cl⁻ cannot make the permeate neutral: the rejections leave 0.5 meq/L, "
                        + "and the feed holds 0.0 mmol/L of it",
                List.of(charge(0.5), mmol(0)),
                () -> MEMBRANE.rejecting(Ion.SULFATE, 1).adjusting(Ion.CHLORIDE).treat(FEED));
        Refused.withoutAnswer(
                "adjusting HCO₃⁻ cannot make the permeate neutral: the rejections leave 1.5 meq/L, "
                        + "and the feed holds 1.0 mmol/L of it",
                List.of(charge(1.5), mmol(1)),
                () -> ReverseOsmosis.rejecting(0, 1)
                        .adjusting(Ion.BICARBONATE)
                        .treat(Water.builder()
                                .total(Ion.SODIUM, mmol(2.5))
                                .total(Ion.SULFATE, mmol(0.75))
                                .build()));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 1.1, Double.NaN})
    void rejectionsAreFromNothingToAll(double value) {
        Refused.argument(
                "rejection of single-charged ions must be from 0 to 1, but was " + value,
                () -> ReverseOsmosis.rejecting(value, 0.9));
        Refused.argument(
                "rejection of multiple-charged ions must be from 0 to 1, but was " + value,
                () -> ReverseOsmosis.rejecting(0.9, value));
        Refused.argument(
                "rejection of B(OH)₃ must be from 0 to 1, but was " + value,
                () -> MEMBRANE.rejecting(Ion.BORIC_ACID, value));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.5, Double.NaN})
    void recoveryIsBetweenNothingAndAll(double value) {
        Refused.argument("recovery must be above 0 and below 1, but was " + value, () -> MEMBRANE.recovering(value));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "NH3     | NH₃ is counted in NH₄⁺: state that one, or HCO₃⁻ for alkalinity",
                "PO4^3-  | PO₄³⁻ is counted in H₂PO₄⁻: state that one, or HCO₃⁻ for alkalinity",
                "CO2     | CO₂ has no rejection of its own: state HCO₃⁻ for alkalinity; dissolved CO₂ passes freely",
                "CO3^2-  | CO₃²⁻ has no rejection of its own: state HCO₃⁻ for alkalinity; dissolved CO₂ passes freely",
                "H+      | H⁺ has no rejection of its own: state HCO₃⁻ for alkalinity; dissolved CO₂ passes freely",
                "OH-     | OH⁻ has no rejection of its own: state HCO₃⁻ for alkalinity; dissolved CO₂ passes freely",
                "H2O     | H₂O has no rejection of its own: state HCO₃⁻ for alkalinity; dissolved CO₂ passes freely"
            })
    void ionsThatAreCountedElsewhereAreRefused(String symbol, String message) {
        Ion ion = Ion.parse(symbol);
        Refused.argument(message, () -> MEMBRANE.rejecting(ion, 0.5));
        Refused.argument(message, () -> MEMBRANE.adjusting(ion));
    }

    @Test
    void aNeutralSoluteCannotMakeThePermeateNeutral() {
        Refused.argument("SiO₂ has no charge to adjust", () -> MEMBRANE.adjusting(Ion.SILICA));
        Refused.argument("CO(NH₂)₂ has no charge to adjust", () -> MEMBRANE.adjusting(Waters.UREA));
    }

    @Test
    void aMembraneNeedsAFeed() {
        Refused.asNull("feed", () -> MEMBRANE.treat(null));
    }
}
