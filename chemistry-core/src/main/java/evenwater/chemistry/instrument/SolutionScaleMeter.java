package evenwater.chemistry.instrument;

import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;
import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;

import evenwater.chemistry.kernel.MonotoneInverse;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;

/**
 * A dissolved-solids meter with the scale of a reference solution: it shows the mg/L at which that solution has the conductivity of the
 * water.
 *
 * <p>So its factor grows with the concentration, as the conductivity of a salt for each mg/L falls.
 *
 * <p>Immutable and thread-safe.
 */
public final class SolutionScaleMeter implements DissolvedSolidsMeter {

    /** What a conversion of units may add to an end of the scale, as a share of it. */
    private static final double ROUNDING = 1e-12;

    /** Where such scales end, in mg/L; an ionic strength of 0.2 mol/L at most. */
    private static final double USUAL_END = 10_000;

    private final ReferenceSolution solution;
    private final SolutionConductivity law;
    private final double endInMilligramsPerLitre;
    private final double startInMicrosiemens;
    private final double endInMicrosiemens;

    private SolutionScaleMeter(ReferenceSolution solution, double endInMilligramsPerLitre, SolutionConductivity law) {
        this.solution = solution;
        this.law = law;
        this.endInMilligramsPerLitre = endInMilligramsPerLitre;
        this.startInMicrosiemens = law.microsiemensPerCentimetre(0);
        this.endInMicrosiemens = law.microsiemensPerCentimetre(endInMilligramsPerLitre);
    }

    /**
     * Returns a meter with the scale of a solution up to 10 g/L, whose conductivity is {@linkplain CalculatedConductivity calculated}.
     *
     * @param solution what the scale is named after
     * @return the meter
     */
    public static SolutionScaleMeter of(ReferenceSolution solution) {
        Objects.requireNonNull(solution, "solution");
        return of(
                solution,
                MassConcentration.of(USUAL_END, MILLIGRAM_PER_LITRE),
                milligrams -> CalculatedConductivity.at25Celsius(
                                solution.water(MassConcentration.of(milligrams, MILLIGRAM_PER_LITRE)))
                        .in(MICROSIEMENS_PER_CENTIMETRE));
    }

    /**
     * Returns a meter for a solution and the law of its conductivity.
     *
     * @param solution what the scale is named after
     * @param end concentration where the scale ends, as far as the law holds; above 0
     * @param law conductivity of the solution at 25 °C; continuous and rising from 0 mg/L to the end
     */
    static SolutionScaleMeter of(
            ReferenceSolution solution, Quantity<MassConcentration> end, SolutionConductivity law) {
        Objects.requireNonNull(solution, "solution");
        Objects.requireNonNull(law, "law");
        MassConcentration stated = MassConcentration.from(Objects.requireNonNull(end, "end"));
        double milligrams = stated.in(MILLIGRAM_PER_LITRE);
        if (!(milligrams > 0)) {
            throw new IllegalArgumentException("end of the scale must be above 0 mg/L, but was " + stated);
        }
        SolutionScaleMeter meter = new SolutionScaleMeter(solution, milligrams, law);
        if (!(meter.startInMicrosiemens >= 0
                && meter.endInMicrosiemens > meter.startInMicrosiemens
                && meter.endInMicrosiemens <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("conductivity of " + solution
                    + " must rise with its concentration, but was " + meter.startInMicrosiemens
                    + " µS/cm at 0 mg/L and " + meter.endInMicrosiemens + " µS/cm at " + stated);
        }
        return meter;
    }

    /**
     * Returns the solution whose scale this is.
     *
     * @return the reference solution
     */
    public ReferenceSolution solution() {
        return solution;
    }

    @Override
    public MassConcentration reading(Quantity<Conductivity> at25Celsius) {
        Conductivity stated = Checked.conductivity(at25Celsius, "at25Celsius");
        double microsiemens = stated.in(MICROSIEMENS_PER_CENTIMETRE);
        if (microsiemens < startInMicrosiemens * (1 - ROUNDING)) {
            Conductivity start = Conductivity.of(startInMicrosiemens, MICROSIEMENS_PER_CENTIMETRE);
            throw new NoAnswerException(
                    "conductivity " + stated + " is below the " + start.toText(Locale.ROOT, 4)
                            + " of pure water, where the scale of " + solution + " starts",
                    stated,
                    start);
        }
        if (microsiemens > endInMicrosiemens * (1 + ROUNDING)) {
            Conductivity end = Conductivity.of(endInMicrosiemens, MICROSIEMENS_PER_CENTIMETRE);
            throw new NoAnswerException(
                    "conductivity " + stated + " is above the " + end.toText(Locale.ROOT, 4) + " of " + end()
                            + ", where the scale of " + solution + " ends",
                    stated,
                    end,
                    end());
        }
        double milligrams =
                MonotoneInverse.of(law::microsiemensPerCentimetre, 0, endInMilligramsPerLitre, microsiemens);
        return MassConcentration.of(milligrams, MILLIGRAM_PER_LITRE);
    }

    @Override
    public Conductivity conductivity(Quantity<MassConcentration> reading) {
        MassConcentration stated = Checked.reading(reading);
        double milligrams = stated.in(MILLIGRAM_PER_LITRE);
        if (milligrams > endInMilligramsPerLitre * (1 + ROUNDING)) {
            throw new NoAnswerException(
                    "reading " + stated + " is above the " + end() + " where the scale of " + solution + " ends",
                    stated,
                    end());
        }
        return Conductivity.of(
                law.microsiemensPerCentimetre(Math.min(endInMilligramsPerLitre, milligrams)),
                MICROSIEMENS_PER_CENTIMETRE);
    }

    private MassConcentration end() {
        return MassConcentration.of(endInMilligramsPerLitre, MILLIGRAM_PER_LITRE);
    }

    @Override
    public String scale() {
        return solution + " scale";
    }

    /** Returns the meter, such as {@code dissolved-solids meter, sodium chloride scale}. */
    @Override
    public String toString() {
        return "dissolved-solids meter, " + scale();
    }
}
