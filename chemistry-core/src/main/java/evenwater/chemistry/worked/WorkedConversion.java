package evenwater.chemistry.worked;

import evenwater.chemistry.quantity.ConversionFactor;
import evenwater.chemistry.quantity.UnitConversion;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Volume;

/** The factors of a conversion and how people get them wrong. */
final class WorkedConversion {

    private static final String US_GALLON = "gal(US)";
    private static final String IMPERIAL_GALLON = "gal(imp)";
    private static final String TWO_CHARGES = "meq/mmol";

    private WorkedConversion() {}

    static <Q extends Quantity<Q>> Worked<Q> of(WaterQuantity<Q> quantity, Unit<Q> unit) {
        double answer = quantity.in(unit);
        String symbol = unit.toString();
        UnitConversion conversion = quantity.conversionTo(unit);
        Step step = Step.of("Chain of factors", expression(quantity, unit), answer, symbol, note(conversion));
        return new Worked<>(
                quantity + " in " + named(symbol),
                List.of(step),
                quantity.to(unit),
                List.of(new Result("", answer, symbol)),
                mistakes(quantity, symbol, answer, conversion.factors()));
    }

    /** The plain number has no symbol. */
    private static String named(String symbol) {
        return symbol.isEmpty() ? "plain numbers" : symbol;
    }

    /** The whole chain, with the offsets of temperatures. */
    static <Q extends Quantity<Q>> Expression expression(WaterQuantity<Q> quantity, Unit<Q> unit) {
        UnitConversion conversion = quantity.conversionTo(unit);
        String from = quantity.getUnit().toString();
        Expression start = Term.stated(quantity);
        if (conversion.added() != 0) {
            start = start.plus(Term.exact(conversion.added(), difference(from)));
        }
        Expression chain = chain(start, conversion.factors());
        return conversion.subtracted() == 0
                ? chain
                : chain.minus(Term.exact(conversion.subtracted(), difference(unit.toString())));
    }

    /** From absolute zero to the zero of the scale; that of Celsius is counted in kelvins. */
    private static String difference(String unit) {
        return unit.equals("°C") ? "K" : unit;
    }

    static Expression chain(Expression start, List<ConversionFactor> factors) {
        Expression chain = start;
        for (ConversionFactor factor : factors) {
            Term term = Term.factor(factor);
            chain = factor.divides() ? chain.over(term) : chain.times(term);
        }
        return chain;
    }

    private static String note(UnitConversion conversion) {
        if (conversion.factors().isEmpty() && conversion.added() == 0 && conversion.subtracted() == 0) {
            return "both units have the same size";
        }
        boolean weighed =
                conversion.factors().stream().anyMatch(factor -> factor.unit().contains("g "));
        boolean gallon = isPer(conversion, "gal");
        boolean grain = isPer(conversion, "grain");
        List<String> notes = new ArrayList<>();
        if (gallon && grain) {
            notes.add("grain and gallon by their legal definitions, which are exact");
        } else if (gallon || grain) {
            notes.add((gallon ? "gallon" : "grain") + " by its legal definition, which is exact");
        }
        if (weighed) {
            notes.add("molar masses from the standard atomic weights");
        }
        return String.join("; ", notes);
    }

    private static boolean isPer(UnitConversion conversion, String start) {
        return conversion.factors().stream().anyMatch(factor -> factor.perUnit().startsWith(start));
    }

    private static List<Mistake> mistakes(
            WaterQuantity<?> quantity, String symbol, double answer, List<ConversionFactor> factors) {
        List<Mistake> mistakes = new ArrayList<>();
        boolean american = factors.stream().anyMatch(factor -> factor.perUnit().equals(US_GALLON));
        boolean imperial = factors.stream().anyMatch(factor -> factor.perUnit().equals(IMPERIAL_GALLON));
        if (american != imperial) {
            List<ConversionFactor> wrong = factors.stream()
                    .map(factor -> factor.perUnit().equals(american ? US_GALLON : IMPERIAL_GALLON)
                            ? other(factor, american)
                            : factor)
                    .toList();
            mistakes.add(
                    Mistake.of(
                            "gallon for gallon",
                            chain(Term.stated(quantity), wrong),
                            answer,
                            symbol,
                            american
                                    ? "the gallon of this unit is the one of the United States, 3.785411784 L, not the imperial one of 4.54609 L"
                                    : "the gallon of this unit is the imperial one, 4.54609 L, not the one of the United States of 3.785411784 L"));
        }
        if (weighs(factors, "mg CaCO3") && weighs(factors, "mg CaO")) {
            List<ConversionFactor> wrong = factors.stream()
                    .filter(factor -> !factor.perUnit().equals("mmol"))
                    .toList();
            mistakes.add(Mistake.of(
                    "ppm for ppm",
                    chain(Term.stated(quantity), wrong),
                    answer,
                    symbol,
                    "a milligram of CaO and a milligram of CaCO3 are not the same amount of calcium"));
        }
        if (factors.stream()
                .anyMatch(factor ->
                        factor.label().equals(TWO_CHARGES) && factor.number().intValue() == 2)) {
            List<ConversionFactor> wrong = factors.stream()
                    .filter(factor -> !factor.label().equals(TWO_CHARGES))
                    .toList();
            mistakes.add(Mistake.of(
                    "mole for mole",
                    chain(Term.stated(quantity), wrong),
                    answer,
                    symbol,
                    "each mmol of an ion or a mineral of charge two counts 2 meq"));
        }
        return mistakes;
    }

    private static boolean weighs(List<ConversionFactor> factors, String what) {
        return factors.stream().anyMatch(factor -> factor.unit().equals(what));
    }

    /** The same factor with the gallon of the other country. */
    private static ConversionFactor other(ConversionFactor factor, boolean american) {
        Unit<Volume> gallon = american ? WaterUnits.IMPERIAL_GALLON : WaterUnits.US_GALLON;
        ConversionFactor litres = WaterUnits.volume(1, gallon)
                .conversionTo(WaterUnits.LITRE)
                .factors()
                .get(0);
        return factor.divides() ? litres.inverse() : litres;
    }
}
