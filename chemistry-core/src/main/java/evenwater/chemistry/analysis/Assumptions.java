package evenwater.chemistry.analysis;

import evenwater.chemistry.substance.Ion;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What to assume where nothing was measured.
 *
 * <p>Each assumption that is used is listed in the {@link Interpretation}, and the range that it opens goes into its bounds.
 * Immutable and thread-safe.
 */
public final class Assumptions {

    private final CalciumToMagnesium calciumToMagnesium;
    private final @Nullable Ion anion;
    private final @Nullable Ion cation;

    private Assumptions(CalciumToMagnesium calciumToMagnesium, @Nullable Ion anion, @Nullable Ion cation) {
        this.calciumToMagnesium = calciumToMagnesium;
        this.anion = anion;
        this.cation = cation;
    }

    /**
     * Returns the usual assumptions: calcium to magnesium 3 : 1 by amount where only their sum is known (common practice, no
     * source), and unmeasured charge left as such.
     *
     * @return the assumptions
     */
    public static Assumptions usual() {
        return new Assumptions(CalciumToMagnesium.byAmount(3), null, null);
    }

    /**
     * Says how a hardness is shared where nothing else tells.
     *
     * @param ratio calcium to magnesium, by amount or by mass
     * @return the assumptions
     */
    public Assumptions with(CalciumToMagnesium ratio) {
        return new Assumptions(Objects.requireNonNull(ratio, "ratio"), anion, cation);
    }

    /**
     * Says which ions carry the charge that nobody measured, as a test kit leaves it open.
     *
     * <p>Leaving it out makes a calculated conductivity too low, by 30 to 40 % in ordinary tap water (not verified here). Use it where chloride, sulfate, sodium or potassium were not
     * measured at all, not to hide the imbalance of a full analysis.
     *
     * @param missingAnion carrier of missing negative charge, such as Cl⁻
     * @param missingCation carrier of missing positive charge, such as Na⁺
     * @return the assumptions
     * @throws IllegalArgumentException if an ion has not the charge, or is counted in another form
     */
    public Assumptions carrying(Ion missingAnion, Ion missingCation) {
        Objects.requireNonNull(missingAnion, "missingAnion");
        Objects.requireNonNull(missingCation, "missingCation");
        if (missingAnion.chargeNumber() >= 0 || !missingAnion.isReferenceForm()) {
            throw new IllegalArgumentException(
                    "carrier of missing anions must be an anion such as Cl⁻, but was " + missingAnion);
        }
        if (missingCation.chargeNumber() <= 0 || !missingCation.isReferenceForm()) {
            throw new IllegalArgumentException(
                    "carrier of missing cations must be a cation such as Na⁺, but was " + missingCation);
        }
        return new Assumptions(calciumToMagnesium, missingAnion, missingCation);
    }

    CalciumToMagnesium calciumToMagnesium() {
        return calciumToMagnesium;
    }

    Optional<Ion> anion() {
        return Optional.ofNullable(anion);
    }

    Optional<Ion> cation() {
        return Optional.ofNullable(cation);
    }
}
