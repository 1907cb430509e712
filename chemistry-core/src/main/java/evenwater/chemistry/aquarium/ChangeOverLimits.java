package evenwater.chemistry.aquarium;

import static evenwater.chemistry.quantity.Alkalinity.DEGREE_OF_CARBONATE_HARDNESS;
import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;
import static evenwater.chemistry.quantity.Hardness.GERMAN_DEGREE;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;

/**
 * How much the readings of a tank may move in a day, up or down.
 *
 * <p>The figures are limits to plan by: common practice, no source. What animals stand depends on the species, their health and on what they came
 * from; a pH that moves by CO₂ alone harms less than one that moves with the salts. Immutable and thread-safe.
 */
public final class ChangeOverLimits {

    /** A move that is this little over a limit is at the limit. */
    private static final double ROUNDING = 1e-9;

    private final double pH;
    private final Hardness hardness;
    private final Alkalinity alkalinity;
    private final double conductivityShare;

    private ChangeOverLimits(double pH, Hardness hardness, Alkalinity alkalinity, double conductivityShare) {
        this.pH = pH;
        this.hardness = hardness;
        this.alkalinity = alkalinity;
        this.conductivityShare = conductivityShare;
    }

    /**
     * Returns limits for sensitive animals: pH 0.3, 1 °dH, 1 °dKH and 10 % of the conductivity in a day (common practice, no source).
     *
     * @return the limits
     */
    public static ChangeOverLimits sensitive() {
        return new ChangeOverLimits(
                0.3, Hardness.of(1, GERMAN_DEGREE), Alkalinity.of(1, DEGREE_OF_CARBONATE_HARDNESS), 0.1);
    }

    /**
     * Returns the most that is advised for any: pH 0.5, 2 °dH, 2 °dKH and 15 % of the conductivity in a day (common practice, no source).
     *
     * @return the limits
     */
    public static ChangeOverLimits hardy() {
        return new ChangeOverLimits(
                0.5, Hardness.of(2, GERMAN_DEGREE), Alkalinity.of(2, DEGREE_OF_CARBONATE_HARDNESS), 0.15);
    }

    /**
     * Returns the limits with another one for pH.
     *
     * @param newPH move in a day; no unit, 0 to 14
     * @return the limits
     * @throws IllegalArgumentException if it is out of range
     */
    public ChangeOverLimits withPH(double newPH) {
        if (!(newPH >= 0 && newPH <= 14)) {
            throw new IllegalArgumentException("limit of pH in a day must be from 0 to 14, but was " + newPH);
        }
        return new ChangeOverLimits(newPH, hardness, alkalinity, conductivityShare);
    }

    /**
     * Returns the limits with another one for hardness.
     *
     * @param newHardness move in a day; 0 or more
     * @return the limits
     * @throws IllegalArgumentException if it is negative
     */
    public ChangeOverLimits withHardness(Quantity<Hardness> newHardness) {
        Hardness stated = Hardness.from(Objects.requireNonNull(newHardness, "newHardness"));
        if (stated.getValue() < 0) {
            throw new IllegalArgumentException("limit of hardness in a day must not be negative, but was " + stated);
        }
        return new ChangeOverLimits(pH, stated, alkalinity, conductivityShare);
    }

    /**
     * Returns the limits with another one for alkalinity.
     *
     * @param newAlkalinity move in a day; 0 or more
     * @return the limits
     * @throws IllegalArgumentException if it is negative
     */
    public ChangeOverLimits withAlkalinity(Quantity<Alkalinity> newAlkalinity) {
        Alkalinity stated = Alkalinity.from(Objects.requireNonNull(newAlkalinity, "newAlkalinity"));
        if (stated.getValue() < 0) {
            throw new IllegalArgumentException("limit of alkalinity in a day must not be negative, but was " + stated);
        }
        return new ChangeOverLimits(pH, hardness, stated, conductivityShare);
    }

    /**
     * Returns the limits with another one for conductivity.
     *
     * @param share of what it was before, in a day; no unit, 0 to 1000
     * @return the limits
     * @throws IllegalArgumentException if it is out of range
     */
    public ChangeOverLimits withConductivityShare(double share) {
        if (!(share >= 0 && share <= 1000)) {
            throw new IllegalArgumentException(
                    "limit of conductivity in a day must be a share from 0 to 1000, but was " + share);
        }
        return new ChangeOverLimits(pH, hardness, alkalinity, share);
    }

    /**
     * Returns how much of the limits a move takes: that of the figure which comes nearest to its limit or exceeds it most.
     *
     * @param before readings before
     * @param after readings on the same day
     * @return no unit; 1 at a limit, above 1 where the move is too fast; infinity where something moves that must not
     */
    public double usedBy(TankReading before, TankReading after) {
        double most = 0;
        for (Move move : moves(before, after)) {
            most = Math.max(most, move.used());
        }
        return most;
    }

    /**
     * Returns by which limits a move is too fast.
     *
     * @param before readings before
     * @param after readings on the same day
     * @return a sentence without a final dot for each limit that is exceeded; none if the move keeps to all
     */
    public List<String> excesses(TankReading before, TankReading after) {
        List<String> excesses = new ArrayList<>();
        for (Move move : moves(before, after)) {
            if (move.used() > 1 + ROUNDING) {
                excesses.add(move.text());
            }
        }
        return List.copyOf(excesses);
    }

    private List<Move> moves(TankReading before, TankReading after) {
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
        double conductivity = before.conductivity().in(MICROSIEMENS_PER_CENTIMETRE);
        return List.of(
                new Move("hardness", degrees(before.hardness()), degrees(after.hardness()), degrees(hardness), " °dH"),
                new Move(
                        "alkalinity",
                        degrees(before.alkalinity()),
                        degrees(after.alkalinity()),
                        degrees(alkalinity),
                        " °dKH"),
                new Move(
                        "conductivity",
                        conductivity,
                        after.conductivity().in(MICROSIEMENS_PER_CENTIMETRE),
                        conductivityShare * conductivity,
                        " µS/cm"),
                new Move("pH", before.pH(), after.pH(), pH, ""));
    }

    private static double degrees(Hardness hardness) {
        return hardness.in(GERMAN_DEGREE);
    }

    private static double degrees(Alkalinity alkalinity) {
        return alkalinity.in(DEGREE_OF_CARBONATE_HARDNESS);
    }

    /** One figure on its way; the limit in the same unit. */
    private record Move(String what, double before, double after, double limit, String unit) {

        double used() {
            double move = Math.abs(after - before);
            if (move <= ROUNDING * Math.abs(before)) {
                return 0; // so that what stays may be forbidden to move
            }
            return move / limit;
        }

        String text() {
            return what + (after < before ? " falls by " : " rises by ") + rounded(Math.abs(after - before), 3) + unit
                    + ", from " + rounded(before, 4) + " to " + rounded(after, 4) + ": at most " + rounded(limit, 3)
                    + " in a day";
        }

        private static String rounded(double number, int digits) {
            return WaterUnits.share(number, WaterUnits.ONE).toText(Locale.ROOT, digits);
        }
    }

    /** Returns the limits of a day, for logs. */
    @Override
    public String toString() {
        return "at most pH " + pH + ", " + hardness + ", " + alkalinity + " and a share of " + conductivityShare
                + " of the conductivity in a day";
    }
}
