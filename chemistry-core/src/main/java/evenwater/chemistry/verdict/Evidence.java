package evenwater.chemistry.verdict;

import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.analysis.Interpretation;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Train;
import evenwater.chemistry.treatment.Treatment;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is known of a water that shall be judged: for each parameter the range in which it lies.
 *
 * <p>What is not in it counts as not measured. A KH of one's own takes the place of the water's, from which the pH in the tank followed:
 * then the pH is unknown until it is measured as well. A reading of one's own, such as the chlorine that a strip shows, is added by {@link #with}
 * and goes before what follows from the water. Immutable and thread-safe.
 */
public final class Evidence {

    private static final Evidence NONE = new Evidence(Map.of(), List.of(), Set.of(), List.of());

    /** What everybody measures, or notices by the conductivity: that a model holds none of it says something. */
    private static final Set<Ion> MAJOR =
            Set.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.SODIUM, Ion.POTASSIUM, Ion.CHLORIDE, Ion.SULFATE, Ion.NITRATE);

    private static final Set<Parameter<?>> MAY_BE_NEGATIVE =
            Set.of(Parameter.CARBONATE_HARDNESS, Parameter.TEMPERATURE);

    private static final double MOST_PH = 14;

    /** The fraction of un-ionised ammonia is stated to here, and no tank is warmer. */
    private static final double MOST_CELSIUS = 50;

    private final Map<Parameter<?>, Bounds<?>> known;
    /** Waters at the ends of what is open; none where readings alone are known. */
    private final List<Water> waters;

    private final Set<CautionTopic> topics;
    private final List<Caution> handling;

    private Evidence(
            Map<Parameter<?>, Bounds<?>> known, List<Water> waters, Set<CautionTopic> topics, List<Caution> handling) {
        this.known = known;
        this.waters = waters;
        this.topics = topics;
        this.handling = handling;
    }

    /**
     * Returns evidence of nothing, to add readings to.
     *
     * @return empty evidence
     */
    public static Evidence none() {
        return NONE;
    }

    /**
     * Returns what follows from a water that is known exactly, such as one of a model or of one draw of a simulation.
     *
     * <p>That it holds no nitrite, ammonia, copper or another poison is no evidence of absence: add the reading.
     *
     * @param water any water
     * @return hardness, alkalinity, conductivity, ions
     */
    public static Evidence of(Water water) {
        Objects.requireNonNull(water, "water");
        Map<Parameter<?>, Bounds<?>> known = new LinkedHashMap<>();
        for (Parameter<?> parameter : Parameter.all()) {
            put(known, parameter, water);
        }
        return new Evidence(known, List.of(water), Set.of(), List.of());
    }

    private static <Q extends WaterQuantity<?>> void put(
            Map<Parameter<?>, Bounds<?>> known, Parameter<Q> parameter, Water water) {
        parameter
                .seenIn(water)
                .filter(value -> parameter.number(value) > 0
                        || parameter.ion().filter(ion -> !MAJOR.contains(ion)).isEmpty())
                .ifPresent(value -> known.put(parameter, new Bounds<>(value, value, value)));
    }

    /**
     * Returns what follows from a report.
     *
     * @param source the report, interpreted
     * @return the range of each parameter over everything that the report leaves open; without those that were not measured
     */
    public static Evidence from(Interpretation source) {
        return from(source, Train.of());
    }

    /**
     * Returns what follows from a report behind a treatment.
     *
     * <p>A dose by the teaspoon is open by the uncertainty of the spoon. Cautions about the treatment come with it.
     *
     * @param source the report, interpreted
     * @param treatment what the house does to the water, such as a {@link Train}
     * @return the range of each parameter over everything that report and spoons leave open; without those that were not measured
     * @throws evenwater.chemistry.quantity.NoAnswerException if the treatment has no answer for the water
     */
    public static Evidence from(Interpretation source, Treatment treatment) {
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(treatment, "treatment");
        List<UnaryOperator<Water>> ways =
                Spoons.ways(treatment).stream().map(Evidence::remembering).toList();
        Map<Parameter<?>, Bounds<?>> known = new LinkedHashMap<>();
        for (Parameter<?> parameter : Parameter.all()) {
            put(known, parameter, source, ways);
        }
        List<Water> waters = Stream.concat(Stream.of(source.water()), source.corners().stream())
                .flatMap(corner -> ways.stream().map(way -> way.apply(corner)))
                .distinct()
                .toList();
        carbonDioxide(waters).ifPresent(may -> known.put(Parameter.CARBON_DIOXIDE, may));
        OtherReadings.of(source.report()).forEach(known::put);
        TreatmentCautions cautions = TreatmentCautions.of(treatment);
        return new Evidence(known, waters, cautions.topics(), cautions.handling());
    }

    /** Every parameter asks for the same waters, and a neutralizer takes its time. */
    private static UnaryOperator<Water> remembering(Treatment treatment) {
        Map<Water, Water> treated = new HashMap<>();
        return water -> treated.computeIfAbsent(water, treatment::treat);
    }

    private static <Q extends WaterQuantity<?>> void put(
            Map<Parameter<?>, Bounds<?>> known,
            Parameter<Q> parameter,
            Interpretation source,
            List<UnaryOperator<Water>> ways) {
        List<Bounds<Q>> all = new ArrayList<>();
        for (UnaryOperator<Water> way : ways) {
            Optional<Bounds<Q>> bounds = parameter.of(source, way);
            if (bounds.isEmpty()) {
                return;
            }
            all.add(bounds.get());
        }
        Bounds<Q> together = Spoons.together(parameter, all);
        boolean isMeasured = parameter.ion().map(source::isMeasured).orElse(true);
        Bounds<Q> may = isMeasured
                ? together
                : new Bounds<>(together.low(), together.value(), together.high(), together.openBelow(), true);
        boolean nobodyKnows = may.openAbove() && parameter.number(may.low()) <= 0;
        if (!nobodyKnows) {
            known.put(parameter, may);
        }
    }

    /** As the water arrives, closed to the air; what nobody measured moves it through the ionic strength alone, and is left out. */
    private static Optional<Bounds<AmountConcentration>> carbonDioxide(List<Water> waters) {
        try {
            List<AmountConcentration> all = waters.stream()
                    .map(water -> Speciation.of(water).carbonDioxide())
                    .sorted()
                    .toList();
            AmountConcentration first = Speciation.of(waters.get(0)).carbonDioxide();
            return Optional.of(new Bounds<>(all.get(0), first, all.get(all.size() - 1)));
        } catch (NoAnswerException | IllegalArgumentException unknown) { // such as a water too hot for the constants
            return Optional.empty();
        }
    }

    /**
     * Returns this evidence and a reading that is taken as exact.
     *
     * @param <Q> the kind
     * @param parameter what was measured
     * @param value the reading; goes before what was known; of anything but alkalinity and temperature 0 or more
     * @return the evidence
     * @throws IllegalArgumentException if it is negative, or a pH is above 14 or a temperature above 50 °C
     */
    public <Q extends WaterQuantity<?>> Evidence with(Parameter<Q> parameter, Q value) {
        Objects.requireNonNull(value, "value");
        return with(parameter, new Bounds<>(value, value, value));
    }

    /**
     * Returns this evidence and a range in which a parameter lies, such as what a kit shows, or an interval of coverage.
     *
     * @param <Q> the kind
     * @param parameter what was measured
     * @param may the range; goes before what was known; of anything but alkalinity and temperature 0 or more
     * @return the evidence
     * @throws IllegalArgumentException if it begins below 0, or a pH is above 14 or a temperature above 50 °C
     * @see #with(Parameter, WaterQuantity)
     */
    public <Q extends WaterQuantity<?>> Evidence with(Parameter<Q> parameter, Bounds<Q> may) {
        Objects.requireNonNull(parameter, "parameter");
        Objects.requireNonNull(may, "may");
        // less than nothing of a poison would stand inside every limit
        if (!MAY_BE_NEGATIVE.contains(parameter) && parameter.number(may.low()) < 0) {
            throw new IllegalArgumentException(parameter + " must not be negative, but was " + may.low());
        }
        requireAtMost(Parameter.PH, MOST_PH, parameter, may);
        requireAtMost(Parameter.TEMPERATURE, MOST_CELSIUS, parameter, may);
        Map<Parameter<?>, Bounds<?>> more = new LinkedHashMap<>(known);
        more.put(parameter, may);
        // the pH of a tank follows from the alkalinity: with another one than the waters have, it has to be measured
        boolean contradictsWaters = parameter == Parameter.CARBONATE_HARDNESS;
        return new Evidence(more, contradictsWaters ? List.of() : waters, topics, handling);
    }

    private static <Q extends WaterQuantity<?>> void requireAtMost(
            Parameter<?> limited, double most, Parameter<Q> parameter, Bounds<Q> may) {
        if (parameter == limited && !(parameter.number(may.high()) <= most)) {
            throw new IllegalArgumentException(
                    parameter + " must be at most " + parameter.of(most) + ", but was " + may.high());
        }
    }

    /**
     * Returns this evidence and the cautions about a topic that it does not know of itself.
     *
     * @param topic what applies as well
     * @return the evidence
     */
    public Evidence with(CautionTopic topic) {
        Objects.requireNonNull(topic, "topic");
        Set<CautionTopic> more = new LinkedHashSet<>(topics);
        more.add(topic);
        return new Evidence(known, waters, more, handling);
    }

    /**
     * Returns what is known of a parameter.
     *
     * @param <Q> the kind
     * @param parameter any parameter
     * @return its range; empty if nobody measured it
     */
    @SuppressWarnings("unchecked") // with and put store under each parameter a range of its kind
    public <Q extends WaterQuantity<?>> Optional<Bounds<Q>> known(Parameter<Q> parameter) {
        return Optional.ofNullable((Bounds<Q>) known.get(Objects.requireNonNull(parameter, "parameter")));
    }

    List<Water> waters() {
        return waters;
    }

    Set<CautionTopic> topics() {
        return topics;
    }

    List<Caution> handling() {
        return handling;
    }

    /** Returns what is known, for logs. */
    @Override
    public String toString() {
        return known.entrySet().stream()
                .map(e -> e.getKey() + " " + e.getValue().value())
                .collect(Collectors.joining(", ", "known: ", ""));
    }
}
