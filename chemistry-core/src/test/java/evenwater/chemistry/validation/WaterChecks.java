package evenwater.chemistry.validation;

import static evenwater.chemistry.quantity.AmountConcentration.MOLE_PER_LITRE;
import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;
import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;

import evenwater.chemistry.instrument.CalculatedConductivity;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/** Waters by their ions: hardness, balance, ionic strength, dissolved solids, and one made from salts. */
final class WaterChecks {

    private WaterChecks() {}

    static Topic ions() {
        Hardness hardness =
                water(Map.of(Ion.CALCIUM, 80.0, Ion.MAGNESIUM, 20.0), 0).hardness();
        Water mixed = mixed();
        return new Topic(
                "Waters by their ions",
                "",
                List.of(
                        hardness(hardness)
                                .against(Figure.within("282.12", "0.05"), Source.SM_2340, Status.COMPUTED)
                                .remarking("2.497 × 80 + 4.118 × 20, with the rounding of both factors"),
                        hardness(hardness).computed("282.141"),
                        new Result("hardness-dH", "the same", "°dH", hardness.in(Hardness.GERMAN_DEGREE))
                                .computed("15.81"),
                        new Result("hardness-gpg", "the same", "gpg", hardness.in(Hardness.GRAIN_PER_US_GALLON))
                                .computed("16.48"),
                        new Result("hardness-mmol", "the same", "mmol/L", hardness.in(Hardness.MILLIMOLE_PER_LITRE))
                                .computed("2.8190"),
                        new Result(
                                        "cations",
                                        "cations of the mixed water",
                                        "meq/L",
                                        mixed.ionBalance().cations().in(MILLIEQUIVALENT_PER_LITRE))
                                .computed("5.0319"),
                        new Result(
                                        "anions",
                                        "anions of the mixed water",
                                        "meq/L",
                                        mixed.ionBalance().anions().in(MILLIEQUIVALENT_PER_LITRE))
                                .computed("4.9536"),
                        new Result(
                                        "difference",
                                        "difference of the mixed water",
                                        "%",
                                        mixed.ionBalance().percentDifference())
                                .computed("0.784"),
                        new Result(
                                        "strength",
                                        "ionic strength of the mixed water",
                                        "mol/L",
                                        mixed.ionicStrength().in(MOLE_PER_LITRE))
                                .printed("0.00767", Source.SM_2510, Status.FROM_MEMORY)
                                .differing(
                                        "ours counts what the ions lack to balance as single-charged ions; the "
                                                + "example leaves them out and rounds each ion to 0.01 mmol/L (from memory)",
                                        strengthOfRoundedIons()),
                        salt("NaCl", Compound.SODIUM_CHLORIDE, "0.01"),
                        salt("CaCl₂", Compound.CALCIUM_CHLORIDE_ANHYDROUS, "0.03"),
                        salt("Na₂SO₄", Compound.SODIUM_SULFATE, "0.03"),
                        salt("MgSO₄", Compound.MAGNESIUM_SULFATE_ANHYDROUS, "0.04")));
    }

    private static Result hardness(Hardness hardness) {
        return new Result(
                "hardness",
                "hardness of 80 mg/L Ca and 20 mg/L Mg",
                "mg/L CaCO₃",
                hardness.in(Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE));
    }

    /** The example of Standard Methods: Ca 55, Mg 12, Na 28, K 3.2, HCO₃ 170, SO₄ 77, Cl 20 mg/L. */
    static Water mixed() {
        return water(
                Map.of(
                        Ion.CALCIUM, 55.0,
                        Ion.MAGNESIUM, 12.0,
                        Ion.SODIUM, 28.0,
                        Ion.POTASSIUM, 3.2,
                        Ion.SULFATE, 77.0,
                        Ion.CHLORIDE, 20.0),
                170);
    }

    /** A water from mg/L of its ions and of HCO₃⁻. */
    static Water water(Map<Ion, Double> milligramsPerLitre, double bicarbonate) {
        var builder =
                Water.builder().alkalinity(Alkalinity.of(bicarbonate, Alkalinity.MILLIGRAM_PER_LITRE_BICARBONATE));
        milligramsPerLitre.forEach(
                (ion, milligrams) -> builder.total(ion, AmountConcentration.of(milligrams, ion.milligramPerLitre())));
        return builder.build();
    }

    /** ½ Σ z² c of Ca 1.38, Mg 0.49, Na 1.22, K 0.08, HCO₃ 2.79, SO₄ 0.80 and Cl 0.56 mmol/L. */
    private static BigDecimal strengthOfRoundedIons() {
        BigDecimal doubleCharged =
                new BigDecimal("1.38").add(new BigDecimal("0.49")).add(new BigDecimal("0.80"));
        BigDecimal singleCharged = new BigDecimal("1.22")
                .add(new BigDecimal("0.08"))
                .add(new BigDecimal("2.79"))
                .add(new BigDecimal("0.56"));
        return doubleCharged.multiply(new BigDecimal(4)).add(singleCharged).divide(new BigDecimal(2000));
    }

    private static PublishedCheck salt(String formula, Compound compound, String published) {
        MassConcentration dose = MassConcentration.of(
                0.01 * compound.molarMass().in(MolarMass.GRAM_PER_MOLE), MassConcentration.GRAM_PER_LITRE);
        return new Result(
                        "strength-" + formula,
                        "ionic strength of 0.01 mol/L " + formula,
                        "mol/L",
                        Water.pure()
                                .plus(Change.dissolving(compound, dose))
                                .ionicStrength()
                                .in(MOLE_PER_LITRE))
                .against(Figure.exact(published), Source.SNOEYINK_JENKINS, Status.FROM_MEMORY);
    }

    static Topic solids() {
        Water rivers = water(
                Map.of(
                        Ion.CALCIUM, 15.0,
                        Ion.MAGNESIUM, 4.1,
                        Ion.SODIUM, 6.3,
                        Ion.POTASSIUM, 2.3,
                        Ion.SULFATE, 11.2,
                        Ion.CHLORIDE, 7.8,
                        Ion.NITRATE, 1.0,
                        Ion.SILICA, 13.1,
                        Ion.IRON_II, 0.67),
                58.4);
        return new Topic(
                "Dissolved solids",
                "",
                List.of(
                        new Result(
                                        "solids-rivers",
                                        "sum of the mean river water",
                                        "mg/L",
                                        rivers.dissolvedSolids().in(MILLIGRAM_PER_LITRE))
                                .printed("120", Source.LIVINGSTONE_1963, Status.FROM_MEMORY),
                        new Result(
                                        "residue-alkalinity",
                                        "residue of 1 mg/L alkalinity as CaCO₃",
                                        "mg/L",
                                        residue(Alkalinity.of(1, Alkalinity.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE)))
                                .printed("0.6", Source.SM_1030, Status.FROM_MEMORY),
                        new Result(
                                        "residue-bicarbonate",
                                        "residue of 1 mg/L HCO₃⁻",
                                        "mg/L",
                                        residue(Alkalinity.of(1, Alkalinity.MILLIGRAM_PER_LITRE_BICARBONATE)))
                                .printed("0.4917", Source.HEM_1985, Status.FROM_MEMORY),
                        ColoradoRiver.meanOfWeighedOverCalculated()));
    }

    private static double residue(Alkalinity alkalinity) {
        return Water.builder()
                .alkalinity(alkalinity)
                .build()
                .residueAt180Celsius()
                .in(MILLIGRAM_PER_LITRE);
    }

    static Topic reconstituted() {
        Water water = Water.pure()
                .plus(dose(Compound.SODIUM_BICARBONATE, 96))
                .plus(dose(Compound.CALCIUM_SULFATE_DIHYDRATE, 60))
                .plus(dose(Compound.MAGNESIUM_SULFATE_ANHYDROUS, 60))
                .plus(dose(Compound.POTASSIUM_CHLORIDE, 4));
        Hardness hardness = water.hardness();
        Result total = new Result(
                "hard-water-hardness",
                "hardness",
                "mg/L CaCO₃",
                hardness.in(Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE));
        Result alkalinity = new Result(
                "hard-water-alkalinity",
                "alkalinity",
                "mg/L CaCO₃",
                water.alkalinity().in(Alkalinity.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE));
        return new Topic(
                "Moderately hard water made from salts",
                "NaHCO₃ 96, CaSO₄·2H₂O 60, MgSO₄ 60 and KCl 4 mg/L in pure water.",
                List.of(
                        total.against(Figure.range("80", "100"), Source.EPA_2002, Status.FROM_MEMORY),
                        total.printed("84.77", Source.EPA_2002, Status.COMPUTED),
                        new Result("hard-water-dH", "hardness", "°dH", hardness.in(Hardness.GERMAN_DEGREE))
                                .printed("4.75", Source.EPA_2002, Status.COMPUTED),
                        alkalinity.against(Figure.range("57", "64"), Source.EPA_2002, Status.FROM_MEMORY),
                        alkalinity.printed("57.19", Source.EPA_2002, Status.COMPUTED),
                        new Result(
                                        "hard-water-dKH",
                                        "alkalinity",
                                        "°dKH",
                                        water.alkalinity().in(Alkalinity.DEGREE_OF_CARBONATE_HARDNESS))
                                .printed("3.20", Source.EPA_2002, Status.COMPUTED),
                        new Result(
                                        "hard-water-HCO3",
                                        "HCO₃⁻",
                                        "mg/L",
                                        water.alkalinity().in(Alkalinity.MILLIGRAM_PER_LITRE_BICARBONATE))
                                .printed("69.73", Source.EPA_2002, Status.COMPUTED),
                        ion(water, Ion.CALCIUM, "13.97"),
                        ion(water, Ion.MAGNESIUM, "12.12"),
                        ion(water, Ion.SODIUM, "26.27"),
                        ion(water, Ion.POTASSIUM, "2.10"),
                        ion(water, Ion.SULFATE, "81.36"),
                        ion(water, Ion.CHLORIDE, "1.90"),
                        conductivity(water)));
    }

    /** The figures of the remark: Standard Methods 2510, and a fit to the mixture law for free ions alone, both from the recipe. */
    private static PublishedCheck conductivity(Water water) {
        return new Result(
                        "hard-water-conductivity",
                        "conductivity at 25 °C",
                        "µS/cm",
                        CalculatedConductivity.at25Celsius(water).in(Conductivity.MICROSIEMENS_PER_CENTIMETRE))
                .against(Figure.range("300", "315"), Source.ARITHMETIC, Status.COMPUTED)
                .differing(
                        "models without ion pairs: Standard Methods gives 299.9, the mixture law on free ions 316.3; "
                                + "pairs take 6 % off here",
                        new BigDecimal("299.9").add(new BigDecimal("316.3")).divide(BigDecimal.valueOf(2)));
    }

    private static Change dose(Compound compound, double milligramsPerLitre) {
        return Change.dissolving(compound, MassConcentration.of(milligramsPerLitre, MILLIGRAM_PER_LITRE));
    }

    private static PublishedCheck ion(Water water, Ion ion, String published) {
        return new Result(
                        "hard-water-" + ion.symbol(),
                        ion.symbol(),
                        "mg/L",
                        water.total(ion).in(ion.milligramPerLitre()))
                .printed(published, Source.EPA_2002, Status.COMPUTED);
    }
}
