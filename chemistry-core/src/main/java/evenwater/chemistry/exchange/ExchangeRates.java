package evenwater.chemistry.exchange;

import evenwater.chemistry.quantity.WaterUnits;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * How fast ions pass between water and resin: two linear driving forces in series, the same for all ions.
 *
 * <p>{@code ∂q/∂t = film · (c − c*) = solid · (q* − q)}, with q in eq per litre of bed, c in eq per litre of water, and c*, q* in equilibrium at the surface of the
 * bead (E. Glueckauf 1955, from memory). The film gets thinner as the water gets faster: its rate goes with the square root of the flow (J. J. Carberry 1960,
 * from memory); strictly of its speed, so that a flow in bed volumes per hour stands for a bed of some 0.75 m.
 *
 * @param filmPerHour rate through the film of water around a bead at 16 bed volumes per hour, in 1/h; above 0, infinite for no resistance
 * @param solidPerHour rate inside the bead, in 1/h; likewise
 */
public record ExchangeRates(double filmPerHour, double solidPerHour) {

    /** Water and resin are in equilibrium in every slice of the bed: the best that an infinitely slow flow would give. */
    public static final ExchangeRates LOCAL_EQUILIBRIUM =
            new ExchangeRates(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

    /**
     * Rates for beads of 0.6 mm, calibrated: chosen so that a bed of 100 slices gives the trade's 20, 27 and 30 kilograins per cubic foot at 6, 10 and 15 lb
     * of salt, co-flow, at 16 bed volumes per hour, with 10 grains per gallon of hardness (calcium to magnesium 2 : 1), 4 mmol/L of sodium and 1 gpg as end
     * point. It gives 20.1, 26.7 and 30.9, and 14.9 at 4 lb, where the trade has 16 to 17. The rate in the bead is 15 D/r² with D = 3.3 × 10⁻¹¹ m²/s, a
     * diffusivity such as measured ones are; the rate through the film is six to eight times lower than that of an ideal packing (Carberry, in a bed of 0.75 m), and
     * stands for uneven flow, spread of bead sizes and mixing as well.
     */
    public static final ExchangeRates CALIBRATED = new ExchangeRates(150, 20);

    private static final double CALIBRATED_BEAD_IN_MILLIMETRES = 0.6;
    private static final double FILM_EXPONENT = 1.5;
    private static final double STATED_FLOW_IN_BED_VOLUMES_PER_HOUR = 16;

    /**
     * Checks the rates.
     *
     * @param filmPerHour see the record
     * @param solidPerHour see the record
     */
    public ExchangeRates {
        if (!(filmPerHour > 0 && solidPerHour > 0)) {
            throw new IllegalArgumentException("rates of exchange must be positive, but were " + filmPerHour
                    + " 1/h in the film and " + solidPerHour + " 1/h in the bead");
        }
    }

    /**
     * Returns the calibrated rates for beads of another size: the film goes with d^(−3/2), the bead with d⁻².
     *
     * @param diameter of the beads; above 0
     * @return the rates
     * @throws IllegalArgumentException if the diameter is not positive, or so far off that a rate is no number
     */
    public static ExchangeRates ofBead(Quantity<Length> diameter) {
        double relative = WaterUnits.length(diameter).in(WaterUnits.MILLIMETRE) / CALIBRATED_BEAD_IN_MILLIMETRES;
        if (!(relative > 0)) {
            throw new IllegalArgumentException("diameter of the beads must be positive, but was " + diameter);
        }
        return new ExchangeRates(
                CALIBRATED.filmPerHour / Math.pow(relative, FILM_EXPONENT),
                CALIBRATED.solidPerHour / (relative * relative));
    }

    /** Rate through the film at a flow in bed volumes per hour. */
    double filmPerHourAt(double bedVolumesPerHour) {
        return filmPerHour * Math.sqrt(bedVolumesPerHour / STATED_FLOW_IN_BED_VOLUMES_PER_HOUR);
    }
}
