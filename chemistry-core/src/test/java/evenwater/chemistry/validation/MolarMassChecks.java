package evenwater.chemistry.validation;

import static evenwater.chemistry.quantity.EquivalentMass.GRAM_PER_EQUIVALENT;
import static evenwater.chemistry.quantity.MolarMass.GRAM_PER_MOLE;

import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Formula;
import evenwater.chemistry.substance.Ion;
import java.math.BigDecimal;
import java.util.List;

/** Molar masses and equivalent masses as handbooks and the trade print them. */
final class MolarMassChecks {

    private static final String OLDER_WEIGHTS = "printed with the atomic weights of 2005";

    private MolarMassChecks() {}

    static Topic molarMasses() {
        return new Topic(
                "Molar masses",
                "Many handbooks still print sums of the atomic weights of 2005, which had more digits (Cl 35.453, S 32.065); the "
                        + "abridged weights of 2021 differ by up to 0.01 %.",
                List.of(
                        agrees("H2O", "18.015"),
                        agrees("CO2", "44.01"),
                        agrees("CaO", "56.077"),
                        agrees("MgO", "40.304"),
                        agrees("NaOH", "39.997"),
                        agrees("NaF", "41.988"),
                        agrees("KBr", "119.002"),
                        agrees("H3BO3", "61.83"),
                        agrees("C6H8O7", "192.12"),
                        agrees("CaMg(CO3)2", "184.40"),
                        agrees("Na2CO3", "105.99"),
                        agrees("Na2SO4", "142.04"),
                        agrees("MgSO4·7H2O", "246.47"),
                        older("CaCO3", "100.087", "Ca 1 C 1 O 3"),
                        older("CaCl2", "110.984", "Ca 1 Cl 2"),
                        older("CaCl2·2H2O", "147.015", "Ca 1 Cl 2 H 4 O 2"),
                        older("CaSO4·2H2O", "172.171", "Ca 1 S 1 O 6 H 4"),
                        older("Ca(OH)2", "74.093", "Ca 1 O 2 H 2"),
                        older("Mg(OH)2", "58.320", "Mg 1 O 2 H 2"),
                        older("NaCl", "58.443", "Na 1 Cl 1"),
                        older("KCl", "74.551", "K 1 Cl 1"),
                        older("NaHCO3", "84.007", "Na 1 H 1 C 1 O 3"),
                        older("KHCO3", "100.115", "K 1 H 1 C 1 O 3"),
                        older("KNO3", "101.103", "K 1 N 1 O 3"),
                        older("K2SO4", "174.26", "K 2 S 1 O 4"),
                        older("KH2PO4", "136.086", "K 1 H 2 P 1 O 4"),
                        older("NH4Cl", "53.491", "N 1 H 4 Cl 1"),
                        older("HCl", "36.461", "H 1 Cl 1"),
                        older("H2SO4", "98.08", "H 2 S 1 O 4"),
                        older("CuSO4·5H2O", "249.685", "Cu 1 S 1 O 9 H 10"),
                        older("Na2S2O3·5H2O", "248.18", "Na 2 S 2 O 8 H 10"),
                        older("HCO3-", "61.017", "H 1 C 1 O 3"),
                        older("SO4^2-", "96.063", "S 1 O 4"),
                        older("NO3-", "62.005", "N 1 O 3"),
                        older("PO4^3-", "94.971", "P 1 O 4")));
    }

    private static PublishedCheck agrees(String formula, String published) {
        Formula parsed = Formula.parse(formula);
        return PublishedCheck.of(
                "mass-" + formula,
                parsed.toString(),
                "g/mol",
                Source.CRC,
                Status.FROM_MEMORY,
                Figure.printed(published),
                parsed.molarMass().in(GRAM_PER_MOLE));
    }

    private static PublishedCheck older(String formula, String published, String atoms) {
        return agrees(formula, published).differing(OLDER_WEIGHTS, DecimalWeights.OF_2005.mass(atoms));
    }

    static Topic equivalentMasses() {
        return new Topic(
                "Equivalent masses",
                "Mass that carries or exchanges one mole of charge, as tables of the softening trade print it.",
                List.of(
                        ion(Ion.CALCIUM, "20.04"),
                        ion(Ion.MAGNESIUM, "12.15"),
                        ion(Ion.SODIUM, "22.99"),
                        ion(Ion.POTASSIUM, "39.10"),
                        ion(Ion.BICARBONATE, "61.02"),
                        ion(Ion.CARBONATE, "30.00"),
                        ion(Ion.CHLORIDE, "35.45"),
                        ion(Ion.SULFATE, "48.03"),
                        ion(Ion.NITRATE, "62.00"),
                        ion(Ion.FLUORIDE, "19.00"),
                        compound(Compound.CALCIUM_CARBONATE, Ion.CALCIUM, "50.04"),
                        compound(Compound.CALCIUM_CARBONATE, Ion.CALCIUM, "50.0")
                                .remarking("plain 50 is 50.043 rounded; results with it are 0.09 % apart"),
                        compound(Compound.CALCIUM_CARBONATE, Ion.CALCIUM, "50.045")
                                .differing(
                                        "half of 100.09, itself rounded",
                                        new BigDecimal("100.09").divide(new BigDecimal(2))),
                        compound(Compound.CALCIUM_HYDROXIDE, Ion.CALCIUM, "37.05"),
                        compound(Compound.MAGNESIUM_CARBONATE, Ion.MAGNESIUM, "42.16"),
                        compound(Compound.MAGNESIUM_SULFATE_ANHYDROUS, Ion.MAGNESIUM, "60.18"),
                        compound(Compound.SODIUM_CHLORIDE, Ion.SODIUM, "58.44"),
                        compound(Compound.POTASSIUM_CHLORIDE, Ion.POTASSIUM, "74.55"),
                        compound(Compound.SODIUM_CARBONATE_ANHYDROUS, Ion.SODIUM, "52.99"),
                        compound(Compound.SODIUM_HYDROXIDE, Ion.SODIUM, "40.00"),
                        compound(Compound.HYDROCHLORIC_ACID, Ion.HYDROGEN, "36.46"),
                        compound(Compound.SULFURIC_ACID, Ion.HYDROGEN, "49.04")));
    }

    private static PublishedCheck ion(Ion ion, String published) {
        return check(ion.symbol(), published, ion.equivalentMass().in(GRAM_PER_EQUIVALENT));
    }

    private static PublishedCheck compound(Compound compound, Ion exchanged, String published) {
        return check(
                compound.formula().toString(),
                published,
                compound.equivalentMass(exchanged).in(GRAM_PER_EQUIVALENT));
    }

    private static PublishedCheck check(String symbol, String published, double ours) {
        return PublishedCheck.of(
                "equivalent-" + symbol + "-" + published,
                symbol,
                "g/eq",
                Source.SOFTENING_TRADE,
                Status.COMMON_PRACTICE,
                Figure.printed(published),
                ours);
    }
}
