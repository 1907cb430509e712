package evenwater.chemistry.analysis;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;

import evenwater.chemistry.analysis.AlkalinityReader.Known;
import evenwater.chemistry.analysis.Analyte.Kind;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import evenwater.chemistry.water.WaterBuilder;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Makes a water of a report: decides what each amount is, as a function of the points that the report leaves open. */
final class Interpreter {

    private final LabReport report;
    private final Assumptions assumed;
    private final OpenPoints open = new OpenPoints();
    private final List<String> assumptions;
    private final List<String> findings = new ArrayList<>();
    private final Map<Ion, OpenPoints.Amount> totals = new LinkedHashMap<>();
    private OpenPoints.@Nullable Amount alkalinity;
    private OpenPoints.@Nullable Amount pH;
    /** Where nobody measured alkalinity: anything from none of it to all that the measured ions leave. */
    private OpenPoints.@Nullable Point closing;

    /** Where only a lower bound of alkalinity is known, or none, and cations that may go with it are missing. */
    private OpenPoints.@Nullable Point moreAlkalinity;

    /** Where the pH tells of mineral acid and nobody measured how much. */
    private OpenPoints.@Nullable Point lessAlkalinity;

    /** Major ions that nobody measured: none of them or, to see what that does, some mmol/L. */
    private final Map<Ion, OpenPoints.Point> more = new LinkedHashMap<>();

    private OpenPoints.@Nullable Point carrier;
    /** Of the charge that the carrier holds by best guess; 0 if nobody carries any. */
    private double carriedSign;

    private static final List<Ion> MAJOR =
            List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.SODIUM, Ion.POTASSIUM, Ion.CHLORIDE, Ion.SULFATE);

    /** Metals of which a laboratory weighs all forms, also those that carry another charge or none. */
    private static final List<Ion> WEIGHED =
            List.of(Ion.IRON_II, Ion.MANGANESE_II, Ion.ZINC, Ion.COPPER_II, Ion.ALUMINIUM);

    Interpreter(LabReport report, Assumptions assumed) {
        this.report = report;
        this.assumed = assumed;
        this.assumptions = new ArrayList<>(report.notes());
    }

    Interpretation interpret() {
        for (Entry entry : report.ions()) {
            totals.put(Objects.requireNonNull(entry.key().ion()), open.amount(entry));
        }
        Set<Ion> measured = new HashSet<>(totals.keySet());
        measured.addAll(new HardnessReader(report, assumed, open, assumptions, findings).read(totals));
        AlkalinityReader.Reading titrated = new AlkalinityReader(report, open, assumptions, findings).read();
        alkalinity = titrated.amount();
        if (alkalinity == null) {
            closing = open.point(1);
            assumptions.add(
                    "alkalinity not measured: taken as what the measured ions leave, at least 0; the bounds try none of it");
        }
        for (Ion metal : WEIGHED) {
            if (totals.containsKey(metal)) {
                assumptions.add(metal.name().replace("(II)", "") + " counted as dissolved " + metal);
            }
        }
        if (report.entry(Kind.TEMPERATURE) == null) {
            assumptions.add("temperature not stated: 25 °C");
        }
        Entry reading = report.entry(Kind.PH);
        pH = reading == null ? null : open.amount(reading);
        open.describe(assumptions);
        noteCarrier();
        openMissing(measured, titrated);
        report.pH().ifPresent(pH -> CarbonOfPH.tell(water(open.nominal()), pH, assumptions, findings));
        return new Interpretation(
                report,
                open.corners(at -> CarbonOfPH.known(water(at))),
                assumptions,
                findings,
                notMeasured(measured, titrated.measured()),
                measured);
    }

    private static List<String> notMeasured(Set<Ion> measured, boolean alkalinity) {
        List<String> missing = new ArrayList<>();
        for (Ion ion : MAJOR) {
            if (!measured.contains(ion)) {
                missing.add(ion.name());
            }
        }
        if (!alkalinity) {
            missing.add("alkalinity");
        }
        return missing;
    }

    /** Tells who carries the charge that nobody measured, and opens the choice. */
    private void noteCarrier() {
        double unmeasured = charge(bare(open.nominal()));
        Ion ion = (unmeasured < 0 ? assumed.anion() : assumed.cation()).orElse(null);
        if (ion == null || unmeasured == 0) {
            return;
        }
        carrier = open.point(0);
        carriedSign = Math.signum(unmeasured);
        assumptions.add(String.format(
                Locale.ROOT,
                "%.3f meq/L that nobody measured counted as %s; the bounds also try %s",
                Math.abs(unmeasured),
                ion.name(),
                alternative(ion).name()));
    }

    /**
     * Opens what is missing of the major parts and no hardness makes up. A carrier holds only the net of what is missing: there may be
     * more of it, balanced by something else that nobody measured.
     */
    private void openMissing(Set<Ion> measured, AlkalinityReader.Reading reading) {
        for (Ion ion : MAJOR) {
            if (!measured.contains(ion) && !totals.containsKey(ion)) {
                more.put(ion, open.endlessPoint());
            }
        }
        boolean cationMissing = more.keySet().stream().anyMatch(ion -> ion.chargeNumber() > 0);
        if (reading.known() == Known.AT_LEAST && (alkalinity != null || cationMissing)) {
            moreAlkalinity = open.endlessPoint();
        }
        if (reading.known() == Known.AT_MOST) {
            lessAlkalinity = open.endlessPoint();
        }
    }

    private static Ion alternative(Ion carrier) {
        if (carrier.chargeNumber() < 0) {
            return carrier.equals(Ion.SULFATE) ? Ion.CHLORIDE : Ion.SULFATE;
        }
        return carrier.equals(Ion.POTASSIUM) ? Ion.SODIUM : Ion.POTASSIUM;
    }

    /** The water at given positions of the open points. */
    private Water water(double[] at) {
        Water bare = bare(at);
        double unmeasured = charge(bare);
        Ion ion = (unmeasured < 0 ? assumed.anion() : assumed.cation()).orElse(null);
        if (ion == null || unmeasured == 0 || (carriedSign * unmeasured < 0 && isBeyond(at))) {
            return bare;
        }
        double toOther = carrier == null ? 0 : carrier.at(at);
        WaterBuilder builder = withoutAlkalinity(at);
        add(builder, bare, ion, unmeasured * (1 - toOther));
        add(builder, bare, alternative(ion), unmeasured * toOther);
        // closing by alkalinity leaves no charge at all; the alkalinity comes out as it was, give or take a rounding
        return builder.unmeasuredCharge(EquivalentConcentration.of(0, MILLIEQUIVALENT_PER_LITRE))
                .build();
    }

    /** Whether some of what nobody measured is put in; then its surplus is no reason to add to a carrier of the other sign. */
    private boolean isBeyond(double[] at) {
        return more.values().stream().anyMatch(point -> point.at(at) > 0)
                || at(moreAlkalinity, at) > 0
                || at(lessAlkalinity, at) > 0;
    }

    private static double at(OpenPoints.@Nullable Point point, double[] at) {
        return point == null ? 0 : point.at(at);
    }

    private static double charge(Water water) {
        return water.unmeasuredCharge().in(MILLIEQUIVALENT_PER_LITRE);
    }

    /** Adds so much of an ion that it carries a charge in meq/L. */
    private static void add(WaterBuilder builder, Water bare, Ion ion, double charge) {
        double millimoles = bare.total(ion).in(MILLIMOLE_PER_LITRE) + charge / ion.chargeNumber();
        builder.total(ion, AmountConcentration.of(millimoles, MILLIMOLE_PER_LITRE));
    }

    private Water bare(double[] at) {
        WaterBuilder builder = withoutAlkalinity(at);
        double rest = builder.build().alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE);
        double guess = alkalinity != null
                ? alkalinity.at(at)
                : Math.max(0, rest) * Objects.requireNonNull(closing).at(at);
        double stated = guess + at(moreAlkalinity, at) - at(lessAlkalinity, at);
        return builder.alkalinity(Alkalinity.of(stated, Alkalinity.MILLIEQUIVALENT_PER_LITRE))
                .build();
    }

    private WaterBuilder withoutAlkalinity(double[] at) {
        WaterBuilder builder = Water.builder();
        totals.forEach((ion, amount) -> builder.total(ion, AmountConcentration.of(amount.at(at), MILLIMOLE_PER_LITRE)));
        more.forEach((ion, point) -> {
            if (point.at(at) > 0) {
                builder.total(ion, AmountConcentration.of(point.at(at), MILLIMOLE_PER_LITRE));
            }
        });
        Entry temperature = report.entry(Kind.TEMPERATURE);
        if (temperature != null) {
            builder.temperature(WaterUnits.temperature(temperature.high(), WaterUnits.KELVIN));
        }
        if (pH != null) {
            builder.measuredPH(pH.at(at));
        }
        return builder;
    }
}
