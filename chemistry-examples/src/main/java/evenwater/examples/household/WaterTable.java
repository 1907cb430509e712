package evenwater.examples.household;

import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;

import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import javax.measure.Unit;

/** What a water holds, in mg/L and meq/L, with ranges where the report leaves something open. */
final class WaterTable {

    private static final Set<Ion> ALWAYS = Set.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.SODIUM, Ion.POTASSIUM, Ion.CHLORIDE);

    private final Stages stages;

    WaterTable(Stages stages) {
        this.stages = stages;
    }

    /** The rows of a stage, with a head; each stage shows every ion that any stage holds. */
    List<String[]> rows(int stage) {
        List<String[]> rows = new ArrayList<>();
        rows.add(new String[] {"", "mg/L", "meq/L", "may be, mg/L"});
        for (Ion ion : ions()) {
            rows.add(row(stage, ion));
        }
        Bounds<Alkalinity> alkalinity = stages.bounds(stage, Water::alkalinity);
        Span bicarbonate = Span.of(alkalinity, Alkalinity.MILLIGRAM_PER_LITRE_BICARBONATE);
        rows.add(new String[] {
            "alkalinity as HCO₃⁻",
            bicarbonate.valueText(),
            bicarbonate.least() + Page.number(alkalinity.value().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE)),
            bicarbonate.rangeText()
        });
        double unmeasured = stages.water(stage).unmeasuredCharge().in(MILLIEQUIVALENT_PER_LITRE);
        if (Math.abs(unmeasured) >= 0.0005) {
            String which = unmeasured < 0 ? "anions not measured" : "cations not measured";
            rows.add(new String[] {which, "", Page.number(Math.abs(unmeasured)), ""});
        }
        return rows;
    }

    private Collection<Ion> ions() {
        Set<Ion> ions = new TreeSet<>(ALWAYS);
        for (int stage = 0; stage <= stages.last(); stage++) {
            ions.addAll(stages.water(stage).ions());
        }
        return ions;
    }

    private String[] row(int stage, Ion ion) {
        Unit<AmountConcentration> milligrams = ion.milligramPerLitre();
        Function<Water, AmountConcentration> total = water -> water.total(ion);
        Bounds<AmountConcentration> bounds = stages.bounds(stage, total);
        Span span = Span.of(bounds, milligrams);
        if (span.isUnknown() && span.value() == 0) {
            return new String[] {ion.name() + " " + ion, "not measured", "", ""};
        }
        return new String[] {
            ion.name() + " " + ion,
            span.valueText(),
            ion.chargeNumber() == 0
                    ? "neutral"
                    : span.least() + Page.number(ion.equivalents(bounds.value()).in(MILLIEQUIVALENT_PER_LITRE)),
            span.rangeText()
        };
    }
}
