package evenwater.chemistry.testing;

import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;

import evenwater.chemistry.analysis.KitBounds;
import evenwater.chemistry.analysis.KitReadings;
import evenwater.chemistry.instrument.ConductivityReading;
import evenwater.chemistry.instrument.DropTest;
import evenwater.chemistry.instrument.ReadingInterval;
import evenwater.chemistry.kernel.KitQuantity;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What a kit would read of a natural water, and whether what a water holds lies within bounds. */
public final class Kits {

    /** Relative; conversions of units alone, the bounds themselves are rounded outwards. */
    private static final double ROUNDING = 1e-9;

    /** Of a meter at 25 °C, common practice. */
    private static final double METER_ERROR = 0.02;

    private static final Map<KitQuantity, Ion> IONS = Map.of(
            KitQuantity.CALCIUM, Ion.CALCIUM,
            KitQuantity.MAGNESIUM, Ion.MAGNESIUM,
            KitQuantity.SODIUM, Ion.SODIUM,
            KitQuantity.POTASSIUM, Ion.POTASSIUM,
            KitQuantity.CHLORIDE, Ion.CHLORIDE,
            KitQuantity.SULFATE, Ion.SULFATE,
            KitQuantity.NITRATE, Ion.NITRATE);

    private Kits() {}

    /** Drops of 1 °dH and 1 °dKH, pH to 0.1, a compensated meter of 2 %, the usual allowance for the model. */
    public static KitReadings readingsOf(NaturalWater natural) {
        Water water = natural.water();
        double pH = shownPH(water);
        return KitReadings.builder()
                .hardness(DropTest.GENERAL_HARDNESS.turningAt(hardnessDrops(water)))
                .alkalinity(DropTest.CARBONATE_HARDNESS.turningAt(alkalinityDrops(water)))
                .pH(pH - 0.05, pH + 0.05)
                .temperature(water.temperature())
                .conductivity(
                        ConductivityReading.compensatedTo25Celsius(Conductivity.of(
                                natural.measuredMicrosiemens(), Conductivity.MICROSIEMENS_PER_CENTIMETRE)),
                        METER_ERROR)
                .build();
    }

    /** The drop at which a GH kit turns. */
    public static int hardnessDrops(Water water) {
        return DropTest.GENERAL_HARDNESS.readingFor(water.hardness());
    }

    /** The drop at which a KH kit turns. */
    public static int alkalinityDrops(Water water) {
        return DropTest.CARBONATE_HARDNESS.readingFor(water.alkalinity());
    }

    /** Rounded to 0.1. */
    public static double shownPH(Water water) {
        return Math.round(water.measuredPH().orElseThrow() * 10) / 10.0;
    }

    /** What a water holds, in meq/L. */
    public static double held(Water water, KitQuantity quantity) {
        return switch (quantity) {
            case ALKALINITY -> Amounts.alkalinityOf(water);
            case HARDNESS -> held(water, KitQuantity.CALCIUM) + held(water, KitQuantity.MAGNESIUM);
            case SODIUM_AND_POTASSIUM -> held(water, KitQuantity.SODIUM) + held(water, KitQuantity.POTASSIUM);
            case STRONG_ANIONS ->
                held(water, KitQuantity.CHLORIDE) + held(water, KitQuantity.SULFATE) + held(water, KitQuantity.NITRATE);
            default -> {
                Ion ion = IONS.get(quantity);
                yield ion.equivalents(water.total(ion)).in(MILLIEQUIVALENT_PER_LITRE);
            }
        };
    }

    /** Says which quantities of a water are outside. */
    public static List<String> outside(Water water, KitBounds bounds) {
        List<String> found = new ArrayList<>();
        for (KitQuantity quantity : KitQuantity.values()) {
            ReadingInterval<EquivalentConcentration> range = bounds.equivalents(quantity);
            double truth = held(water, quantity);
            double least = range.least().in(MILLIEQUIVALENT_PER_LITRE);
            double most = range.most().in(MILLIEQUIVALENT_PER_LITRE);
            if (!(truth >= least - ROUNDING * truth && truth <= most + ROUNDING * truth)) {
                found.add(quantity + " " + truth + " meq/L, bounds " + least + " to " + most + ", of " + water);
            }
        }
        return found;
    }
}
