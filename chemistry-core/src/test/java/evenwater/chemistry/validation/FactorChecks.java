package evenwater.chemistry.validation;

import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Formula;
import evenwater.chemistry.substance.Ion;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/** Factors from milligrams of one thing to something else. */
final class FactorChecks {

    private static final Formula CALCIUM_CARBONATE = Formula.parse("CaCO3");

    private FactorChecks() {}

    static Topic asCalciumCarbonate() {
        return new Topic(
                "Milligrams of an ion as CaCO₃",
                "Hardness by calculation multiplies each ion with a factor; ion-exchange tables write all ions so.",
                List.of(
                        hardness(Ion.CALCIUM, "2.497", Status.VERIFIED),
                        hardness(Ion.MAGNESIUM, "4.118", Status.VERIFIED),
                        hardness(Ion.STRONTIUM, "1.142", Status.FROM_MEMORY),
                        hardness(Ion.IRON_II, "1.792", Status.FROM_MEMORY),
                        hardness(Ion.MANGANESE_II, "1.822", Status.FROM_MEMORY),
                        hardness(Ion.ZINC, "1.531", Status.FROM_MEMORY),
                        hardness(Ion.ALUMINIUM, "5.564", Status.FROM_MEMORY),
                        carbonate(Ion.BARIUM, "0.728799", Source.ARITHMETIC, Status.COMPUTED),
                        resin(Ion.CALCIUM, "2.50"),
                        resin(Ion.MAGNESIUM, "4.12"),
                        resin(Ion.SODIUM, "2.18"),
                        resin(Ion.POTASSIUM, "1.28"),
                        resin(Ion.BICARBONATE, "0.82"),
                        resin(Ion.CARBONATE, "1.67"),
                        resin(Ion.CHLORIDE, "1.41"),
                        resin(Ion.SULFATE, "1.04"),
                        resin(Ion.NITRATE, "0.81"),
                        resin(Ion.FLUORIDE, "2.63")));
    }

    private static PublishedCheck hardness(Ion ion, String published, Status status) {
        return carbonate(ion, published, Source.SM_2340, status);
    }

    private static PublishedCheck resin(Ion ion, String published) {
        return carbonate(ion, published, Source.RESIN_MAKERS, Status.COMMON_PRACTICE);
    }

    private static PublishedCheck carbonate(Ion ion, String published, Source source, Status status) {
        return PublishedCheck.of(
                "as-CaCO3-" + ion.symbol() + "-" + published,
                ion.symbol(),
                "mg/mg",
                source,
                status,
                Figure.printed(published),
                milligrams(ion, ion.formula(), CALCIUM_CARBONATE));
    }

    static Topic equivalents() {
        return new Topic(
                "Milliequivalents per milligram of an ion",
                "",
                List.of(
                        equivalents(Ion.CALCIUM, "0.04990"),
                        equivalents(Ion.MAGNESIUM, "0.08229"),
                        equivalents(Ion.SODIUM, "0.04350"),
                        equivalents(Ion.POTASSIUM, "0.02557")
                                .differing(
                                        "printed with K 39.102, the atomic weight of 1961",
                                        BigDecimal.ONE.divide(new BigDecimal("39.102"), MathContext.DECIMAL64)),
                        equivalents(Ion.BICARBONATE, "0.01639"),
                        equivalents(Ion.CARBONATE, "0.03333"),
                        equivalents(Ion.SULFATE, "0.02082"),
                        equivalents(Ion.CHLORIDE, "0.02821"),
                        equivalents(Ion.FLUORIDE, "0.05264"),
                        equivalents(Ion.NITRATE, "0.01613"),
                        equivalents(Ion.NITRITE, "0.02174"),
                        equivalents(Ion.AMMONIUM, "0.05544"),
                        equivalents(Ion.IRON_II, "0.03581"),
                        equivalents(Ion.MANGANESE_II, "0.03640"),
                        equivalents(Ion.STRONTIUM, "0.02283")));
    }

    private static PublishedCheck equivalents(Ion ion, String published) {
        return PublishedCheck.of(
                "meq-" + ion.symbol(),
                ion.symbol(),
                "meq/mg",
                Source.HEM_1985,
                Status.FROM_MEMORY,
                Figure.printed(published),
                ion.equivalents(AmountConcentration.of(1, ion.milligramPerLitre()))
                        .in(MILLIEQUIVALENT_PER_LITRE));
    }

    static Topic otherBases() {
        return new Topic(
                "One substance expressed as another",
                "Milligrams of the second that stand for one milligram of the first.",
                List.of(
                        laboratory(Ion.NITRATE, "N", "NO3-", "4.427"),
                        laboratory(Ion.NITRATE, "N", "NO3-", "4.4268")
                                .differing("printed with the atomic weights of 2005", ratioOf2005("N 1 O 3", "N 1")),
                        laboratory(Ion.NITRATE, "NO3-", "N", "0.2259"),
                        laboratory(Ion.NITRITE, "N", "NO2-", "3.28"),
                        laboratory(Ion.AMMONIUM, "N", "NH4+", "1.288"),
                        laboratory(Ion.AMMONIUM, "N", "NH3", "1.216"),
                        laboratory(Ion.DIHYDROGEN_PHOSPHATE, "P", "PO4^3-", "3.066"),
                        laboratory(Ion.DIHYDROGEN_PHOSPHATE, "PO4^3-", "P", "0.326"),
                        laboratory(Ion.SULFATE, "S", "SO4^2-", "2.996"),
                        laboratory(Ion.SULFATE, "SO4^2-", "S", "0.334"),
                        laboratory(Ion.SILICA, "Si", "SiO2", "2.139"),
                        laboratory(Ion.BORIC_ACID, "B", "B(OH)3", "5.72"),
                        laboratory(Ion.CARBON_DIOXIDE, "C", "CO2", "3.664"),
                        laboratory(Ion.BICARBONATE, "HCO3-", "CaCO3", "0.8202"),
                        laboratory(Ion.BICARBONATE, "CaCO3", "HCO3-", "1.219"),
                        laboratory(Ion.CARBONATE, "CO3^2-", "CaCO3", "1.668"),
                        fertiliser(Ion.DIHYDROGEN_PHOSPHATE, "P2O5", "P", "0.4364"),
                        fertiliser(Ion.DIHYDROGEN_PHOSPHATE, "P", "P2O5", "2.291"),
                        fertiliser(Ion.POTASSIUM, "K2O", "K", "0.8301")
                                .differing(
                                        "printed with the atomic weights of 2005, 0.830148; ours rounds up",
                                        ratioOf2005("K 2", "K 2 O 1")),
                        fertiliser(Ion.POTASSIUM, "K", "K2O", "1.2046"),
                        fertiliser(Ion.CALCIUM, "CaO", "Ca", "0.7147"),
                        fertiliser(Ion.CALCIUM, "Ca", "CaO", "1.3992"),
                        fertiliser(Ion.MAGNESIUM, "MgO", "Mg", "0.6030"),
                        fertiliser(Ion.MAGNESIUM, "Mg", "MgO", "1.6583")));
    }

    private static PublishedCheck laboratory(Ion ion, String from, String to, String published) {
        return basis(ion, from, to, published, Source.LABORATORIES);
    }

    private static PublishedCheck fertiliser(Ion ion, String from, String to, String published) {
        return basis(ion, from, to, published, Source.FERTILISER_TRADE);
    }

    private static PublishedCheck basis(Ion ion, String from, String to, String published, Source source) {
        Formula first = Formula.parse(from);
        Formula second = Formula.parse(to);
        return PublishedCheck.of(
                "as-" + from + "-" + to + "-" + published,
                ion.name() + ", " + first + " to " + second,
                "mg/mg",
                source,
                Status.COMMON_PRACTICE,
                Figure.printed(published),
                milligrams(ion, first, second));
    }

    private static double milligrams(Ion ion, Formula from, Formula to) {
        return AmountConcentration.of(1, ion.milligramPerLitreAs(from)).in(ion.milligramPerLitreAs(to));
    }

    private static BigDecimal ratioOf2005(String atoms, String perAtoms) {
        return DecimalWeights.OF_2005.mass(atoms).divide(DecimalWeights.OF_2005.mass(perAtoms), MathContext.DECIMAL64);
    }
}
