package evenwater.examples.questions;

import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;

import evenwater.chemistry.instrument.CalculatedConductivity;
import evenwater.chemistry.instrument.DissolvedSolidsMeter;
import evenwater.chemistry.instrument.FactorMeter;
import evenwater.chemistry.instrument.ReferenceSolution;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Water;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** Why 500 ppm on a dissolved-solids meter says nothing about hardness. */
public final class SolidsOnAMeter {

    private SolidsOnAMeter() {}

    /**
     * Prints what a meter shows of waters with and without hardness.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        Water hard = Water.builder()
                .total(Ion.CALCIUM, AmountConcentration.of(130, Ion.CALCIUM.milligramPerLitre()))
                .total(Ion.MAGNESIUM, AmountConcentration.of(42, Ion.MAGNESIUM.milligramPerLitre()))
                .total(Ion.SODIUM, AmountConcentration.of(30, Ion.SODIUM.milligramPerLitre()))
                .total(Ion.CHLORIDE, AmountConcentration.of(68, Ion.CHLORIDE.milligramPerLitre()))
                .total(Ion.SULFATE, AmountConcentration.of(134, Ion.SULFATE.milligramPerLitre()))
                .alkalinity(Alkalinity.of(18.5, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS))
                .build();
        // snippet
        DissolvedSolidsMeter meter = FactorMeter.SCALE_500; // 0.5 mg/L for each µS/cm
        Map<String, Water> waters = new LinkedHashMap<>();
        waters.put("hard tap water", hard);
        waters.put("the same, softened", Softener.withSodium().treat(hard));
        waters.put("table salt", ReferenceSolution.SODIUM_CHLORIDE.water(MassConcentration.parse("490 mg/L")));

        waters.forEach((name, water) -> {
            Conductivity conductivity = CalculatedConductivity.at25Celsius(water);
            System.out.printf(
                    Locale.ROOT,
                    "%-18s  %.0f ppm on the meter, hardness %.0f °dH, %.0f mg/L dissolved%n",
                    name,
                    meter.reading(conductivity).in(MILLIGRAM_PER_LITRE),
                    water.hardness().in(Hardness.GERMAN_DEGREE),
                    water.dissolvedSolids().in(MILLIGRAM_PER_LITRE));
        });
        // end
    }
}
