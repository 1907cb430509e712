package evenwater.chemistry.validation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Results recomputed in decimal arithmetic from definitions, weights and inputs, without the library. */
final class Recomputations {

    private static final MathContext DIGITS = MathContext.DECIMAL128;
    private static final BigDecimal TWO = new BigDecimal(2);
    private static final BigDecimal GRAIN = new BigDecimal("64.79891");
    private static final BigDecimal POUND = new BigDecimal("453.59237");
    private static final BigDecimal US_GALLON = new BigDecimal("3.785411784");
    private static final BigDecimal IMPERIAL_GALLON = new BigDecimal("4.54609");
    private static final BigDecimal CUBIC_FOOT = new BigDecimal("28.316846592");
    private static final BigDecimal CALCIUM_CARBONATE = mass("Ca 1 C 1 O 3");

    private Recomputations() {}

    /** Returns the values by the ids of their checks. */
    static Map<String, BigDecimal> byId() {
        Map<String, BigDecimal> values = new LinkedHashMap<>();
        addCrossTable(values);
        addSubstances(values);
        addWaters(values);
        addInstruments(values);
        addSoftening(values);
        addMetabolism(values);
        return values;
    }

    /** In the order of {@link ScaleTableChecks#SCALES}: mmol/L in one unit of each scale. */
    private static void addCrossTable(Map<String, BigDecimal> values) {
        List<BigDecimal> millimoles = List.of(
                BigDecimal.TEN.divide(mass("Ca 1 O 1"), DIGITS),
                BigDecimal.TEN.divide(CALCIUM_CARBONATE, DIGITS),
                GRAIN.divide(IMPERIAL_GALLON, DIGITS).divide(CALCIUM_CARBONATE, DIGITS),
                GRAIN.divide(US_GALLON, DIGITS).divide(CALCIUM_CARBONATE, DIGITS),
                BigDecimal.ONE.divide(CALCIUM_CARBONATE, DIGITS),
                BigDecimal.ONE,
                new BigDecimal("0.5"));
        for (int from = 0; from < millimoles.size(); from++) {
            for (int to = 0; to < millimoles.size(); to++) {
                if (from != to) {
                    values.put(
                            ScaleTableChecks.crossId(
                                    ScaleTableChecks.SCALES.get(from), ScaleTableChecks.SCALES.get(to)),
                            millimoles.get(from).divide(millimoles.get(to), DIGITS));
                }
            }
        }
    }

    private static void addSubstances(Map<String, BigDecimal> values) {
        values.put("mass-CaCO3", CALCIUM_CARBONATE);
        values.put("mass-MgSO4·7H2O", mass("Mg 1 S 1 O 11 H 14"));
        values.put("mass-CaSO4·2H2O", mass("Ca 1 S 1 O 6 H 4"));
        values.put("mass-CaMg(CO3)2", mass("Ca 1 Mg 1 C 2 O 6"));
        values.put("as-CaCO3-Ca²⁺-2.497", CALCIUM_CARBONATE.divide(mass("Ca 1"), DIGITS));
        values.put("as-CaCO3-Mg²⁺-4.118", CALCIUM_CARBONATE.divide(mass("Mg 1"), DIGITS));
        values.put("as-CaCO3-Fe²⁺-1.792", CALCIUM_CARBONATE.divide(mass("Fe 1"), DIGITS));
        values.put("meq-Ca²⁺", TWO.divide(mass("Ca 1"), DIGITS));
        values.put("meq-SO₄²⁻", TWO.divide(mass("S 1 O 4"), DIGITS));
        values.put("meq-HCO₃⁻", BigDecimal.ONE.divide(mass("H 1 C 1 O 3"), DIGITS));
        values.put("as-N-NO3--4.427", mass("N 1 O 3").divide(mass("N 1"), DIGITS));
        values.put("as-P-PO4^3--3.066", mass("P 1 O 4").divide(mass("P 1"), DIGITS));
        values.put("as-P2O5-P-0.4364", mass("P 2").divide(mass("P 2 O 5"), DIGITS));
        values.put("as-S-SO4^2--2.996", mass("S 1 O 4").divide(mass("S 1"), DIGITS));
    }

    private static void addWaters(Map<String, BigDecimal> values) {
        BigDecimal hardness =
                parts("80").divide(mass("Ca 1"), DIGITS).add(parts("20").divide(mass("Mg 1"), DIGITS));
        values.put("hardness-mmol-2.8190", hardness);
        values.put("hardness-282.141", hardness.multiply(CALCIUM_CARBONATE));
        values.put("cations-5.0319", cations());
        values.put("anions-4.9536", anions());
        values.put(
                "difference-0.784",
                cations()
                        .subtract(anions())
                        .multiply(parts("100"))
                        .divide(cations().add(anions()), DIGITS));
        BigDecimal bicarbonate = parts("96").divide(mass("Na 1 H 1 C 1 O 3"), DIGITS);
        BigDecimal gypsum = parts("60").divide(mass("Ca 1 S 1 O 6 H 4"), DIGITS);
        BigDecimal magnesiumSulfate = parts("60").divide(mass("Mg 1 S 1 O 4"), DIGITS);
        values.put("hard-water-hardness-84.77", gypsum.add(magnesiumSulfate).multiply(CALCIUM_CARBONATE));
        values.put(
                "hard-water-alkalinity-57.19",
                bicarbonate.multiply(CALCIUM_CARBONATE).divide(TWO, DIGITS));
        values.put("hard-water-SO₄²⁻-81.36", gypsum.add(magnesiumSulfate).multiply(mass("S 1 O 4")));
        values.put("ocean-mol-Mg²⁺-0.054619", parts("5.20").divide(mass("Mg 1 Cl 2"), DIGITS));
    }

    private static void addInstruments(Map<String, BigDecimal> values) {
        values.put("reading-15-25-562.7", parts("448").multiply(parts("1.256")));
        values.put("linear-15-25-1236.09", parts("1000").divide(parts("0.809"), DIGITS));
        values.put("factor-sodium chloride-0.493", mass("Na 10 Cl 10").divide(parts("1184.5"), DIGITS));
        values.put("factor-potassium chloride-0.528", mass("K 10 Cl 10").divide(parts("1413"), DIGITS));
        values.put(
                "mixture-442-sodium-317.6",
                mass("Na 800")
                        .divide(mass("Na 2 S 1 O 4"), DIGITS)
                        .add(mass("Na 400").divide(mass("Na 1 H 1 C 1 O 3"), DIGITS))
                        .add(mass("Na 200").divide(mass("Na 1 Cl 1"), DIGITS)));
    }

    private static BigDecimal cations() {
        return parts("110")
                .divide(mass("Ca 1"), DIGITS)
                .add(parts("24").divide(mass("Mg 1"), DIGITS))
                .add(parts("28").divide(mass("Na 1"), DIGITS))
                .add(parts("3.2").divide(mass("K 1"), DIGITS));
    }

    private static BigDecimal anions() {
        return parts("170")
                .divide(mass("H 1 C 1 O 3"), DIGITS)
                .add(parts("154").divide(mass("S 1 O 4"), DIGITS))
                .add(parts("20").divide(mass("Cl 1"), DIGITS));
    }

    private static void addSoftening(Map<String, BigDecimal> values) {
        BigDecimal sodiumPerCalciumCarbonate = mass("Na 2").divide(CALCIUM_CARBONATE, DIGITS);
        BigDecimal saltPerCalciumCarbonate = mass("Na 2 Cl 2").divide(CALCIUM_CARBONATE, DIGITS);
        BigDecimal pound = saltPerCalciumCarbonate.multiply(GRAIN).divide(POUND, DIGITS);
        values.put(
                "added-sodium-1 gpg-7.86412132",
                sodiumPerCalciumCarbonate.multiply(GRAIN).divide(US_GALLON, DIGITS));
        values.put("NaCl-CaCO3-1.16779570", saltPerCalciumCarbonate);
        values.put("NaCl-1000-0.166827957", pound);
        values.put("NaCl-limit-5994.1992", parts("1000").divide(pound, DIGITS));
        values.put("KCl-NaCl-1.2756", mass("K 1 Cl 1").divide(mass("Na 1 Cl 1"), DIGITS));
        values.put("efficiency-3350-478.571", parts("3350").multiply(GRAIN).divide(POUND, DIGITS));
        values.put("kilograin-2.28835191", GRAIN.divide(CUBIC_FOOT, DIGITS));
        values.put("bypass-0.30357", parts("85").divide(parts("280"), DIGITS));
        values.put("bypass-days-14.62", parts("5.7").divide(parts("0.39"), DIGITS));
    }

    private static void addMetabolism(Map<String, BigDecimal> values) {
        values.put(
                "nitrate-from-food-0.452205",
                parts("10").multiply(mass("Ca 1 O 1")).divide(mass("N 1 O 3").multiply(parts("20")), DIGITS));
        values.put("nitrification-7.14543", CALCIUM_CARBONATE.divide(mass("N 1"), DIGITS));
        values.put("denitrification-3.57", CALCIUM_CARBONATE.divide(mass("N 2"), DIGITS));
    }

    private static BigDecimal parts(String number) {
        return new BigDecimal(number);
    }

    private static BigDecimal mass(String atoms) {
        return DecimalWeights.OF_2021.mass(atoms);
    }
}
