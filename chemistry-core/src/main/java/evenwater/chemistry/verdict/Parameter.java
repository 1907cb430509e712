package evenwater.chemistry.verdict;

import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.analysis.Interpretation;
import evenwater.chemistry.instrument.CalculatedConductivity;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Element;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;

/**
 * What a requirement speaks of, with the unit in which people speak of it.
 *
 * <p>The kind of quantity is part of the type, so that a limit for KH cannot be set against a GH. Immutable and thread-safe.
 *
 * @param <Q> the kind, such as {@code Hardness}
 */
public final class Parameter<Q extends WaterQuantity<?>> {

    private static final List<Parameter<?>> ALL = new ArrayList<>();

    /** GH: calcium and magnesium, in °dH. */
    public static final Parameter<Hardness> GENERAL_HARDNESS =
            of("GH", Hardness.GERMAN_DEGREE, Hardness::of, Hardness::parse, Water::hardness);

    /** KH as the hobby's test titrates it: alkalinity, in °dKH. */
    public static final Parameter<Alkalinity> CARBONATE_HARDNESS =
            of("KH", Alkalinity.DEGREE_OF_CARBONATE_HARDNESS, Alkalinity::of, Alkalinity::parse, Water::alkalinity);

    /** pH in the tank, where the water meets air; no unit. */
    public static final Parameter<WaterQuantity<Dimensionless>> PH =
            of("pH", WaterUnits.ONE, WaterUnits::share, WaterUnits::parseShare, null);

    /** Electrical conductivity at 25 °C, in µS/cm. */
    public static final Parameter<Conductivity> CONDUCTIVITY = of(
            "conductivity",
            Conductivity.MICROSIEMENS_PER_CENTIMETRE,
            Conductivity::of,
            Conductivity::parse,
            CalculatedConductivity::at25Celsius);

    /** Dissolved solids as the sum of what is dissolved, alkalinity as HCO₃⁻, in mg/L. */
    public static final Parameter<MassConcentration> DISSOLVED_SOLIDS =
            mass("dissolved solids", Water::dissolvedSolids);

    /** Calcium, in mg/L. */
    public static final Parameter<AmountConcentration> CALCIUM = ion("calcium", Ion.CALCIUM);

    /** Magnesium, in mg/L. */
    public static final Parameter<AmountConcentration> MAGNESIUM = ion("magnesium", Ion.MAGNESIUM);

    /** Sodium, in mg/L. */
    public static final Parameter<AmountConcentration> SODIUM = ion("sodium", Ion.SODIUM);

    /** Potassium, in mg/L. */
    public static final Parameter<AmountConcentration> POTASSIUM = ion("potassium", Ion.POTASSIUM);

    /** Chloride, in mg/L. */
    public static final Parameter<AmountConcentration> CHLORIDE = ion("chloride", Ion.CHLORIDE);

    /** Sulfate, in mg/L. */
    public static final Parameter<AmountConcentration> SULFATE = ion("sulfate", Ion.SULFATE);

    /** Nitrate, in mg/L of nitrate. */
    public static final Parameter<AmountConcentration> NITRATE = ion("nitrate", Ion.NITRATE);

    /** Nitrite, in mg/L of nitrite. */
    public static final Parameter<AmountConcentration> NITRITE = ion("nitrite", Ion.NITRITE);

    /** Ammonium and ammonia together, as a test shows them, in mg/L of ammonium. */
    public static final Parameter<AmountConcentration> TOTAL_AMMONIA = ion("total ammonia", Ion.AMMONIUM);

    /** Un-ionised ammonia, NH₃, in mg/L: what of the total ammonia harms fish; it follows from that, pH and temperature. */
    public static final Parameter<AmountConcentration> UNIONISED_AMMONIA =
            concentration("un-ionised ammonia", Ion.AMMONIA);

    /** Copper, in mg/L. */
    public static final Parameter<AmountConcentration> COPPER = ion("copper", Ion.COPPER_II);

    /** Zinc, in mg/L. */
    public static final Parameter<AmountConcentration> ZINC = ion("zinc", Ion.ZINC);

    /** Aluminium, in mg/L. */
    public static final Parameter<AmountConcentration> ALUMINIUM = ion("aluminium", Ion.ALUMINIUM);

    /** Iron, in mg/L. */
    public static final Parameter<AmountConcentration> IRON = ion("iron", Ion.IRON_II);

    /** Manganese, in mg/L. */
    public static final Parameter<AmountConcentration> MANGANESE = ion("manganese", Ion.MANGANESE_II);

    /** Barium, in mg/L. */
    public static final Parameter<AmountConcentration> BARIUM = ion("barium", Ion.BARIUM);

    /** Fluoride, in mg/L. */
    public static final Parameter<AmountConcentration> FLUORIDE = ion("fluoride", Ion.FLUORIDE);

    /** Boron, all of it as boric acid, in mg/L of boron. */
    public static final Parameter<AmountConcentration> BORON = of(
            "boron",
            Ion.BORIC_ACID.milligramPerLitreAs(Element.BORON),
            AmountConcentration::of,
            Ion.BORIC_ACID::parseConcentration,
            water -> water.total(Ion.BORIC_ACID),
            Ion.BORIC_ACID);

    /** Hydrogen sulfide, in mg/L; it must be stated. */
    public static final Parameter<MassConcentration> HYDROGEN_SULFIDE = mass("hydrogen sulfide", null);

    /** Free and combined chlorine together, in mg/L of chlorine; no part of a {@link Water}, so it must be stated. */
    public static final Parameter<MassConcentration> CHLORINE = mass("chlorine", null);

    /** Lead, in mg/L; no part of a {@link Water}, so it must be stated. */
    public static final Parameter<MassConcentration> LEAD = mass("lead", null);

    /** Cadmium, in mg/L; no part of a {@link Water}, so it must be stated. */
    public static final Parameter<MassConcentration> CADMIUM = mass("cadmium", null);

    /** Nickel, in mg/L; no part of a {@link Water}, so it must be stated. */
    public static final Parameter<MassConcentration> NICKEL = mass("nickel", null);

    /** Chromium, in mg/L; no part of a {@link Water}, so it must be stated. */
    public static final Parameter<MassConcentration> CHROMIUM = mass("chromium", null);

    /** Silver, in mg/L; no part of a {@link Water}, so it must be stated. */
    public static final Parameter<MassConcentration> SILVER = mass("silver", null);

    /** Mercury, in mg/L; no part of a {@link Water}, so it must be stated. */
    public static final Parameter<MassConcentration> MERCURY = mass("mercury", null);

    /** Arsenic, in mg/L; no part of a {@link Water}, so it must be stated. */
    public static final Parameter<MassConcentration> ARSENIC = mass("arsenic", null);

    /** Selenium, in mg/L; no part of a {@link Water}, so it must be stated. */
    public static final Parameter<MassConcentration> SELENIUM = mass("selenium", null);

    /** Cyanide, in mg/L; no part of a {@link Water}, so it must be stated. */
    public static final Parameter<MassConcentration> CYANIDE = mass("cyanide", null);

    /** Dissolved oxygen, in mg/L; it must be stated. */
    public static final Parameter<MassConcentration> OXYGEN = mass("oxygen", null);

    /** Dissolved carbon dioxide, in mg/L; of a report whose carbon is known, as the water arrives, before air takes some away. */
    public static final Parameter<AmountConcentration> CARBON_DIOXIDE =
            concentration("carbon dioxide", Ion.CARBON_DIOXIDE);

    /** Temperature of the tank, in °C; it must be stated. */
    public static final Parameter<WaterQuantity<Temperature>> TEMPERATURE =
            of("temperature", WaterUnits.CELSIUS, WaterUnits::temperature, WaterUnits::parseTemperature, null);

    private final String name;
    private final String unit;
    private final DoubleFunction<Q> maker;
    private final Function<Q, Double> number;
    private final Function<String, Q> reader;
    private final @Nullable Function<Water, Q> view;
    private final @Nullable Bounding<Q> bounding;
    /** The ion whose total it is, if it is one's. */
    private final @Nullable Ion ion;

    /** The range of the parameter over everything that a report leaves open. */
    private interface Bounding<Q extends WaterQuantity<?>> {
        Bounds<Q> bounds(Interpretation source, UnaryOperator<Water> treatment);
    }

    private interface Maker<K extends Quantity<K>, Q> {
        Q make(double value, Unit<K> unit);
    }

    private Parameter(
            String name,
            String unit,
            DoubleFunction<Q> maker,
            Function<Q, Double> number,
            Function<String, Q> reader,
            @Nullable Function<Water, Q> view,
            @Nullable Bounding<Q> bounding,
            @Nullable Ion ion) {
        this.name = name;
        this.unit = unit;
        this.maker = maker;
        this.number = number;
        this.reader = reader;
        this.view = view;
        this.bounding = bounding;
        this.ion = ion;
    }

    private static <K extends Quantity<K>, Q extends WaterQuantity<K>> Parameter<Q> of(
            String name,
            Unit<K> unit,
            Maker<K, Q> maker,
            Function<String, Q> reader,
            @Nullable Function<Water, Q> view) {
        return of(name, unit, maker, reader, view, null);
    }

    private static <K extends Quantity<K>, Q extends WaterQuantity<K>> Parameter<Q> of(
            String name,
            Unit<K> unit,
            Maker<K, Q> maker,
            Function<String, Q> reader,
            @Nullable Function<Water, Q> view,
            @Nullable Ion ion) {
        Bounding<Q> bounding =
                view == null ? null : (source, treatment) -> source.bounds(water -> view.apply(treatment.apply(water)));
        Parameter<Q> parameter = new Parameter<>(
                name,
                unit.getSymbol() == null ? "" : unit.getSymbol(),
                value -> maker.make(value, unit),
                quantity -> quantity.in(unit),
                reader,
                view,
                bounding,
                ion);
        ALL.add(parameter);
        return parameter;
    }

    private static Parameter<AmountConcentration> ion(String name, Ion ion) {
        return of(
                name,
                ion.milligramPerLitre(),
                AmountConcentration::of,
                ion::parseConcentration,
                water -> water.total(ion),
                ion);
    }

    /** Of something that is counted in no total of its own. */
    private static Parameter<AmountConcentration> concentration(String name, Ion ion) {
        return of(name, ion.milligramPerLitre(), AmountConcentration::of, ion::parseConcentration, null);
    }

    private static Parameter<MassConcentration> mass(String name, @Nullable Function<Water, MassConcentration> view) {
        return of(name, MassConcentration.MILLIGRAM_PER_LITRE, MassConcentration::of, MassConcentration::parse, view);
    }

    /**
     * Returns all parameters.
     *
     * @return in the order in which they are declared
     */
    public static List<Parameter<?>> all() {
        return List.copyOf(ALL);
    }

    /**
     * Returns the parameter of a name.
     *
     * @param name such as {@code GH} or {@code nitrate}; capitals do not matter
     * @return the parameter
     * @throws IllegalArgumentException if there is none of that name; lists the names
     */
    public static Parameter<?> named(String name) {
        Objects.requireNonNull(name, "name");
        return ALL.stream()
                .filter(parameter -> parameter.name.equalsIgnoreCase(name.strip()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no parameter is named '" + name + "': known are "
                        + String.join(", ", ALL.stream().map(Parameter::name).toList())));
    }

    /**
     * Returns what people call it.
     *
     * @return such as {@code GH}
     */
    public String name() {
        return name;
    }

    /**
     * Returns the symbol of the unit in which people speak of it.
     *
     * @return such as {@code °dH}; empty for pH
     */
    public String unitSymbol() {
        return unit;
    }

    /**
     * Returns a value in the usual unit.
     *
     * @param value finite, in the unit of {@link #unitSymbol}
     * @return the quantity
     * @throws IllegalArgumentException if it is not finite
     */
    public Q of(double value) {
        return maker.apply(value);
    }

    /**
     * Reads a value with its unit.
     *
     * @param text such as {@code 4 °dH}, {@code 50 mg/L NO3} (an amount says as what) or, for pH, {@code 7.2}
     * @return the quantity, with its unit as written
     * @throws evenwater.chemistry.quantity.UnreadableTextException if it cannot be read
     */
    public Q parse(String text) {
        return reader.apply(Objects.requireNonNull(text, "text"));
    }

    /**
     * Returns the number of a value in the usual unit.
     *
     * @param value any value of the kind
     * @return the number in the unit of {@link #unitSymbol}
     */
    public double number(Q value) {
        return number.apply(Objects.requireNonNull(value, "value"));
    }

    /**
     * Returns a value for people, in the usual unit, such as {@code GH 4.2 °dH}.
     *
     * @param value any value of the kind
     * @param locale whose decimal sign to use
     * @param significantDigits digits to keep; 1 to 17
     * @return name, rounded number and unit
     */
    public String toText(Q value, Locale locale, int significantDigits) {
        return name + " " + of(number(value)).toText(locale, significantDigits);
    }

    /**
     * Returns the ion whose total it is.
     *
     * @return such as Na⁺ for sodium; empty if it is none's, as hardness
     */
    public Optional<Ion> ion() {
        return Optional.ofNullable(ion);
    }

    /**
     * Returns what a water shows.
     *
     * @param water any water
     * @return the value; empty if it does not follow from a water alone, as chlorine, or this water has no answer
     */
    public Optional<Q> seenIn(Water water) {
        Objects.requireNonNull(water, "water");
        if (view == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(view.apply(water));
        } catch (NoAnswerException noAnswer) {
            return Optional.empty();
        }
    }

    /** The range over everything that a report leaves open, behind a treatment; empty if one of its waters has no answer. */
    Optional<Bounds<Q>> of(Interpretation source, UnaryOperator<Water> treatment) {
        if (bounding == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(bounding.bounds(source, treatment));
        } catch (NoAnswerException noAnswer) {
            return Optional.empty();
        }
    }

    /** Returns the name. */
    @Override
    public String toString() {
        return name;
    }
}
