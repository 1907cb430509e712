package evenwater.chemistry.treatment;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.equilibrium.Mineral;
import evenwater.chemistry.equilibrium.MineralEquilibrium;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.kernel.MonotoneInverse;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

/**
 * An acid neutralizer: a filter of calcite, possibly with magnesia, that soft acid water dissolves on its way, closed to the air.
 *
 * <p>Calcite {@code CaCO₃ + CO₂ + H₂O → Ca²⁺ + 2 HCO₃⁻} and magnesia {@code MgO + 2 CO₂ + H₂O → Mg²⁺ + 2 HCO₃⁻} raise hardness and
 * alkalinity together. How much dissolves is set by the CO₂ of the raw water, and so by its pH at the well: a bottle that stood open has lost
 * CO₂, shows a higher pH and promises far too little hardness. Use a pH that was measured at the tap, at once.
 *
 * <p>Magnesia goes on dissolving where calcite is saturated: too much of it ends above pH 9, and water that stands in the bed above
 * pH 10. Whether a
 * filter reaches saturation depends on its contact time; a softener behind it must be set to the hardness behind the filter, not of
 * the well. {@link #warnings} says all this of a water with its figures, {@link #sensitivityToPH(Water)} what hangs on the pH, and
 * {@link #standing} where water ends that stood in the bed.
 *
 * <p>Immutable and thread-safe.
 */
public final class Neutralizer implements Treatment {

    /** Beyond any filter, in mmol/L of what dissolves. */
    private static final double MOST = 100;

    /** Stands for the index of a water that has no calcium or no carbonate yet. */
    private static final double FAR_BELOW = -1000;

    /** What a meter or a kit in the field may be off, as a pH. */
    private static final double FIELD_UNCERTAINTY = 0.3;

    /** Above this pH a filter overshoots. */
    private static final double HIGH_PH = 9;

    private final double magnesia;
    private final double share;
    /** The measured pH behind the filter, or NaN. */
    private final double outletPH;

    private Neutralizer(double magnesia, double share, double outletPH) {
        this.magnesia = magnesia;
        this.share = share;
        this.outletPH = outletPH;
    }

    /**
     * Returns a filter of calcite that saturates the water.
     *
     * @return the filter
     */
    public static Neutralizer withCalcite() {
        return new Neutralizer(0, 1, Double.NaN);
    }

    /**
     * Returns the filter with magnesia among the calcite.
     *
     * @param shareOfMoles MgO in what dissolves, by moles; no unit, 0 to 1; common mixtures are 0.1 to 0.5 by mass of the filling (common
     *     practice, no source)
     * @return the filter
     * @throws IllegalArgumentException if the share is out of range
     */
    public Neutralizer withMagnesia(double shareOfMoles) {
        requireShare("magnesia", shareOfMoles);
        return new Neutralizer(shareOfMoles, share, outletPH);
    }

    /**
     * Returns the filter with too little contact to saturate the water.
     *
     * @param shareOfSaturation of what saturation with calcite would dissolve; no unit, 0 to 1
     * @return the filter
     * @throws IllegalArgumentException if the share is out of range
     */
    public Neutralizer reaching(double shareOfSaturation) {
        requireShare("saturation", shareOfSaturation);
        return new Neutralizer(magnesia, shareOfSaturation, Double.NaN);
    }

    /**
     * Returns the filter as its outlet was measured.
     *
     * <p>Beyond saturation with calcite only magnesia goes on dissolving: a filter of calcite alone reaches no higher pH.
     *
     * @param pH behind the filter; no unit, 4 to 11; above that of the raw water
     * @return the filter, which dissolves as much as that takes
     * @throws IllegalArgumentException if it is out of range
     */
    public Neutralizer toPH(double pH) {
        if (!(pH >= 4 && pH <= 11)) {
            throw new IllegalArgumentException("pH behind a neutralizer must be from 4 to 11, but was " + pH);
        }
        return new Neutralizer(magnesia, 1, pH);
    }

    private static void requireShare(String of, double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("share of " + of + " must be from 0 to 1, but was " + share);
        }
    }

    /**
     * Returns how much calcite and magnesia a water dissolves on its way through.
     *
     * @param source with its inorganic carbon or a measured pH, 0 to 50 °C
     * @return moles of both together, in mmol/L; 0 for a water that is saturated already
     * @throws NoAnswerException if the carbon of the water is unknown, or a stated pH cannot be reached
     */
    public AmountConcentration dissolved(Water source) {
        Change change = dissolving(
                Speciation.of(Objects.requireNonNull(source, "source")).water());
        return AmountConcentration.of(
                change.total(Ion.CALCIUM).in(MILLIMOLE_PER_LITRE)
                        + change.total(Ion.MAGNESIUM).in(MILLIMOLE_PER_LITRE),
                MILLIMOLE_PER_LITRE);
    }

    /** What goes in: the mixture first, and magnesia alone where calcite is saturated. */
    private Change dissolving(Water known) {
        double saturation = toSaturation(known);
        return Double.isNaN(outletPH) ? change(magnesia, share * saturation) : toOutletPH(known, saturation);
    }

    /** How much of the mixture saturates a water with calcite, in mmol/L. */
    private double toSaturation(Water known) {
        ToDoubleFunction<Water> index =
                water -> Speciation.of(water).saturationIndex(Mineral.CALCITE).orElse(FAR_BELOW);
        return index.applyAsDouble(known) >= 0 ? 0 : until(known, magnesia, 0, index, "saturation with calcite");
    }

    private Change toOutletPH(Water known, double saturation) {
        ToDoubleFunction<Water> acidity = water -> Speciation.of(water).pH();
        double raw = acidity.applyAsDouble(known);
        if (raw > outletPH) {
            throw new NoAnswerException("a neutralizer raises the pH: from " + rounded(raw)
                    + " of the raw water it cannot lead to " + outletPH);
        }
        Change toSaturation = change(magnesia, saturation);
        Water saturated = known.plus(toSaturation);
        double highest = acidity.applyAsDouble(saturated);
        if (highest >= outletPH) {
            return change(
                    magnesia,
                    MonotoneInverse.of(
                            x -> acidity.applyAsDouble(known.plus(change(magnesia, x))), 0, saturation, outletPH));
        }
        if (magnesia == 0) {
            throw new NoAnswerException("calcite alone leads this water to pH " + Math.rint(highest * 1000) / 1000
                    + " at most, where it is saturated; a measured " + outletPH
                    + " comes from something else, such as magnesia");
        }
        return toSaturation.plus(change(1, until(saturated, 1, outletPH, acidity, "pH " + outletPH)));
    }

    private static double rounded(double pH) {
        return Math.rint(pH * 100) / 100;
    }

    private static double until(
            Water known, double magnesia, double wanted, ToDoubleFunction<Water> rising, String what) {
        double low = 0;
        double high = 1e-3;
        while (rising.applyAsDouble(known.plus(change(magnesia, high))) < wanted) {
            low = high;
            high *= 2;
            if (high > MOST) {
                throw new NoAnswerException(
                        "this filter cannot lead to " + what + ": " + MOST + " mmol/L of it are not enough");
            }
        }
        return MonotoneInverse.of(x -> rising.applyAsDouble(known.plus(change(magnesia, x))), low, high, wanted);
    }

    private static Change change(double magnesia, double millimoles) {
        double calcite = millimoles * (1 - magnesia);
        double oxide = millimoles * magnesia;
        return Change.of(Map.of(
                Ion.CALCIUM, AmountConcentration.of(calcite, MILLIMOLE_PER_LITRE),
                Ion.CARBONATE, AmountConcentration.of(calcite, MILLIMOLE_PER_LITRE),
                Ion.MAGNESIUM, AmountConcentration.of(oxide, MILLIMOLE_PER_LITRE),
                Ion.HYDROXIDE, AmountConcentration.of(2 * oxide, MILLIMOLE_PER_LITRE)));
    }

    @Override
    public Water treat(Water source) {
        Water known = Speciation.of(Objects.requireNonNull(source, "source")).water();
        return known.plus(dissolving(known));
    }

    /**
     * Returns the water that stood in the bed, as overnight, until nothing more dissolved.
     *
     * <p>It is saturated with calcite, whatever a filter in flow reaches, and then takes up magnesia alone until brucite, Mg(OH)₂, is saturated.
     * Calcite is not taken to drop again, which would end some 0.04 lower, with up to half of the hardness and alkalinity. How long that takes is left out: this is the end.
     *
     * @param source raw water, with its inorganic carbon or a measured pH, 0 to 50 °C
     * @return the water; without magnesia in the bed that of saturation with calcite
     * @throws NoAnswerException if the carbon of the water is unknown
     */
    public Water standing(Water source) {
        Water known = Speciation.of(Objects.requireNonNull(source, "source")).water();
        Water saturated = known.plus(change(magnesia, toSaturation(known)));
        double brucite =
                Speciation.of(saturated).saturationIndex(Mineral.BRUCITE).orElse(FAR_BELOW);
        return magnesia == 0 || brucite >= 0 ? saturated : MineralEquilibrium.saturated(saturated, Mineral.BRUCITE);
    }

    /**
     * Returns what this filter makes of a water if its pH is off by 0.3, as meters and kits are in the field (common practice, no source).
     *
     * @param source raw water, with its inorganic carbon or a measured pH, 0 to 50 °C
     * @return the results for the pH, and for one 0.3 lower and higher
     * @throws NoAnswerException as {@link #sensitivityToPH(Water, double)}
     */
    public FieldPHSensitivity sensitivityToPH(Water source) {
        return sensitivityToPH(source, FIELD_UNCERTAINTY);
    }

    /**
     * Returns what this filter makes of a water if its pH is off by so much, at the same alkalinity.
     *
     * @param source raw water, with its inorganic carbon or a measured pH, 0 to 50 °C
     * @param uncertainty how far the pH may be off either way; no unit; above 0, to 2
     * @return the results for the pH, and for one lower and higher
     * @throws IllegalArgumentException if the uncertainty is out of range
     * @throws NoAnswerException if the carbon of the water is unknown, or one of the three has no answer, such as an outlet pH that the filter
     *     cannot reach
     */
    public FieldPHSensitivity sensitivityToPH(Water source, double uncertainty) {
        return FieldPHSensitivity.of(this, source, uncertainty);
    }

    /**
     * Returns what a user of this filter must be told about a water.
     *
     * @param source raw water, with its inorganic carbon or a measured pH, 0 to 50 °C
     * @return sentences without a final dot: if the pH behind the filter is above 9; with magnesia, what a standing bed ends at; always, that
     *     the raw pH must be a field value, with what one 0.3 lower would mean
     * @throws NoAnswerException as {@link #treat}
     */
    public List<String> warnings(Water source) {
        Water known = Speciation.of(Objects.requireNonNull(source, "source")).water();
        List<String> warnings = new ArrayList<>();
        double outlet = Speciation.of(treat(known)).pH();
        if (outlet > HIGH_PH) {
            warnings.add("the water behind this filter has pH " + rounded(outlet) + ", above 9: " + whyHigh(known));
        }
        double standing =
                magnesia == 0 ? outlet : Speciation.of(standing(known)).pH();
        if (magnesia > 0 && standing > outlet) {
            warnings.add(
                    "water that stands in the bed goes on dissolving magnesia, in the end to pH " + rounded(standing)
                            + ", where brucite is saturated: let the first water after a standstill run off");
        }
        warnings.add("the pH of the raw water, " + rounded(Speciation.of(known).pH())
                + " here, must be a field value, read at the tap at once: a bottle that stood open has lost CO₂ and shows a higher one"
                + ifLower(known));
        return List.copyOf(warnings);
    }

    private String whyHigh(Water known) {
        double raw = Speciation.of(known).pH();
        if (raw > HIGH_PH) {
            return "the raw water has pH " + rounded(raw) + " and needs no neutralizer";
        }
        double ofCalcite = Speciation.of(new Neutralizer(0, share, Double.NaN).treat(known))
                .pH();
        return ofCalcite > HIGH_PH
                ? "calcite alone leads so soft a water with so little CO₂ to pH " + rounded(ofCalcite)
                        + "; less contact or a bypass ends lower"
                : "calcite alone would lead it to pH " + rounded(ofCalcite)
                        + "; take less magnesia, and let no water stand in the bed";
    }

    private String ifLower(Water known) {
        try {
            FieldPHSensitivity.Reading stated = FieldPHSensitivity.Reading.of(this, known, 0);
            FieldPHSensitivity.Reading lower = FieldPHSensitivity.Reading.of(this, known, -FIELD_UNCERTAINTY);
            if (lower.dissolved().equals(stated.dissolved())) {
                return ""; // saturated either way
            }
            return "; at pH " + rounded(lower.rawPH()) + " the filter dissolves "
                    + text(lower.dissolved()) + " instead of " + text(stated.dissolved())
                    + ", and a softener behind it adds " + text(lower.sodiumOfASoftener()) + " instead of "
                    + text(stated.sodiumOfASoftener());
        } catch (NoAnswerException unreachable) {
            return "; at a pH 0.3 lower this filter could not do what it was set to";
        }
    }

    private static String text(AmountConcentration amount) {
        return amount.toText(Locale.ROOT, 2);
    }

    @Override
    public String name() {
        String filling = magnesia == 0 ? "calcite" : "calcite and " + ReverseOsmosis.percent(magnesia) + " magnesia";
        String goal = !Double.isNaN(outletPH)
                ? ", to pH " + outletPH
                : share == 1 ? "" : ", " + ReverseOsmosis.percent(share) + " of saturation";
        return "neutralizer with " + filling + goal;
    }

    /** Returns the name. */
    @Override
    public String toString() {
        return name();
    }
}
