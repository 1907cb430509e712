package evenwater.chemistry.substance;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.UnreadableTextException;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Unit;

/** Reads the concentration of an ion with the basis of its mass: {@code 4.1 mg/L as N}. */
final class BasisReader {

    private static final Pattern PARTS = Pattern.compile(
            "\\s*(?<number>[-+]?[.0-9]++(?:[eE][-+]?[0-9]++)?+)\\s*(?<unit>\\S+)(?:\\s+(?:(?:as|of)\\s+)?(?<basis>\\S+))?\\s*",
            Pattern.UNICODE_CHARACTER_CLASS); // a space may be one that does not break a line
    private static final Pattern COMMA =
            Pattern.compile("\\s*[-+]?[.0-9]+(?<comma>,)", Pattern.UNICODE_CHARACTER_CLASS);
    private static final Pattern OF_ELEMENT = Pattern.compile("[A-Za-z0-9]{1,10}-(?<element>N|P|S|Si)");
    private static final int LONGEST = 200;

    private BasisReader() {}

    static AmountConcentration read(Ion ion, String text) {
        Matcher comma = COMMA.matcher(text);
        if (comma.lookingAt()) {
            throw problem(
                    ion,
                    text,
                    "a comma may be a decimal sign or a thousand: use a point and no grouping",
                    comma.start("comma"));
        }
        Matcher m = PARTS.matcher(text);
        if (text.length() > LONGEST || !m.matches()) {
            throw problem(ion, text, "expected a number with '.', a unit and a basis, such as 4.1 mg/L N", 0);
        }
        String unit = m.group("unit");
        String basis = m.group("basis");
        if (basis != null) {
            Unit<AmountConcentration> of = ion.unit(massUnit(unit), basis(ion, text, basis, m.start("basis")));
            return AmountConcentration.of(
                    MassConcentration.parse(m.group("number") + " g/L").getValue(), of);
        }
        String folded = unit.toLowerCase(Locale.ROOT);
        if (folded.contains("eq/") || folded.contains("val/")) {
            return amount(ion, text, EquivalentConcentration.parse(text));
        }
        if (isMass(unit)) {
            throw problem(
                    ion,
                    text,
                    "a mass needs a basis: " + unit + " as " + ion + " or as another formula",
                    text.length());
        }
        return AmountConcentration.parse(text);
    }

    private static UnreadableTextException problem(Ion ion, String text, String problem, int index) {
        return new UnreadableTextException("concentration of " + ion, text, problem, index);
    }

    private static AmountConcentration amount(Ion ion, String text, EquivalentConcentration equivalents) {
        try {
            return ion.amount(equivalents);
        } catch (IllegalArgumentException | ArithmeticException e) { // a neutral solute; too large for a double
            throw problem(ion, text, e.getMessage() + "", 0);
        }
    }

    private static Unit<MassConcentration> massUnit(String unit) {
        return MassConcentration.parseUnit(unit);
    }

    private static boolean isMass(String unit) {
        try {
            massUnit(unit);
            return true;
        } catch (UnreadableTextException e) {
            return false;
        }
    }

    private static Formula basis(Ion ion, String text, String basis, int index) {
        Matcher ofElement = OF_ELEMENT.matcher(basis); // "NO3-N": nitrate as N
        Formula formula = Formula.parse(ofElement.matches() ? ofElement.group("element") : basis);
        try {
            ion.milligramPerLitreAs(formula);
            return formula;
        } catch (IllegalArgumentException e) {
            throw problem(ion, text, e.getMessage() + "", index);
        }
    }
}
