package evenwater.chemistry.validation;

import static evenwater.chemistry.quantity.AmountConcentration.MOLE_PER_LITRE;
import static evenwater.chemistry.quantity.EquivalentConcentration.EQUIVALENT_PER_LITRE;
import static evenwater.chemistry.quantity.MolarMass.GRAM_PER_MOLE;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Formula;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Substitute ocean water from ten salts, and the reference composition of seawater. */
final class SeawaterChecks {

    /** Moles of all solutes per kilogram of water in reference seawater. */
    private static final BigDecimal TOTAL = new BigDecimal("1.1605813");

    private SeawaterChecks() {}

    static Topic substitute() {
        Water water = substituteWater();
        return new Topic(
                "Substitute ocean water",
                "In g/L: NaCl 24.53, MgCl₂ 5.20, Na₂SO₄ 4.09, CaCl₂ 1.16, KCl 0.695, NaHCO₃ 0.201, KBr 0.101, H₃BO₃ 0.027, "
                        + "SrCl₂ 0.025, NaF 0.003. The recipe is from memory, the figures are its arithmetic.",
                List.of(
                        moles(water, Ion.SODIUM, "0.479802"),
                        moles(water, Ion.MAGNESIUM, "0.054619"),
                        moles(water, Ion.CALCIUM, "0.010453"),
                        moles(water, Ion.POTASSIUM, "0.010172"),
                        moles(water, Ion.CHLORIDE, "0.559528"),
                        moles(water, Ion.SULFATE, "0.028796"),
                        new Result(
                                        "ocean-mol-HCO3",
                                        "alkalinity",
                                        "eq/L",
                                        water.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE) / 1000)
                                .printed("0.002393", Source.ASTM_D1141, Status.COMPUTED),
                        grams(water, Ion.SODIUM, "11.031"),
                        grams(water, Ion.MAGNESIUM, "1.3275"),
                        grams(water, Ion.CALCIUM, "0.4189"),
                        grams(water, Ion.POTASSIUM, "0.3977"),
                        grams(water, Ion.CHLORIDE, "19.835"),
                        grams(water, Ion.SULFATE, "2.766"),
                        new Result(
                                        "ocean-hardness",
                                        "hardness by Ca and Mg",
                                        "mg/L CaCO₃",
                                        water.hardness().in(Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE))
                                .printed("6513", Source.ASTM_D1141, Status.COMPUTED)));
    }

    private static Water substituteWater() {
        Compound magnesiumChloride = Compound.of(
                "magnesium chloride anhydrous", Formula.parse("MgCl2"), Map.of(Ion.MAGNESIUM, 1, Ion.CHLORIDE, 2));
        Compound strontiumChloride = Compound.of(
                "strontium chloride anhydrous", Formula.parse("SrCl2"), Map.of(Ion.STRONTIUM, 1, Ion.CHLORIDE, 2));
        return Water.pure()
                .plus(dose(Compound.SODIUM_CHLORIDE, 24.53))
                .plus(dose(magnesiumChloride, 5.20))
                .plus(dose(Compound.SODIUM_SULFATE, 4.09))
                .plus(dose(Compound.CALCIUM_CHLORIDE_ANHYDROUS, 1.16))
                .plus(dose(Compound.POTASSIUM_CHLORIDE, 0.695))
                .plus(dose(Compound.SODIUM_BICARBONATE, 0.201))
                .plus(dose(Compound.POTASSIUM_BROMIDE, 0.101))
                .plus(dose(Compound.BORIC_ACID, 0.027))
                .plus(dose(strontiumChloride, 0.025))
                .plus(dose(Compound.SODIUM_FLUORIDE, 0.003));
    }

    private static Change dose(Compound compound, double gramsPerLitre) {
        return Change.dissolving(compound, MassConcentration.of(gramsPerLitre, MassConcentration.GRAM_PER_LITRE));
    }

    private static PublishedCheck moles(Water water, Ion ion, String published) {
        return new Result(
                        "ocean-mol-" + ion.symbol(),
                        ion.symbol(),
                        "mol/L",
                        water.total(ion).in(MOLE_PER_LITRE))
                .printed(published, Source.ASTM_D1141, Status.COMPUTED);
    }

    private static PublishedCheck grams(Water water, Ion ion, String published) {
        return new Result(
                        "ocean-g-" + ion.symbol(),
                        ion.symbol(),
                        "g/L",
                        water.total(ion).in(ion.milligramPerLitre()) / 1000)
                .printed(published, Source.ASTM_D1141, Status.COMPUTED);
    }

    static Topic reference() {
        Water water = referenceWater();
        return new Topic(
                "Reference composition of seawater",
                "Mole fractions of 15 solutes as published (from memory; that their charges cancel in the last digit supports them). "
                        + "The mass fractions were read. Amounts per kilogram of water are taken as per litre.",
                List.of(
                        new Result("sea-charge", "sum of charges per mole of solutes", "", chargePerMole())
                                .against(Figure.within("0", "0.00000005"), Source.MILLERO_2008, Status.FROM_MEMORY),
                        new Result(
                                        "sea-unmeasured",
                                        "unmeasured charge of the water",
                                        "eq/kg",
                                        water.unmeasuredCharge().in(EQUIVALENT_PER_LITRE))
                                .against(Figure.within("0", "0.00000005"), Source.MILLERO_2008, Status.FROM_MEMORY),
                        new Result("sea-valence", "Σ z² x", "", valenceFactor())
                                .printed("1.2452898", Source.TEOS_10, Status.FROM_MEMORY),
                        new Result("sea-mass", "mean molar mass of the solutes", "g/mol", meanMolarMass())
                                .printed("31.4038218", Source.MILLERO_2008, Status.FROM_MEMORY)
                                .differing("published with the atomic weights of 2005", meanMassOf2005()),
                        new Result(
                                        "sea-strength",
                                        "ionic strength at salinity 35",
                                        "mol/kg",
                                        water.ionicStrength().in(MOLE_PER_LITRE))
                                .printed("0.722578", Source.MILLERO_2008, Status.FROM_MEMORY)
                                .differing(
                                        "the published figure leaves out borate (0.722630 with it); ours counts alkalinity as "
                                                + "HCO₃⁻ and so misses the double charge of carbonate",
                                        strengthWithoutBorate()),
                        massFraction(Ion.CHLORIDE, "0.5503396"),
                        massFraction(Ion.SODIUM, "0.3065958"),
                        massFraction(Ion.SULFATE, "0.0771319"),
                        massFraction(Ion.MAGNESIUM, "0.0365055"),
                        massFraction(Ion.CALCIUM, "0.0117186"),
                        massFraction(Ion.POTASSIUM, "0.0113495"),
                        massFraction(Ion.BICARBONATE, "0.0029805"),
                        massFraction(Ion.BROMIDE, "0.0019134")));
    }

    private static Water referenceWater() {
        SortedMap<Ion, AmountConcentration> amounts = new TreeMap<>();
        for (Solute solute : Solute.ALL) {
            amounts.put(
                    solute.ion(),
                    AmountConcentration.of(solute.share().multiply(TOTAL).doubleValue(), MOLE_PER_LITRE));
        }
        return Water.pure().plus(Change.of(amounts));
    }

    private static double chargePerMole() {
        return Solute.ALL.stream()
                .mapToDouble(s -> s.ion().chargeNumber() * s.share().doubleValue())
                .sum();
    }

    private static double valenceFactor() {
        return Solute.ALL.stream()
                .mapToDouble(s -> s.ion().chargeNumber()
                        * s.ion().chargeNumber()
                        * s.share().doubleValue())
                .sum();
    }

    private static double meanMolarMass() {
        return Solute.ALL.stream().mapToDouble(SeawaterChecks::massPerMole).sum();
    }

    private static double massPerMole(Solute solute) {
        return solute.ion().molarMass().in(GRAM_PER_MOLE) * solute.share().doubleValue();
    }

    private static PublishedCheck massFraction(Ion ion, String published) {
        Solute solute =
                Solute.ALL.stream().filter(s -> s.ion().equals(ion)).findFirst().orElseThrow();
        BigDecimal of2005 = solute.massOf2005().divide(meanMassOf2005(), MathContext.DECIMAL64);
        return new Result(
                        "sea-w-" + ion.symbol(),
                        "mass fraction of " + ion.symbol(),
                        "",
                        massPerMole(solute) / meanMolarMass())
                .printed(published, Source.MILLERO_2008, Status.VERIFIED)
                .differing("published with the atomic weights of 2005", of2005);
    }

    private static BigDecimal meanMassOf2005() {
        return Solute.ALL.stream().map(Solute::massOf2005).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal strengthWithoutBorate() {
        return Solute.ALL.stream()
                .filter(solute -> !solute.ion().equals(Ion.BORATE))
                .map(solute -> solute.share().multiply(BigDecimal.valueOf(solute.charge() * solute.charge())))
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .multiply(TOTAL)
                .divide(BigDecimal.valueOf(2));
    }

    /** One solute of reference seawater: its ion, and charge, mole fraction and atoms typed apart from the library. */
    private record Solute(Ion ion, int charge, BigDecimal share, String atoms) {

        private static final List<Solute> ALL = List.of(
                of(Ion.SODIUM, 1, "0.4188071", "Na 1"),
                of(Ion.MAGNESIUM, 2, "0.0471678", "Mg 1"),
                of(Ion.CALCIUM, 2, "0.0091823", "Ca 1"),
                of(Ion.POTASSIUM, 1, "0.0091159", "K 1"),
                of(Ion.STRONTIUM, 2, "0.0000810", "Sr 1"),
                of(Ion.CHLORIDE, -1, "0.4874839", "Cl 1"),
                of(Ion.SULFATE, -2, "0.0252152", "S 1 O 4"),
                of(Ion.BICARBONATE, -1, "0.0015340", "H 1 C 1 O 3"),
                of(Ion.BROMIDE, -1, "0.0007520", "Br 1"),
                of(Ion.CARBONATE, -2, "0.0002134", "C 1 O 3"),
                of(Ion.BORATE, -1, "0.0000900", "B 1 O 4 H 4"),
                of(Ion.FLUORIDE, -1, "0.0000610", "F 1"),
                of(Ion.HYDROXIDE, -1, "0.0000071", "O 1 H 1"),
                of(Ion.BORIC_ACID, 0, "0.0002807", "B 1 O 3 H 3"),
                of(Ion.CARBON_DIOXIDE, 0, "0.0000086", "C 1 O 2"));

        private static Solute of(Ion ion, int charge, String share, String atoms) {
            return new Solute(ion, charge, new BigDecimal(share), atoms);
        }

        private BigDecimal massOf2005() {
            return DecimalWeights.OF_2005.mass(atoms).multiply(share);
        }
    }
}
