package evenwater.chemistry.analysis;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.quantity.UnreadableTextException;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Formula;
import evenwater.chemistry.substance.Ion;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.measure.Unit;

/** Reads the amount of an ion: by amount, by equivalents, or by the mass of a basis. */
final class IonRowReader {

    private static final List<String> GRAINS = List.of("gr/gal", "grain/gal", "grains/gal", "grains/gallon", "gpg");
    /** How many of them are a milligram per kilogram. */
    private static final Map<String, Integer> BY_MASS = Map.of("mg/kg", 1, "µg/kg", 1000, "ug/kg", 1000, "μg/kg", 1000);

    private static final List<String> PARTS = List.of("ppm", "ppb");

    private static final Formula CALCIUM_CARBONATE = Formula.parse("CaCO3");

    private final ReportOptions options;
    private final Consumer<String> notes;
    private final Analyte analyte;
    private final Ion ion;
    private final double value;

    IonRowReader(ReportOptions options, Consumer<String> notes, Analyte analyte, double value) {
        this.options = options;
        this.notes = notes;
        this.analyte = analyte;
        this.ion = Objects.requireNonNull(analyte.ion());
        this.value = value;
    }

    static void refuseUnknownUnit(String unit) {
        String lower = unit.toLowerCase(Locale.ROOT);
        if (lower.contains("eq/") || lower.contains("val/")) {
            EquivalentConcentration.parseUnit(unit);
        } else if (lower.contains("mol/")) {
            AmountConcentration.parseUnit(unit);
        } else if (!BY_MASS.containsKey(lower) && !GRAINS.contains(lower) && !PARTS.contains(lower)) {
            MassConcentration.parseUnit(unit);
        }
    }

    double millimolesPerLitre(StatedUnit stated) {
        String unit = stated.unit().isEmpty() ? options.unitOf(analyte).orElse("") : stated.unit();
        String lower = unit.toLowerCase(Locale.ROOT).replace(" ", "").replace("per", "/");
        if (unit.isEmpty()) {
            throw problem(unit, "the unit is missing, such as mg/L or mmol/L");
        }
        if (lower.contains("eq/") || lower.contains("val/")) {
            refusePhosphate(unit);
            return ion.amount(EquivalentConcentration.of(value, EquivalentConcentration.parseUnit(unit)))
                    .in(MILLIMOLE_PER_LITRE);
        }
        if (lower.contains("mol/")) {
            refuseOtherAmounts(unit, stated.basis());
            return AmountConcentration.of(value, AmountConcentration.parseUnit(unit))
                    .in(MILLIMOLE_PER_LITRE);
        }
        Formula basis = basis(lower, unit, stated.basis());
        if (basis.hasSameAtomsAs(CALCIUM_CARBONATE)) {
            refusePhosphate(unit);
        }
        if (BY_MASS.containsKey(lower)) {
            return byMass(BY_MASS.get(lower), basis);
        }
        if (GRAINS.contains(lower) && basis.hasSameAtomsAs(CALCIUM_CARBONATE)) {
            return grains(lower, unit, basis);
        }
        if (PARTS.contains(lower)) {
            notes.accept(analyte.name() + " in " + lower + " read as " + massUnit(lower, unit));
        }
        return mass(value, massUnit(lower, unit), basis);
    }

    /** Its equivalents are counted by the charge, and a laboratory may mean any of its forms. */
    private void refusePhosphate(String unit) {
        if (ion.equals(Ion.DIHYDROGEN_PHOSPHATE)) {
            throw problem(
                    unit,
                    "its equivalents may count one charge (as " + Ion.DIHYDROGEN_PHOSPHATE + ") or three (as "
                            + Ion.PHOSPHATE + "): state mmol/L or mg/L");
        }
    }

    /** 1 mmol/L of P₂O₅ is 2 of phosphate, and nobody can tell which of them a row means. */
    private void refuseOtherAmounts(String unit, String stated) {
        if (stated.isEmpty()) {
            return;
        }
        Formula basis = Formula.parse(stated);
        double perMole =
                mass(basis.molarMass().in(MolarMass.GRAM_PER_MOLE), MassConcentration.MILLIGRAM_PER_LITRE, basis);
        if (Math.abs(perMole - 1) > 1e-9) {
            throw problem(
                    unit, "it may be moles of " + ion + " or of " + basis + ": leave the basis out, or state a mass");
        }
    }

    private double mass(double amount, Unit<MassConcentration> unit, Formula basis) {
        return AmountConcentration.of(amount, ion.unit(unit, basis)).in(MILLIMOLE_PER_LITRE);
    }

    private Unit<MassConcentration> massUnit(String lower, String unit) {
        if (lower.equals("ppm")) {
            return MassConcentration.MILLIGRAM_PER_LITRE;
        }
        if (lower.equals("ppb")) {
            return MassConcentration.MICROGRAM_PER_LITRE;
        }
        try {
            return MassConcentration.parseUnit(isOfSomeGallon(lower) ? "gr/gal" : unit);
        } catch (UnreadableTextException e) {
            return MassConcentration.parseUnit(RowReader.settled(options, analyte, e));
        }
    }

    /** As CaCO₃ they are the trade's, which means US gallons. */
    private double grains(String lower, String unit, Formula basis) {
        if (isOfSomeGallon(lower)) {
            notes.accept(RowReader.ofTrade(analyte.name(), unit));
        }
        return mass(value, MassConcentration.GRAIN_PER_US_GALLON, basis);
    }

    private static boolean isOfSomeGallon(String lower) {
        return GRAINS.contains(lower) && !lower.equals("gpg");
    }

    private double byMass(int perMilligram, Formula basis) {
        MassConcentration density = options.density()
                .orElseThrow(() ->
                        problem("mg/kg", "a reading by mass needs the density of the water: state it as an option"));
        MassConcentration perLitre = MassConcentration.ofMassFraction(
                WaterUnits.share(value / perMilligram, WaterUnits.MILLIGRAM_PER_KILOGRAM), density);
        return mass(perLitre.in(MassConcentration.MILLIGRAM_PER_LITRE), MassConcentration.MILLIGRAM_PER_LITRE, basis);
    }

    private Formula basis(String lower, String unit, String stated) {
        Optional<String> asked = stated.isEmpty() ? options.basisOf(analyte) : Optional.empty();
        asked.ifPresent(basis -> notes.accept(analyte.name() + " taken as " + basis + ", as asked"));
        String basis = asked.orElse(stated);
        if (!basis.isEmpty()) {
            return Formula.parse(basis);
        }
        List<Formula> bases = new ArrayList<>(analyte.bases());
        boolean ofTrade = GRAINS.contains(lower) || lower.startsWith("gr/");
        if (ofTrade && ion.chargeNumber() != 0 && !bases.contains(CALCIUM_CARBONATE)) {
            bases.add(CALCIUM_CARBONATE); // what the softening trade means by grains
        }
        if (bases.size() == 1) {
            return bases.get(0);
        }
        throw problem(
                unit,
                bases.stream()
                                .map(f -> "as " + f + " (" + inItself(lower, unit, f) + ")")
                                .collect(Collectors.joining(" or ", "it may be ", ""))
                        + ": state the basis");
    }

    /** What a reading would be, in words that can be compared. */
    private String inItself(String lower, String unit, Formula basis) {
        return BY_MASS.containsKey(lower)
                ? "in " + unit
                : AmountConcentration.of(mass(value, massUnit(lower, unit), basis), MILLIMOLE_PER_LITRE)
                        .toText(Locale.ROOT, 3);
    }

    private UnreadableTextException problem(String unit, String problem) {
        return new UnreadableTextException(analyte.name(), (value + " " + unit).strip(), problem, 0);
    }
}
