package evenwater.chemistry.worked;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.water.Change;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Volume;

/** What a dose brings, and how much a rise takes. */
final class WorkedDosing {

    private static final String MMOL = MILLIMOLE_PER_LITRE.toString();
    private static final String MG = MassConcentration.MILLIGRAM_PER_LITRE.toString();

    /** Far below an atom, and a double still has all its digits in what is computed from it. */
    private static final double LEAST_GRAMS = 1e-280;

    private WorkedDosing() {}

    static Worked<Change> of(Dosing dosing) {
        Compound compound = dosing.compound();
        Change change = dosing.change();
        List<Step> steps = new ArrayList<>();
        double milligrams = dosing.dose().in(MassConcentration.MILLIGRAM_PER_LITRE);
        steps.add(Step.of(
                "Dose",
                WorkedEquivalents.rounded(dosing.mass(), WaterUnits.MILLIGRAM)
                        .over(WorkedConversion.expression(dosing.volume(), WaterUnits.LITRE)),
                milligrams,
                MG));
        double millimoles = millimoles(compound, milligrams);
        steps.add(Step.of(
                "Millimoles of " + compound.name(),
                amount(compound, milligrams),
                millimoles,
                MMOL,
                strength(compound)));
        double alkalinity = 0;
        List<Expression> alkalinityParts = new ArrayList<>();
        List<Result> results = new ArrayList<>();
        for (Map.Entry<Ion, Integer> part : compound.ions().entrySet()) {
            Ion ion = part.getKey();
            Unit<AmountConcentration> unit = ion.milligramPerLitre();
            double of = millimoles * part.getValue();
            double brought = AmountConcentration.of(of, MILLIMOLE_PER_LITRE).in(unit);
            steps.add(Step.of(
                    ion.name(),
                    Term.rounded(millimoles, MMOL)
                            .times(Term.exact(part.getValue(), ""))
                            .times(Term.factor(ion.molarMass().in(MolarMass.GRAM_PER_MOLE), "mg", "mmol")),
                    brought,
                    unit.toString()));
            results.add(new Result(ion.name(), brought, unit.toString()));
            if (ion.alkalinityPerMole() != 0) {
                double per = (double) part.getValue() * ion.alkalinityPerMole();
                alkalinity += millimoles * per;
                alkalinityParts.add(Term.rounded(millimoles, MMOL).times(Term.factor(per, "meq", "mmol")));
            }
        }
        results.addAll(rises(change, steps, alkalinityParts, alkalinity));
        return new Worked<>("What " + dosing.name() + " brings", steps, change, results, List.of());
    }

    private static List<Result> rises(
            Change change, List<Step> steps, List<Expression> alkalinityParts, double alkalinity) {
        List<Result> results = new ArrayList<>();
        double hard = change.total(Ion.CALCIUM).in(MILLIMOLE_PER_LITRE)
                + change.total(Ion.MAGNESIUM).in(MILLIMOLE_PER_LITRE);
        if (hard > 0) {
            Hardness rise = Hardness.of(hard, Hardness.MILLIMOLE_PER_LITRE);
            Unit<Hardness> ppm = Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE;
            steps.add(Step.of("Rise of hardness", WorkedEquivalents.rounded(rise, ppm), rise.in(ppm), ppm.toString()));
            results.add(Result.of("hardness", rise, ppm));
        }
        if (!alkalinityParts.isEmpty()) {
            Unit<Alkalinity> meq = Alkalinity.MILLIEQUIVALENT_PER_LITRE;
            steps.add(Step.of(
                    "Change of alkalinity",
                    Sum.of(alkalinityParts),
                    change.alkalinity().in(meq),
                    meq.toString()));
            results.add(new Result("alkalinity", alkalinity, meq.toString()));
        }
        return results;
    }

    static Worked<Dosing> hardness(Compound compound, Quantity<Hardness> rise, Quantity<Volume> volume) {
        Dosing dosing = Dosing.raisingHardness(compound, rise, volume);
        int each =
                compound.ions().getOrDefault(Ion.CALCIUM, 0) + compound.ions().getOrDefault(Ion.MAGNESIUM, 0);
        Hardness wanted = Hardness.from(rise);
        Step first = Step.of(
                "Rise in millimoles",
                WorkedConversion.expression(wanted, Hardness.MILLIMOLE_PER_LITRE),
                wanted.in(Hardness.MILLIMOLE_PER_LITRE),
                MMOL);
        return weighing(
                dosing,
                "hardness by " + wanted,
                first,
                each,
                "mmol of calcium and magnesium for each mmol",
                WorkedConversion.expression(wanted, Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE));
    }

    static Worked<Dosing> alkalinity(Compound compound, Quantity<Alkalinity> rise, Quantity<Volume> volume) {
        Dosing dosing = Dosing.raisingAlkalinity(compound, rise, volume);
        int each = compound.ions().entrySet().stream()
                .mapToInt(part -> part.getValue() * part.getKey().alkalinityPerMole())
                .sum();
        Alkalinity wanted = Alkalinity.from(rise);
        Step first = Step.of(
                "Change in milliequivalents",
                WorkedConversion.expression(wanted, Alkalinity.MILLIEQUIVALENT_PER_LITRE),
                wanted.in(Alkalinity.MILLIEQUIVALENT_PER_LITRE),
                WorkedEquivalents.MEQ);
        return weighing(
                dosing,
                "alkalinity by " + wanted,
                first,
                each,
                "meq of alkalinity for each mmol",
                WorkedConversion.expression(wanted, Alkalinity.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE));
    }

    private static Worked<Dosing> weighing(
            Dosing dosing, String what, Step first, int each, String eachNote, Expression asCalciumCarbonate) {
        Compound compound = dosing.compound();
        double molarMass = compound.molarMass().in(MolarMass.GRAM_PER_MOLE);
        double millimoles = first.result() / each;
        double grams = dosing.mass().in(WaterUnits.GRAM);
        if (grams != 0 && Math.abs(grams) < LEAST_GRAMS) {
            throw new NoAnswerException("a dose of " + grams + " g has lost digits, so that no steps lead to it");
        }
        List<Step> steps = new ArrayList<>();
        steps.add(first);
        steps.add(Step.of(
                "Millimoles of " + compound.name(),
                Term.rounded(first.result(), first.unit()).over(Term.exact(each, "")),
                millimoles,
                MMOL,
                "it brings " + each + " " + eachNote));
        Chain mass = Term.rounded(millimoles, MMOL).times(Term.factor(molarMass, "mg", "mmol"));
        if (compound.strength() != 1) {
            mass = mass.over(Term.exact(compound.strength(), ""));
        }
        double dose = dosing.dose().in(MassConcentration.MILLIGRAM_PER_LITRE);
        steps.add(Step.of("Dose", mass, dose, MG, strength(compound)));
        steps.add(Step.of(
                "Mass for the whole volume",
                Term.rounded(dose, MG).times(litres(dosing)).over(Term.factor(1000, "mg", "g")),
                grams,
                "g",
                "in practice " + Numbers.rounded(grams, 2) + " g"
                        + (compound.strength() == 1 ? " of the pure compound" : "")));
        return new Worked<>(
                "How much " + compound.name() + " changes " + what + " in " + dosing.volume() + "?",
                steps,
                dosing,
                List.of(new Result("weigh", grams, "g")),
                mistakes(dosing, dose, grams, asCalciumCarbonate));
    }

    private static List<Mistake> mistakes(Dosing dosing, double dose, double grams, Expression asCalciumCarbonate) {
        Compound compound = dosing.compound();
        List<Mistake> mistakes = new ArrayList<>();
        Mistake milligrams = Mistake.of(
                "ppm for ppm",
                asCalciumCarbonate.times(litres(dosing)).over(Term.factor(1000, "mg", "g")),
                grams * compound.strength(),
                "g",
                "a milligram of " + compound.name() + " is not a milligram of CaCO3");
        if (milligrams.isPlausible()) { // of calcium carbonate it is one, whatever its strength
            mistakes.add(new Mistake(milligrams.name(), milligrams.step(), grams, milligrams.reason()));
        }
        if (compound.strength() != 1) {
            mistakes.add(Mistake.of(
                    "the strength left out",
                    Term.rounded(grams, "g").times(Term.exact(compound.strength(), "")),
                    grams,
                    "g",
                    "what is weighed holds " + percent(compound) + " of the pure compound"));
        }
        gallon(dosing, dose, grams).ifPresent(mistakes::add);
        return mistakes;
    }

    private static Optional<Mistake> gallon(Dosing dosing, double dose, double grams) {
        return WorkedConversion.of(dosing.volume(), WaterUnits.LITRE).mistakes().stream()
                .filter(mistake -> mistake.name().equals("gallon for gallon"))
                .findFirst()
                .map(mistake -> Mistake.of(
                        mistake.name(),
                        Term.rounded(dose, MG)
                                .times(Term.rounded(mistake.step().result(), "L"))
                                .over(Term.factor(1000, "mg", "g")),
                        grams,
                        "g",
                        mistake.reason()));
    }

    private static Expression litres(Dosing dosing) {
        WaterQuantity<Volume> volume = dosing.volume();
        return WorkedConversion.expression(volume, WaterUnits.LITRE);
    }

    private static double millimoles(Compound compound, double milligrams) {
        return milligrams * compound.strength() / compound.molarMass().in(MolarMass.GRAM_PER_MOLE);
    }

    private static Expression amount(Compound compound, double milligrams) {
        Expression weighed = Term.rounded(milligrams, MG);
        if (compound.strength() != 1) {
            weighed = weighed.times(Term.exact(compound.strength(), ""));
        }
        return weighed.over(Term.factor(compound.molarMass().in(MolarMass.GRAM_PER_MOLE), "mg", "mmol"));
    }

    private static String strength(Compound compound) {
        return compound.strength() == 1
                ? "molar mass of " + compound.formula()
                : "molar mass of " + compound.formula() + "; the pure compound is " + percent(compound)
                        + " of what is weighed";
    }

    private static String percent(Compound compound) {
        return Numbers.rounded(100 * compound.strength(), 4) + " %";
    }
}
