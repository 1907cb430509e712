package evenwater.chemistry.water;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;
import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;

/**
 * A water as a balance sheet: what treatment conserves, per litre.
 *
 * <p>It holds the total amount of each ion in its reference form (see {@link Ion}), the titration alkalinity, the total inorganic
 * carbon or a measured pH where they are known, and the temperature. All of these mix linearly. Hardness, ion balance, ionic strength
 * and dissolved solids are computed from them when asked, never stored beside them.
 *
 * <p><b>Charge in double entry.</b> {@code alkalinity = Σ charge × total + unmeasured charge}. The unmeasured charge is what a
 * laboratory's ions lack to balance: it stays visible, is conserved, and is never poured into one ion. Chemical changes leave it
 * bit for bit; blending and diluting scale it with the water.
 *
 * <p>A stated pH is a reading: the first change or blend drops it, since pH is not conserved. Amounts are per litre of water; the
 * small change of volume by dissolving salts is neglected.
 *
 * <p>Equal waters hold the same amounts; an ion that is absent and one of amount 0 are the same. Immutable and thread-safe.
 */
public final class Water {

    /** Temperature of a water that states none: 25 °C, at which laboratories report. */
    static final double DEFAULT_KELVIN = 298.15;

    private final Balance balance;
    private final double kelvin;
    /** The reading, or NaN. */
    private final double pH;

    Water(Balance balance, double kelvin, double pH) {
        this.balance = balance;
        this.kelvin = kelvin;
        this.pH = pH;
    }

    /**
     * Returns water with nothing in it, at 25 °C.
     *
     * @return pure water: no ions, alkalinity 0, inorganic carbon 0
     */
    public static Water pure() {
        return builder().carbon(AmountConcentration.of(0, MILLIMOLE_PER_LITRE)).build();
    }

    /**
     * Returns a builder for a water from its parts.
     *
     * @return an empty builder
     */
    public static WaterBuilder builder() {
        return new WaterBuilder();
    }

    /**
     * Reads the plain form that {@link #toPlain} writes.
     *
     * @param plain of {@link PlainWater#VERSION}
     * @return the water, equal to the one that was written
     * @throws IllegalArgumentException if something is missing, not finite, out of range, unknown or of a newer version, or if the charges do not add up
     *     to 1e-9 meq/L and 1e-9 of all charges; names it
     */
    public static Water from(PlainWater plain) {
        return PlainForm.read(Objects.requireNonNull(plain, "plain"));
    }

    /**
     * Returns the total amount of an ion, all its forms together.
     *
     * @param ion a reference form, such as Ca²⁺, NH₄⁺ for all ammonia, H₂PO₄⁻ for all phosphate
     * @return the amount in mmol/L; 0 or more; 0 if the ion is not there
     * @throws IllegalArgumentException if the ion is counted in another form, or in {@link #carbon} or {@link #alkalinity}
     */
    public AmountConcentration total(Ion ion) {
        Counting.refuseUncounted(ion);
        return AmountConcentration.of(balance.total(ion), MILLIMOLE_PER_LITRE);
    }

    /**
     * Returns the ions that are present.
     *
     * @return reference forms with an amount above 0, in the order of the ions
     */
    public List<Ion> ions() {
        List<Ion> present = new ArrayList<>(balance.ions().length);
        for (int i = 0; i < balance.ions().length; i++) {
            if (balance.at(i) > 0) {
                present.add(balance.ions()[i]);
            }
        }
        return Collections.unmodifiableList(present);
    }

    /**
     * Returns the titration alkalinity.
     *
     * @return alkalinity in meq/L; negative where there is mineral acid
     */
    public Alkalinity alkalinity() {
        return Alkalinity.of(balance.alkalinity, Alkalinity.MILLIEQUIVALENT_PER_LITRE);
    }

    /**
     * Returns the charge that nobody measured: {@code alkalinity − Σ charge × total}.
     *
     * @return unmeasured charge in meq/L; negative where anions are missing
     */
    public EquivalentConcentration unmeasuredCharge() {
        return EquivalentConcentration.of(balance.unmeasured, MILLIEQUIVALENT_PER_LITRE);
    }

    /**
     * Returns the total inorganic carbon: CO₂, HCO₃⁻ and CO₃²⁻ together.
     *
     * @return carbon in mmol/L; empty if unknown
     */
    public Optional<AmountConcentration> carbon() {
        return Double.isNaN(balance.carbon)
                ? Optional.empty()
                : Optional.of(AmountConcentration.of(balance.carbon, MILLIMOLE_PER_LITRE));
    }

    /**
     * Returns the pH that was measured in this very water.
     *
     * @return the reading; no unit; empty if there is none or a change or blend has dropped it
     */
    public OptionalDouble measuredPH() {
        return Double.isNaN(pH) ? OptionalDouble.empty() : OptionalDouble.of(pH);
    }

    /**
     * Returns the temperature.
     *
     * @return temperature in °C
     */
    public WaterQuantity<Temperature> temperature() {
        double celsius = kelvin - 273.15;
        double rounded = Math.rint(celsius * 1e9) / 1e9;
        if (rounded + 273.15 == kelvin) {
            celsius = rounded; // what was stated comes back without the digits that 273.15 leaves
        }
        return WaterUnits.temperature(celsius, WaterUnits.CELSIUS);
    }

    /**
     * Returns the same water at another temperature; nothing it holds changes.
     *
     * @param temperature from 0 to 100 °C
     * @return the water; without a measured pH if the temperature differs
     */
    public Water with(Quantity<Temperature> temperature) {
        double newKelvin = WaterBuilder.kelvin(temperature);
        return new Water(balance, newKelvin, newKelvin == kelvin ? pH : Double.NaN);
    }

    /**
     * Returns the same water with another inorganic carbon, which brings no charge: CO₂ that came or went.
     *
     * @param carbon CO₂, HCO₃⁻ and CO₃²⁻ together; 0 or more
     * @return the water; without a measured pH
     * @throws IllegalArgumentException if it is negative
     */
    public Water withCarbon(Quantity<AmountConcentration> carbon) {
        double millimoles = WaterBuilder.millimoles(carbon, "inorganic carbon");
        return new Water(balance.withCarbon(millimoles), kelvin, Double.NaN);
    }

    /**
     * Returns this water after an electroneutral change.
     *
     * @param change what goes in and out, per litre
     * @return the changed water, at the same temperature
     * @throws IllegalArgumentException if the change takes out more of something than there is; names it and both amounts
     */
    public Water plus(Change change) {
        Objects.requireNonNull(change, "change");
        return new Water(balance.after(change.balance()), kelvin, Double.NaN);
    }

    /**
     * Returns a blend of this water and another.
     *
     * @param other the other water
     * @param shareOfOther volume of the other in the volume of the blend; no unit, 0 to 1
     * @return {@code this + s · (other − this)} in every field, also in temperature (heat capacity alike)
     * @throws IllegalArgumentException if the share is out of range
     */
    public Water mixedWith(Water other, double shareOfOther) {
        Objects.requireNonNull(other, "other");
        if (!(shareOfOther >= 0 && shareOfOther <= 1)) {
            throw new IllegalArgumentException("share of the other water must be from 0 to 1, but was " + shareOfOther);
        }
        if (shareOfOther == 0) {
            return this;
        }
        if (shareOfOther == 1) {
            return other;
        }
        return new Water(
                balance.mixedWith(other.balance, shareOfOther),
                Balance.between(kelvin, other.kelvin, shareOfOther),
                Double.NaN);
    }

    /**
     * Returns this water made up with pure water of the same temperature.
     *
     * @param factor volume after over volume before; no unit, 1 or more
     * @return the diluted water
     * @throws IllegalArgumentException if the factor is below 1 or not finite
     */
    public Water dilutedBy(double factor) {
        if (!(factor >= 1 && factor <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("dilution factor must be 1 or more, but was " + factor);
        }
        return new Water(balance.times(1 / factor), kelvin, Double.NaN);
    }

    /**
     * Returns this water after pure water has left it, as by evaporation.
     *
     * @param factor volume before over volume after; no unit, 1 to 1e9
     * @return the concentrated water; inorganic carbon is kept, as if no CO₂ escaped
     * @throws IllegalArgumentException if the factor is out of range
     */
    public Water concentratedBy(double factor) {
        if (!(factor >= 1 && factor <= 1e9)) {
            throw new IllegalArgumentException("concentration factor must be from 1 to 1e9, but was " + factor);
        }
        return new Water(balance.times(factor), kelvin, Double.NaN);
    }

    /**
     * Returns the total hardness by calcium and magnesium.
     *
     * @return hardness in mmol/L
     */
    public Hardness hardness() {
        return hardnessForms(HardnessCount.CALCIUM_AND_MAGNESIUM).total();
    }

    /**
     * Returns the hardness in its forms.
     *
     * @param counted which ions the total counts
     * @return total, calcium, magnesium, carbonate and non-carbonate hardness
     */
    public HardnessForms hardnessForms(HardnessCount counted) {
        return HardnessForms.of(balance, Objects.requireNonNull(counted, "counted"));
    }

    /**
     * Returns the measured charges on both sides.
     *
     * @return sums of cations and anions; they differ by the unmeasured charge
     */
    public IonBalance ionBalance() {
        return IonBalance.of(balance);
    }

    /**
     * Returns the ionic strength by totals: {@code I = ½ Σ z² c}.
     *
     * <p>Alkalinity counts as HCO₃⁻ and unmeasured charge as single-charged ions; ion pairs are left out, which makes the figure 10 %
     * to 50 % high in waters whose anions are mostly sulfate (11 % at 1 mmol/L of CaSO₄, some 45 % in saturated gypsum, computed with
     * a pairing constant of 10^2.30).
     *
     * @return ionic strength in mmol/L
     * @see "G. N. Lewis and M. Randall, The activity coefficient of strong electrolytes, J. Am. Chem. Soc. 43 (1921) 1112"
     */
    public AmountConcentration ionicStrength() {
        double sum = Math.abs(balance.alkalinity) + Math.abs(balance.unmeasured);
        for (int i = 0; i < balance.ions().length; i++) {
            double z = balance.ions()[i].chargeNumber();
            sum += z * z * balance.at(i);
        }
        return AmountConcentration.of(sum / 2, MILLIMOLE_PER_LITRE);
    }

    /**
     * Returns the sum of everything dissolved, with alkalinity as HCO₃⁻.
     *
     * @return mass per volume in mg/L, without dissolved CO₂ and without whatever carries unmeasured charge
     */
    public MassConcentration dissolvedSolids() {
        return MassConcentration.of(massOfTotals() + massOfAlkalinity(Ion.BICARBONATE), MILLIGRAM_PER_LITRE);
    }

    /**
     * Returns the residue that drying at 180 °C would leave: bicarbonate becomes carbonate, half of it leaving as CO₂ and water.
     *
     * <p>Weighed residues run a few percent higher, as they hold water of crystallisation.
     *
     * @return mass per volume in mg/L
     * @see "Standard Methods for the Examination of Water and Wastewater, 1030 E: 0.6 × alkalinity as CaCO₃ (from memory)"
     */
    public MassConcentration residueAt180Celsius() {
        return MassConcentration.of(massOfTotals() + massOfAlkalinity(Ion.CARBONATE), MILLIGRAM_PER_LITRE);
    }

    private double massOfTotals() {
        double sum = 0;
        for (int i = 0; i < balance.ions().length; i++) {
            sum += balance.at(i) / perMilligram(balance.ions()[i]);
        }
        return sum;
    }

    private double massOfAlkalinity(Ion as) {
        return Math.max(0, balance.alkalinity) / as.alkalinityPerMole() / perMilligram(as);
    }

    /** mmol/L in one mg/L. */
    private static double perMilligram(Ion ion) {
        return AmountConcentration.of(1, ion.milligramPerLitre()).in(MILLIMOLE_PER_LITRE);
    }

    /**
     * Returns what the double entry lacks: {@code Σ charge × total + unmeasured charge − alkalinity}.
     *
     * @return 0 meq/L but for rounding, below 1e-12 of the charges
     */
    public EquivalentConcentration netCharge() {
        return EquivalentConcentration.of(balance.residual(), MILLIEQUIVALENT_PER_LITRE);
    }

    /**
     * Returns all that this water holds in numbers and texts, for JSON and the like.
     *
     * @return the plain form, which {@link #from(PlainWater)} reads back to the last bit; ions of amount 0 are left out
     */
    public PlainWater toPlain() {
        return PlainForm.of(balance, kelvin, pH);
    }

    Balance balance() {
        return balance;
    }

    @Override
    public boolean equals(@Nullable Object that) {
        return that instanceof Water w
                && w.balance.sameAs(balance)
                && w.kelvin == kelvin
                && Double.compare(w.pH, pH) == 0;
    }

    @Override
    public int hashCode() {
        return balance.hash() + 31 * Double.hashCode(kelvin) + 961 * Double.hashCode(pH);
    }

    /** Returns all it holds, for logs; all digits. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder("water at ").append(temperature());
        for (Ion ion : ions()) {
            text.append(", ").append(ion).append(' ').append(total(ion));
        }
        text.append(", alkalinity ").append(alkalinity());
        text.append(", unmeasured charge ").append(unmeasuredCharge());
        carbon().ifPresent(c -> text.append(", inorganic carbon ").append(c));
        measuredPH().ifPresent(p -> text.append(", measured pH ").append(p));
        return text.toString();
    }
}
