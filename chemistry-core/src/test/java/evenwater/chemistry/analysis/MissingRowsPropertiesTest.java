package evenwater.chemistry.analysis;

import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.ReverseOsmosis;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Water;
import evenwater.chemistry.water.WaterBuilder;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** A report that leaves rows out never excludes the water that it comes from. */
class MissingRowsPropertiesTest {

    /** Sums of some ten terms. */
    private static final double ROUNDING = 1e-9;

    private static final Map<String, Ion> IONS = Map.of(
            "calcium", Ion.CALCIUM,
            "magnesium", Ion.MAGNESIUM,
            "sodium", Ion.SODIUM,
            "potassium", Ion.POTASSIUM,
            "chloride", Ion.CHLORIDE,
            "sulfate", Ion.SULFATE);

    private static final Softener SOFTENER = Softener.withSodium();
    private static final ReverseOsmosis MEMBRANE = ReverseOsmosis.rejecting(0.9, 0.98);

    private static final Map<String, Function<Water, ? extends WaterQuantity<?>>> RESULTS = Map.ofEntries(
            Map.entry("hardness", Water::hardness),
            Map.entry("alkalinity", Water::alkalinity),
            Map.entry("sodium", water -> water.total(Ion.SODIUM)),
            Map.entry("chloride", water -> water.total(Ion.CHLORIDE)),
            Map.entry("ionic strength", Water::ionicStrength),
            Map.entry("dissolved solids", Water::dissolvedSolids),
            Map.entry("softened sodium", water -> SOFTENER.treat(water).total(Ion.SODIUM)),
            Map.entry("permeate sodium", water -> MEMBRANE.treat(water).total(Ion.SODIUM)),
            Map.entry("permeate calcium", water -> MEMBRANE.treat(water).total(Ion.CALCIUM)),
            Map.entry("permeate chloride", water -> MEMBRANE.treat(water).total(Ion.CHLORIDE)),
            Map.entry("permeate alkalinity", water -> MEMBRANE.treat(water).alkalinity()),
            Map.entry(
                    "permeate of the softener, sodium",
                    water -> MEMBRANE.treat(SOFTENER.treat(water)).total(Ion.SODIUM)));

    /** Neutral waters of the major ions with some alkalinity. */
    @Provide
    Arbitrary<Water> truths() {
        Arbitrary<Double> amount = Arbitraries.doubles().between(0.01, 5).ofScale(4);
        Arbitrary<Double> share = Arbitraries.doubles().between(0.01, 0.49).ofScale(4);
        return Combinators.combine(amount, amount, amount, amount, share, share)
                .as((calcium, magnesium, sodium, potassium, chloride, sulfate) -> {
                    double cations = 2 * calcium + 2 * magnesium + sodium + potassium;
                    WaterBuilder builder = Water.builder();
                    builder.total(Ion.CALCIUM, mmol(calcium)).total(Ion.MAGNESIUM, mmol(magnesium));
                    builder.total(Ion.SODIUM, mmol(sodium)).total(Ion.POTASSIUM, mmol(potassium));
                    builder.total(Ion.CHLORIDE, mmol(chloride * cations));
                    builder.total(Ion.SULFATE, mmol(sulfate * cations / 2));
                    return builder.build();
                });
    }

    @Provide
    Arbitrary<Set<String>> missing() {
        return Arbitraries.of("calcium", "magnesium", "sodium", "potassium", "chloride", "sulfate", "alkalinity", "KH")
                .set()
                .ofMaxSize(7);
    }

    private static Interpretation interpreted(Water truth, Set<String> missing, boolean carried) {
        Map<String, String> rows = new LinkedHashMap<>();
        IONS.forEach((name, ion) -> rows.put(
                name, name + " | " + truth.total(ion).in(AmountConcentration.MILLIMOLE_PER_LITRE) + " | mmol/L"));
        rows.put(
                "alkalinity",
                "alkalinity | " + truth.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE) + " | meq/L");
        if (missing.contains("KH")) {
            double strict =
                    Math.min(Reports.hardness(truth), truth.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE) / 2);
            rows.put("alkalinity", "carbonate hardness | " + strict + " | mmol/L");
        }
        rows.keySet().removeAll(missing);
        return Reports.read(rows.values().toArray(String[]::new))
                .interpret(carried ? Assumptions.usual().carrying(Ion.CHLORIDE, Ion.SODIUM) : Assumptions.usual());
    }

    @Property
    void boundsHoldTheResultOfTheWholeReport(
            @ForAll("truths") Water truth, @ForAll("missing") Set<String> missing, @ForAll boolean carried) {
        if (missing.size() == 7 && !missing.contains("KH")) {
            return; // no row at all
        }
        Interpretation read = interpreted(truth, missing, carried);
        RESULTS.forEach((name, result) -> {
            boolean turns =
                    carried && name.startsWith("permeate"); // the carrier changes sides, and so does the membrane
            if (!turns) {
                assertHolds(name, read, truth, result);
            }
        });
    }

    @SuppressWarnings("unchecked") // each result is compared with its own kind only
    private static <Q extends WaterQuantity<Q>> void assertHolds(
            String name, Interpretation read, Water truth, Function<Water, ? extends WaterQuantity<?>> result) {
        Function<Water, Q> own = (Function<Water, Q>) result;
        Bounds<Q> bounds = read.bounds(own);
        Q whole = own.apply(truth);
        double size = Math.abs(whole.getValue()) + Math.abs(bounds.value().getValue());
        String said = name + " " + whole + " in " + bounds;
        if (!bounds.openBelow()) {
            assertTrue(bounds.low().to(whole.getUnit()).getValue() <= whole.getValue() + ROUNDING * size, said);
        }
        if (!bounds.openAbove()) {
            assertTrue(bounds.high().to(whole.getUnit()).getValue() >= whole.getValue() - ROUNDING * size, said);
        }
    }
}
