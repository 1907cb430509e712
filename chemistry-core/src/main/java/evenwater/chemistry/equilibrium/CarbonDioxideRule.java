package evenwater.chemistry.equilibrium;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Ion;
import java.util.Objects;

/**
 * The aquarists' rule for carbon dioxide beside what the species say: {@code CO₂ in mg/L = 3 · KH · 10^(7 − pH)}, KH in °dKH.
 *
 * <p>The rule (common practice, no source) takes all alkalinity for bicarbonate and the temperature for some 30 °C: it reads 4 to 11 % low
 * in ordinary water at 25 to 28 °C, 30 to 40 % low at 5 to 10 °C, and far too high where phosphate, humic or other acids and bases join the titration.
 *
 * @param byRule what the rule says
 * @param bySpecies what the species of the water say
 */
public record CarbonDioxideRule(AmountConcentration byRule, AmountConcentration bySpecies) {

    /**
     * Checks that both are there.
     *
     * @param byRule see the record
     * @param bySpecies see the record
     */
    public CarbonDioxideRule {
        Objects.requireNonNull(byRule, "byRule");
        Objects.requireNonNull(bySpecies, "bySpecies");
    }

    /**
     * Returns the rule for a water.
     *
     * @param speciation of the water
     * @return both figures in mg/L CO₂
     * @throws NoAnswerException if the alkalinity is negative, where the rule means nothing
     */
    public static CarbonDioxideRule of(Speciation speciation) {
        double degrees = speciation.water().alkalinity().in(Alkalinity.DEGREE_OF_CARBONATE_HARDNESS);
        if (degrees < 0) {
            throw new NoAnswerException("the rule for CO₂ needs an alkalinity of 0 or more, but it was "
                    + speciation.water().alkalinity());
        }
        double milligrams = 3 * degrees * Math.exp((7 - speciation.pH()) * Math.log(10));
        return new CarbonDioxideRule(
                AmountConcentration.of(milligrams, Ion.CARBON_DIOXIDE.milligramPerLitre()),
                speciation.carbonDioxide().to(Ion.CARBON_DIOXIDE.milligramPerLitre()));
    }

    /**
     * Returns how far the rule is off.
     *
     * @return (rule − species) / species; no unit; negative where the rule reads low
     * @throws NoAnswerException if the water has no CO₂
     */
    public double error() {
        if (bySpecies.getValue() == 0) {
            throw new NoAnswerException("a water without CO₂ gives the rule nothing to be compared with");
        }
        return byRule.in(bySpecies.getUnit()) / bySpecies.getValue() - 1;
    }
}
