package evenwater.chemistry.verdict;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.substance.Ion;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;

/**
 * What a kind of tank asks of its water, or what published values say to people who drink it.
 *
 * <p>The ranges of tanks are common practice without a source: defaults that {@link #with} changes. Published values carry their year and
 * whether they were checked; they change, and are no medical advice. Immutable and thread-safe.
 */
public final class Requirements {

    private static final double MOST_GUARD = 0.4;

    private final String name;
    private final boolean isForDrinking;
    private final List<Requirement<?>> list;
    private final TankAir air;

    Requirements(String name, boolean isForDrinking, List<Requirement<?>> list, TankAir air) {
        this.name = name;
        this.isForDrinking = isForDrinking;
        this.list = List.copyOf(list);
        this.air = air;
    }

    /**
     * Returns the kinds of tank that this library knows.
     *
     * @return names for {@link #ofTank}
     */
    public static List<String> tankKinds() {
        return List.copyOf(VerdictTables.tankKinds().keySet());
    }

    /**
     * Returns what a kind of tank asks for.
     *
     * @param kind one of {@link #tankKinds}, or a part of its name that no other has, such as {@code Malawi}; capitals do not matter
     * @return its requirements
     * @throws IllegalArgumentException if none or several are meant; lists the kinds
     */
    public static Requirements ofTank(String kind) {
        Objects.requireNonNull(kind, "kind");
        String wanted = kind.strip().toLowerCase(Locale.ROOT);
        List<Requirements> found = VerdictTables.tankKinds().values().stream()
                .filter(one -> one.name.toLowerCase(Locale.ROOT).contains(wanted))
                .toList();
        for (Requirements one : found) {
            if (one.name.equalsIgnoreCase(wanted)) {
                return one;
            }
        }
        if (found.size() != 1 || wanted.isEmpty()) {
            throw new IllegalArgumentException("kind of tank '" + kind + "' names "
                    + (found.isEmpty() ? "none" : "several") + " of these: " + String.join("; ", tankKinds()));
        }
        return found.get(0);
    }

    /**
     * Returns published values for people who drink the water. They judge single parameters only: that a water is safe to drink is for the
     * health authority to say, with its bacteria and metals.
     *
     * @return guideline values with source, year and whether they were verified
     */
    public static Requirements ofDrinkingWater() {
        return new Requirements("drinking water", true, VerdictTables.drinking(), TankAir.CLOSED);
    }

    /**
     * Returns requirements of one's own, empty to begin with.
     *
     * @param name what they are for, such as "my nano tank"
     * @return requirements without any
     * @throws IllegalArgumentException if the name is blank
     */
    public static Requirements named(String name) {
        Objects.requireNonNull(name, "name");
        if (name.isBlank()) {
            throw new IllegalArgumentException("requirements must have a name");
        }
        return new Requirements(name.strip(), false, List.of(), TankAir.OPEN);
    }

    /**
     * Returns what they are for.
     *
     * @return such as "general community"
     */
    public String name() {
        return name;
    }

    /**
     * Returns the single requirements.
     *
     * @return in the order in which a verdict names them; one parameter may have several, of different sources
     */
    public List<Requirement<?>> list() {
        return list;
    }

    /**
     * Returns these with another range for a parameter.
     *
     * <p>What had to be known still has to be: an own limit for chlorine does not make a tank fit whose chlorine nobody measured. Only
     * {@link #without} drops that.
     *
     * @param requirement takes the place of all that count for its parameter; what is only for information stays
     * @return the requirements
     */
    public Requirements with(Requirement<?> requirement) {
        Objects.requireNonNull(requirement, "requirement");
        List<Requirement<?>> changed = new ArrayList<>();
        int place = -1;
        boolean mustBeKnown = false;
        for (Requirement<?> one : list) {
            boolean replaced = one.parameter() == requirement.parameter()
                    && (requirement.weight() == Weight.FOR_INFORMATION) == (one.weight() == Weight.FOR_INFORMATION);
            if (!replaced) {
                changed.add(one);
                continue;
            }
            place = place < 0 ? changed.size() : place;
            mustBeKnown |= one.weight() == Weight.MUST_BE_KNOWN;
        }
        changed.add(
                place < 0 ? changed.size() : place, mustBeKnown ? requirement.with(Weight.MUST_BE_KNOWN) : requirement);
        return new Requirements(name, isForDrinking, changed, air);
    }

    /**
     * Returns these without those of a parameter.
     *
     * @param parameter what nothing shall be asked of
     * @return the requirements
     */
    public Requirements without(Parameter<?> parameter) {
        Objects.requireNonNull(parameter, "parameter");
        return new Requirements(
                name,
                isForDrinking,
                list.stream().filter(one -> one.parameter() != parameter).toList(),
                air);
    }

    /**
     * Returns these with a guard band: every range that counts drawn in at its ends, so that a water that keeps these keeps the true ones though
     * its readings and doses are a little off.
     *
     * @param share of the range by which each of its ends is drawn in, or of the limit where there is but one; no unit, 0 to 0.4
     * @return stricter requirements
     * @throws IllegalArgumentException if the share is out of range
     * @see "JCGM 106:2012, The role of measurement uncertainty in conformity assessment, 8.3 (from memory)"
     */
    public Requirements guarded(double share) {
        if (!(share >= 0 && share <= MOST_GUARD)) {
            throw new IllegalArgumentException(
                    "guard band must be from 0 to " + MOST_GUARD + " of a range, but was " + share);
        }
        return new Requirements(
                name,
                isForDrinking,
                list.stream()
                        .<Requirement<?>>map(one -> one.weight() == Weight.FOR_INFORMATION ? one : one.guarded(share))
                        .toList(),
                air);
    }

    /**
     * Returns these for a tank whose carbon dioxide is kept between two concentrations; its pH follows from that and the alkalinity.
     *
     * @param least CO₂ that is always there; above 0
     * @param most CO₂ that is never passed; not below {@code least}
     * @return the requirements
     * @throws IllegalArgumentException if they are not in order
     */
    public Requirements withCarbonDioxide(Quantity<AmountConcentration> least, Quantity<AmountConcentration> most) {
        AmountConcentration low = Ion.CARBON_DIOXIDE.concentration(least);
        AmountConcentration high = Ion.CARBON_DIOXIDE.concentration(most);
        if (!(low.getValue() > 0) || low.compareTo(high) > 0) {
            throw new IllegalArgumentException(
                    "CO₂ of a tank must be above 0 and in order, but was " + low + " to " + high);
        }
        return new Requirements(name, isForDrinking, list, TankAir.dosed(low, high));
    }

    /**
     * Judges a water.
     *
     * @param evidence what is known of it
     * @return the verdict for each requirement and as a whole
     */
    public Verdict judge(Evidence evidence) {
        Objects.requireNonNull(evidence, "evidence");
        Derived derived = Derived.of(evidence, air);
        Evidence all = air.isDosed() ? evidence.with(CautionTopic.CARBON_DIOXIDE) : evidence;
        return new Verdict(
                this,
                list.stream().<Finding<?>>map(one -> finding(one, derived)).toList(),
                derived,
                all.topics(),
                evidence.handling());
    }

    private static <Q extends WaterQuantity<?>> Finding<Q> finding(Requirement<Q> requirement, Derived derived) {
        return Finding.of(requirement, derived.known(requirement.parameter()));
    }

    boolean isForDrinking() {
        return isForDrinking;
    }

    /** Returns the name and all requirements. */
    @Override
    public String toString() {
        return Stream.concat(Stream.of(name), list.stream().map(Requirement::toString))
                .collect(Collectors.joining("\n  "));
    }
}
