package evenwater.chemistry.treatment;

import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;
import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;

import evenwater.chemistry.equilibrium.Mineral;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.instrument.CalculatedConductivity;
import evenwater.chemistry.instrument.DissolvedSolidsMeter;
import evenwater.chemistry.instrument.FactorMeter;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What follows from a water of a ledger: its pH, carbon dioxide and saturation, its conductivity and what a meter shows.
 *
 * <p>A ledger holds what is conserved; all of this is solved anew from it. Where it has no answer, it is empty and {@link #whyUnknown} says
 * why. Immutable and thread-safe.
 */
public final class WaterCondition {

    private final @Nullable Speciation speciation;
    private final @Nullable Conductivity conductivity;
    private final String whyUnknown;

    private WaterCondition(@Nullable Speciation speciation, @Nullable Conductivity conductivity, String whyUnknown) {
        this.speciation = speciation;
        this.conductivity = conductivity;
        this.whyUnknown = whyUnknown;
    }

    /**
     * Returns the condition of a water.
     *
     * @param water any water
     * @return its condition
     */
    public static WaterCondition of(Water water) {
        Objects.requireNonNull(water, "water");
        Speciation speciation = null;
        Conductivity conductivity = null;
        String why = "";
        try {
            speciation = Speciation.of(water);
        } catch (NoAnswerException | IllegalArgumentException e) {
            why = String.valueOf(e.getMessage());
        }
        try {
            conductivity = CalculatedConductivity.at25Celsius(speciation == null ? water : speciation.water());
        } catch (NoAnswerException | IllegalArgumentException e) {
            why = String.valueOf(e.getMessage());
        }
        return new WaterCondition(speciation, conductivity, why);
    }

    /**
     * Returns the species, from which everything else of this kind follows.
     *
     * @return the speciation at the temperature of the water; empty if its pH is unknown
     */
    public Optional<Speciation> speciation() {
        return Optional.ofNullable(speciation);
    }

    /**
     * Returns the pH at the temperature of the water.
     *
     * @return no unit; empty if unknown
     */
    public OptionalDouble pH() {
        return speciation == null ? OptionalDouble.empty() : OptionalDouble.of(speciation.pH());
    }

    /**
     * Returns the dissolved carbon dioxide.
     *
     * @return CO₂ in mg/L; empty if unknown
     */
    public Optional<AmountConcentration> carbonDioxide() {
        return speciation().map(species -> species.carbonDioxide().to(Ion.CARBON_DIOXIDE.milligramPerLitre()));
    }

    /**
     * Returns the saturation index of calcite.
     *
     * @return no unit; negative where calcite dissolves; empty if unknown or without calcium or carbonate
     */
    public OptionalDouble calciteIndex() {
        return speciation == null ? OptionalDouble.empty() : speciation.saturationIndex(Mineral.CALCITE);
    }

    /**
     * Returns the calculated conductivity at 25 °C.
     *
     * @return κ in µS/cm; empty if it cannot be calculated
     */
    public Optional<Conductivity> conductivity() {
        return Optional.ofNullable(conductivity);
    }

    /**
     * Returns what a dissolved-solids meter shows.
     *
     * @param meter with its scale
     * @return mg/L, which the meter shows as ppm; empty if the conductivity cannot be calculated or is off the scale
     */
    public Optional<MassConcentration> reading(DissolvedSolidsMeter meter) {
        Objects.requireNonNull(meter, "meter");
        try {
            return conductivity().map(meter::reading);
        } catch (NoAnswerException offTheScale) {
            return Optional.empty();
        }
    }

    /**
     * Returns why something is unknown.
     *
     * @return the reason in words; empty text if nothing is
     */
    public String whyUnknown() {
        return whyUnknown;
    }

    /** Returns what is known, rounded for people; the meter is one of factor 0.5. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        pH().ifPresentOrElse(
                        pH -> text.append(String.format(Locale.ROOT, "pH %.2f", pH)), () -> text.append("pH unknown"));
        carbonDioxide().ifPresent(co2 -> text.append(", ").append(co2.toText(Locale.ROOT, 3)));
        calciteIndex()
                .ifPresent(index -> text.append(String.format(Locale.ROOT, ", calcite index %+.2f", index + 0.0)));
        conductivity()
                .ifPresent(k -> text.append(String.format(
                        Locale.ROOT,
                        ", %.0f µS/cm at 25 °C (%.0f ppm on a meter of %s)",
                        k.in(MICROSIEMENS_PER_CENTIMETRE),
                        FactorMeter.SCALE_500.reading(k).in(MILLIGRAM_PER_LITRE),
                        FactorMeter.SCALE_500.scale())));
        return text.toString();
    }
}
