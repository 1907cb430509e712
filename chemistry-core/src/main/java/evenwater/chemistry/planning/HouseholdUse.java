package evenwater.chemistry.planning;

import static evenwater.chemistry.quantity.WaterUnits.LITRE;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;

/** How much water a household takes in a day: by its people, as stated, or as measured. Immutable and thread-safe. */
public final class HouseholdUse {

    /** Common practice, no source: the trade reckons with 60 to 80 US gallons for each person; European households take half of that. */
    private static final WaterQuantity<Volume> USUAL = WaterUnits.volume(75, WaterUnits.US_GALLON);

    private static final double LEAST = 0.1;
    private static final double MOST = 1e9;

    private final double meanInLitres;
    private final double mostInLitres;
    private final String basis;

    private HouseholdUse(double meanInLitres, double mostInLitres, String basis) {
        this.meanInLitres = meanInLitres;
        this.mostInLitres = mostInLitres;
        this.basis = basis;
    }

    /**
     * Returns the use of people at 75 US gallons (284 L) a day each: common practice, no source.
     *
     * @param people 1 or more, at most 10000
     * @return the use
     * @throws IllegalArgumentException if the number is out of range
     */
    public static HouseholdUse ofPeople(int people) {
        return ofPeople(people, USUAL);
    }

    /**
     * Returns the use of people.
     *
     * @param people 1 or more, at most 10000
     * @param each what one of them takes in a day; 0.1 L to 10⁶ m³
     * @return the use
     * @throws IllegalArgumentException if one is out of range
     */
    public static HouseholdUse ofPeople(int people, Quantity<Volume> each) {
        if (people < 1 || people > 10_000) {
            throw new IllegalArgumentException("people of a household must be from 1 to 10000, but were " + people);
        }
        double litres = litres(each, "water for each person");
        String persons = people == 1 ? "1 person" : people + " people";
        return new HouseholdUse(
                people * litres, people * litres, persons + " at " + WaterUnits.volume(each) + " a day");
    }

    /**
     * Returns a use that is known.
     *
     * @param volume water of a day; 0.1 L to 10⁶ m³
     * @return the use
     * @throws IllegalArgumentException if it is out of range
     */
    public static HouseholdUse ofDaily(Quantity<Volume> volume) {
        double litres = litres(volume, "water of a day");
        return new HouseholdUse(litres, litres, WaterUnits.volume(volume) + " a day");
    }

    /**
     * Returns a use that was measured.
     *
     * @param days water of each day, 0 to 10⁶ m³, not all 0; at least one
     * @return the use, with its mean and its busiest day
     * @throws IllegalArgumentException if there is no day, one is out of range or all are 0
     */
    public static HouseholdUse ofDays(List<? extends Quantity<Volume>> days) {
        Objects.requireNonNull(days, "days");
        double sum = 0;
        double most = 0;
        for (Quantity<Volume> day : days) {
            WaterQuantity<Volume> stated = WaterUnits.volume(Objects.requireNonNull(day, "day"));
            if (!(stated.getValue() >= 0 && stated.in(LITRE) <= MOST)) {
                throw new IllegalArgumentException("water of a day must be from 0 L to 1000000 m³, but was " + stated);
            }
            sum += stated.in(LITRE);
            most = Math.max(most, stated.in(LITRE));
        }
        if (!(sum >= LEAST)) {
            throw new IllegalArgumentException(
                    "a measured use needs a day with water, 0.1 L at least, but had " + days);
        }
        String measured = days.size() == 1 ? "1 measured day" : days.size() + " measured days";
        return new HouseholdUse(sum / days.size(), most, measured);
    }

    private static double litres(Quantity<Volume> volume, String what) {
        WaterQuantity<Volume> stated = WaterUnits.volume(Objects.requireNonNull(volume, "volume"));
        double litres = stated.in(LITRE);
        if (!(litres >= LEAST && litres <= MOST)) {
            throw new IllegalArgumentException(what + " must be from 0.1 L to 1000000 m³, but was " + stated);
        }
        return litres;
    }

    /**
     * Returns the water of a mean day.
     *
     * @return in litres
     */
    public WaterQuantity<Volume> daily() {
        return WaterUnits.volume(meanInLitres, LITRE);
    }

    /**
     * Returns the water of the busiest day.
     *
     * @return in litres; the mean day where no days were measured
     */
    public WaterQuantity<Volume> busiestDay() {
        return WaterUnits.volume(mostInLitres, LITRE);
    }

    /** Returns what it is based on, such as {@code 4 people at 75 gal(US) a day}. */
    @Override
    public String toString() {
        return basis;
    }
}
