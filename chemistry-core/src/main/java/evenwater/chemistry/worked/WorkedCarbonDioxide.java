package evenwater.chemistry.worked;

import evenwater.chemistry.equilibrium.CarbonDioxideRule;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.kernel.EquilibriumConstant;
import evenwater.chemistry.kernel.Species;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import java.util.ArrayList;
import java.util.List;

/** Carbon dioxide by the law of mass action, from the species that were solved for. */
final class WorkedCarbonDioxide {

    private static final String MMOL = AmountConcentration.MILLIMOLE_PER_LITRE.toString();

    private WorkedCarbonDioxide() {}

    static Worked<Speciation> of(Speciation speciation) {
        double bicarbonate = speciation.concentration(Species.BICARBONATE).in(AmountConcentration.MILLIMOLE_PER_LITRE);
        AmountConcentration carbonDioxide = speciation.carbonDioxide();
        double millimoles = carbonDioxide.in(AmountConcentration.MILLIMOLE_PER_LITRE);
        if (!(bicarbonate > 0 && millimoles > 0)) {
            throw new NoAnswerException("carbon dioxide follows from bicarbonate, but this water has none");
        }
        double kelvin = speciation.water().temperature().in(WaterUnits.KELVIN);
        double lgK = EquilibriumConstant.CARBONIC_ACID_1.ln(kelvin) / Math.log(10);
        double gamma = speciation.activityCoefficient(Species.BICARBONATE);
        double neutral = speciation.activityCoefficient(Species.CARBON_DIOXIDE);
        String milligrams = Ion.CARBON_DIOXIDE.milligramPerLitre().toString();
        List<Step> steps = new ArrayList<>();
        steps.add(Step.of(
                "Activity of the hydrogen ion",
                new PowerOfTen(-speciation.pH()),
                Math.pow(10, -speciation.pH()),
                "mol/kg"));
        double activity = bicarbonate * gamma;
        steps.add(Step.of(
                "Activity of bicarbonate",
                Term.rounded(bicarbonate, MMOL).times(Term.rounded(gamma, "")),
                activity,
                "mmol/kg",
                "free HCO₃⁻ from the solved species, times its activity coefficient"));
        steps.add(Step.of(
                "Carbon dioxide by the first constant of carbonic acid",
                Term.rounded(Math.pow(10, -speciation.pH()), "mol/kg")
                        .times(Term.rounded(activity, "mmol/kg"))
                        .over(new PowerOfTen(lgK))
                        .over(Term.rounded(neutral, "")),
                millimoles,
                MMOL,
                "K₁ at " + speciation.water().temperature() + "; divided by the activity coefficient of CO₂"));
        steps.add(Step.of(
                "In milligrams",
                Term.rounded(millimoles, MMOL)
                        .times(Term.factor(Ion.CARBON_DIOXIDE.molarMass().in(MolarMass.GRAM_PER_MOLE), "mg", "mmol")),
                carbonDioxide.in(Ion.CARBON_DIOXIDE.milligramPerLitre()),
                milligrams));
        return new Worked<>(
                "Carbon dioxide of a water of pH " + Numbers.rounded(speciation.pH(), 4) + " and "
                        + Term.of(speciation.water().alkalinity(), Alkalinity.DEGREE_OF_CARBONATE_HARDNESS)
                                .text(4) + " at "
                        + speciation.water().temperature(),
                steps,
                speciation,
                List.of(Result.of("CO₂", carbonDioxide, Ion.CARBON_DIOXIDE.milligramPerLitre())),
                List.of(rule(speciation, milligrams)));
    }

    private static Mistake rule(Speciation speciation, String milligrams) {
        CarbonDioxideRule rule = CarbonDioxideRule.of(speciation);
        double degreesKH = speciation.water().alkalinity().in(Alkalinity.DEGREE_OF_CARBONATE_HARDNESS);
        double factor = rule.bySpecies().in(Ion.CARBON_DIOXIDE.milligramPerLitre())
                / (degreesKH * Math.pow(10, 7 - speciation.pH()));
        Term degrees = Term.of(speciation.water().alkalinity(), Alkalinity.DEGREE_OF_CARBONATE_HARDNESS);
        return Mistake.of(
                "the rule 3 × KH × 10^(7 − pH)",
                Term.exact(3, "").times(degrees).times(new PowerOfTen(7 - speciation.pH())),
                rule.bySpecies().in(Ion.CARBON_DIOXIDE.milligramPerLitre()),
                milligrams,
                (Double.isFinite(factor)
                                ? "at this temperature and in this water it is " + Numbers.rounded(factor, 3)
                                        + ", not 3; and "
                                : "")
                        + "the rule takes all alkalinity for bicarbonate, which phosphate and humic acids are not");
    }
}
