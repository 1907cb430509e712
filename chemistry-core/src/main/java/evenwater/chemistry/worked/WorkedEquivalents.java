package evenwater.chemistry.worked;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.IonBalance;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;

/** From milligrams to charges, ion by ion, and what they add up to. */
final class WorkedEquivalents {

    static final String MEQ = MILLIEQUIVALENT_PER_LITRE.toString();

    /** A smaller share of the charges is what doubles lose on the way, and no difference. */
    private static final double ROUNDING = 1e-13;

    private WorkedEquivalents() {}

    static Worked<EquivalentConcentration> of(Ion ion, Quantity<AmountConcentration> concentration) {
        AmountConcentration stated = ion.concentration(concentration);
        EquivalentConcentration answer = ion.equivalents(stated);
        int charge = Math.abs(ion.chargeNumber());
        List<Mistake> mistakes = charge == 1
                ? List.of()
                : List.of(Mistake.of(
                        "mole for mole",
                        WorkedConversion.expression(stated, MILLIMOLE_PER_LITRE),
                        answer.in(MILLIEQUIVALENT_PER_LITRE),
                        MEQ,
                        "each " + ion + " carries " + charge + " charges"));
        return new Worked<>(
                "Equivalents of " + ion + " in " + stated,
                List.of(step(ion, stated)),
                answer,
                List.of(Result.of(ion.symbol() + " carries", answer, MILLIEQUIVALENT_PER_LITRE)),
                mistakes);
    }

    /** An amount as it was stated to charges. */
    static Step step(Ion ion, AmountConcentration stated) {
        int charge = Math.abs(ion.chargeNumber());
        return Step.of(
                ion.name() + " in equivalents",
                WorkedConversion.expression(stated, MILLIMOLE_PER_LITRE).times(Term.factor(charge, "meq", "mmol")),
                ion.equivalents(stated).in(MILLIEQUIVALENT_PER_LITRE),
                MEQ,
                charge == 1 ? "" : ion + " carries " + charge + " charges");
    }

    /** The total of an ion of a water in milligrams, shown rounded, to charges. */
    static Step step(Ion ion, Water water) {
        int charge = Math.abs(ion.chargeNumber());
        AmountConcentration total = water.total(ion);
        return Step.of(
                ion.name() + " in equivalents",
                Term.of(total, ion.milligramPerLitre())
                        .over(Term.factor(ion.molarMass().in(MolarMass.GRAM_PER_MOLE), "mg", "mmol"))
                        .times(Term.factor(charge, "meq", "mmol")),
                ion.equivalents(total).in(MILLIEQUIVALENT_PER_LITRE),
                MEQ);
    }

    static Worked<IonBalance> balance(Water water) {
        List<Step> steps = new ArrayList<>();
        List<Expression> cations = new ArrayList<>();
        List<Expression> anions = new ArrayList<>();
        for (Ion ion : water.ions()) {
            if (ion.chargeNumber() == 0) {
                continue;
            }
            Step step = step(ion, water);
            steps.add(step);
            (ion.chargeNumber() > 0 ? cations : anions).add(Term.rounded(step.result(), MEQ));
        }
        double alkalinity = water.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE);
        if (alkalinity != 0) {
            (alkalinity > 0 ? anions : cations).add(Term.rounded(Math.abs(alkalinity), MEQ));
        }
        IonBalance balance = water.ionBalance();
        double plus = balance.cations().in(MILLIEQUIVALENT_PER_LITRE);
        double minus = balance.anions().in(MILLIEQUIVALENT_PER_LITRE);
        boolean cancel = Math.abs(plus - minus) <= ROUNDING * (plus + minus);
        double percent = cancel ? 0 : balance.percentDifference();
        steps.add(sum(
                "Sum of the cations",
                cations,
                plus,
                alkalinity < 0 ? "with the acid, which is a negative alkalinity" : ""));
        String noteOnAlkalinity = anions.size() > 1 ? "the last one is the alkalinity" : "there is only the alkalinity";
        steps.add(sum("Sum of the anions", anions, minus, alkalinity > 0 ? noteOnAlkalinity : ""));
        if (plus + minus > 0) {
            steps.add(Step.of(
                    "Difference over sum",
                    Term.exact(100, "%")
                            .times(Term.rounded(plus, MEQ).minus(Term.rounded(minus, MEQ)))
                            .over(Term.rounded(plus, MEQ).plus(Term.rounded(minus, MEQ))),
                    percent,
                    "%"));
        }
        return new Worked<>(
                "Ion balance of the water",
                steps,
                balance,
                List.of(
                        new Result("cations", plus, MEQ),
                        new Result("anions", minus, MEQ),
                        new Result("difference", percent, "%")),
                List.of());
    }

    static Step sum(String title, List<? extends Expression> parts, double sum, String note) {
        return parts.isEmpty()
                ? Step.of(title, Term.exact(0, MEQ), sum, MEQ, "there are none")
                : Step.of(
                        title,
                        Sum.of(parts),
                        sum,
                        MEQ,
                        parts.size() == 1 && note.isEmpty() ? "there is only one" : note);
    }

    static Worked<Hardness> hardness(Water water, Unit<Hardness> unit) {
        List<Step> steps = new ArrayList<>();
        List<Expression> parts = new ArrayList<>();
        double mistaken = 0;
        for (Ion ion : List.of(Ion.CALCIUM, Ion.MAGNESIUM)) {
            AmountConcentration total = water.total(ion);
            double millimoles = total.in(MILLIMOLE_PER_LITRE);
            steps.add(Step.of(
                    ion.name() + " in millimoles",
                    Term.of(total, ion.milligramPerLitre())
                            .over(Term.factor(ion.molarMass().in(MolarMass.GRAM_PER_MOLE), "mg", "mmol")),
                    millimoles,
                    MILLIMOLE_PER_LITRE.toString()));
            parts.add(Term.rounded(millimoles, MILLIMOLE_PER_LITRE.toString()));
            mistaken += total.in(ion.milligramPerLitre());
        }
        Hardness hardness = water.hardness();
        steps.add(Step.of(
                "Calcium and magnesium together",
                Sum.of(parts),
                hardness.in(Hardness.MILLIMOLE_PER_LITRE),
                MILLIMOLE_PER_LITRE.toString()));
        Worked<Hardness> converted = WorkedConversion.of(hardness, unit);
        steps.add(Step.of(
                "In the wanted scale",
                rounded(hardness, unit),
                hardness.in(unit),
                unit.toString(),
                converted.steps().get(0).note()));
        Expression added = WorkedConversion.chain(
                Sum.of(List.of(
                        Term.of(water.total(Ion.CALCIUM), Ion.CALCIUM.milligramPerLitre()),
                        Term.of(water.total(Ion.MAGNESIUM), Ion.MAGNESIUM.milligramPerLitre()))),
                Hardness.of(1, Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE)
                        .conversionTo(unit)
                        .factors());
        return new Worked<>(
                "Hardness of the water in " + unit,
                steps,
                hardness.to(unit),
                List.of(Result.of("hardness", hardness, unit)),
                mistaken == 0
                        ? List.of()
                        : List.of(Mistake.of(
                                "ppm for ppm",
                                added,
                                hardness.in(unit),
                                unit.toString(),
                                "milligrams of ions are not milligrams as CaCO3: each ion weighs something else")));
    }

    /** A conversion whose start was computed, so that its digits are not shown all. */
    static <Q extends Quantity<Q>> Expression rounded(WaterQuantity<Q> quantity, Unit<Q> unit) {
        Expression exact = WorkedConversion.expression(quantity, unit);
        Term start = Term.rounded(quantity.getValue(), quantity.getUnit().toString());
        return exact instanceof Chain chain ? new Chain(start, chain.links()) : exact instanceof Term ? start : exact;
    }
}
