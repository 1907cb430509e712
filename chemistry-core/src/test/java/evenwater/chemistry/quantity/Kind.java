package evenwater.chemistry.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/** What one kind of quantity offers, so that a test can run over every kind. The coherent unit is indriya's, not ours. */
record Kind<Q extends Quantity<Q>>(
        String name,
        Class<?> home,
        Class<Q> type,
        Unit<?> coherentUnit,
        Supplier<List<Unit<Q>>> listed,
        Maker<Q> maker,
        Function<Quantity<Q>, WaterQuantity<Q>> from,
        Optional<Function<String, WaterQuantity<Q>>> parse,
        Optional<Function<String, Unit<Q>>> unit) {

    interface Maker<Q extends Quantity<Q>> {
        WaterQuantity<Q> of(double value, Unit<Q> unit);
    }

    private static final Unit<?> MOLE_PER_CUBIC_METRE = Units.MOLE.divide(Units.CUBIC_METRE);
    private static final Unit<?> KILOGRAM_PER_MOLE = Units.KILOGRAM.divide(Units.MOLE);
    private static final Unit<?> KILOGRAM_PER_CUBIC_METRE = Units.KILOGRAM.divide(Units.CUBIC_METRE);

    static final Kind<Hardness> HARDNESS = kind(
            "hardness",
            Hardness.class,
            MOLE_PER_CUBIC_METRE,
            Hardness::units,
            Hardness::of,
            Hardness::from,
            Hardness::parse,
            Hardness::parseUnit);

    /** Temperatures apart, whose scales have different zeros. */
    static final List<Kind<?>> PROPORTIONAL = List.of(
            HARDNESS,
            kind(
                    "alkalinity",
                    Alkalinity.class,
                    MOLE_PER_CUBIC_METRE,
                    Alkalinity::units,
                    Alkalinity::of,
                    Alkalinity::from,
                    Alkalinity::parse,
                    Alkalinity::parseUnit),
            kind(
                    "compensated hardness",
                    CompensatedHardness.class,
                    MOLE_PER_CUBIC_METRE,
                    CompensatedHardness::units,
                    CompensatedHardness::of,
                    CompensatedHardness::from,
                    CompensatedHardness::parse,
                    CompensatedHardness::parseUnit),
            kind(
                    "amount concentration",
                    AmountConcentration.class,
                    MOLE_PER_CUBIC_METRE,
                    AmountConcentration::units,
                    AmountConcentration::of,
                    AmountConcentration::from,
                    AmountConcentration::parse,
                    AmountConcentration::parseUnit),
            kind(
                    "equivalent concentration",
                    EquivalentConcentration.class,
                    MOLE_PER_CUBIC_METRE,
                    EquivalentConcentration::units,
                    EquivalentConcentration::of,
                    EquivalentConcentration::from,
                    EquivalentConcentration::parse,
                    EquivalentConcentration::parseUnit),
            kind(
                    "mass concentration",
                    MassConcentration.class,
                    KILOGRAM_PER_CUBIC_METRE,
                    MassConcentration::units,
                    MassConcentration::of,
                    MassConcentration::from,
                    MassConcentration::parse,
                    MassConcentration::parseUnit),
            kind(
                    "molar mass",
                    MolarMass.class,
                    KILOGRAM_PER_MOLE,
                    MolarMass::units,
                    MolarMass::of,
                    MolarMass::from,
                    MolarMass::parse,
                    MolarMass::parseUnit),
            kind(
                    "equivalent mass",
                    EquivalentMass.class,
                    KILOGRAM_PER_MOLE,
                    EquivalentMass::units,
                    EquivalentMass::of,
                    EquivalentMass::from,
                    EquivalentMass::parse,
                    EquivalentMass::parseUnit),
            kind(
                    "conductivity",
                    Conductivity.class,
                    Units.SIEMENS.divide(Units.METRE),
                    Conductivity::units,
                    Conductivity::of,
                    Conductivity::from,
                    Conductivity::parse,
                    Conductivity::parseUnit),
            kind(
                    "exchange capacity",
                    ExchangeCapacity.class,
                    MOLE_PER_CUBIC_METRE,
                    ExchangeCapacity::units,
                    ExchangeCapacity::of,
                    ExchangeCapacity::from,
                    ExchangeCapacity::parse,
                    ExchangeCapacity::parseUnit),
            kind(
                    "salt dose",
                    SaltDose.class,
                    KILOGRAM_PER_CUBIC_METRE,
                    SaltDose::units,
                    SaltDose::of,
                    SaltDose::from,
                    SaltDose::parse,
                    SaltDose::parseUnit),
            kind(
                    "flow rate",
                    FlowRate.class,
                    Units.CUBIC_METRE.divide(Units.SECOND),
                    FlowRate::units,
                    FlowRate::of,
                    FlowRate::from,
                    FlowRate::parse,
                    FlowRate::parseUnit),
            new Kind<>(
                    "volume",
                    WaterUnits.class,
                    Volume.class,
                    Units.CUBIC_METRE,
                    WaterUnitNames.VOLUME::units,
                    WaterUnits::volume,
                    WaterUnits::volume,
                    Optional.of(WaterUnits::parseVolume),
                    Optional.empty()),
            new Kind<>(
                    "mass",
                    WaterUnits.class,
                    Mass.class,
                    Units.KILOGRAM,
                    WaterUnitNames.MASS::units,
                    WaterUnits::mass,
                    WaterUnits::mass,
                    Optional.of(WaterUnits::parseMass),
                    Optional.empty()),
            new Kind<>(
                    "pressure",
                    WaterUnits.class,
                    Pressure.class,
                    Units.PASCAL,
                    WaterUnitNames.PRESSURE::units,
                    WaterUnits::pressure,
                    WaterUnits::pressure,
                    Optional.of(WaterUnits::parsePressure),
                    Optional.empty()),
            new Kind<>(
                    "time",
                    WaterUnits.class,
                    Time.class,
                    Units.SECOND,
                    () -> List.of(WaterUnits.SECOND, WaterUnits.MINUTE, WaterUnits.HOUR, WaterUnits.DAY),
                    WaterUnits::time,
                    WaterUnits::time,
                    Optional.empty(),
                    Optional.empty()),
            new Kind<>(
                    "length",
                    WaterUnits.class,
                    Length.class,
                    Units.METRE,
                    () -> List.of(WaterUnits.METRE, WaterUnits.MILLIMETRE, WaterUnits.INCH),
                    WaterUnits::length,
                    WaterUnits::length,
                    Optional.empty(),
                    Optional.empty()),
            new Kind<>(
                    "share",
                    WaterUnits.class,
                    Dimensionless.class,
                    AbstractUnit.ONE,
                    WaterUnitNames.SHARE::units,
                    WaterUnits::share,
                    WaterUnits::share,
                    Optional.of(WaterUnits::parseShare),
                    Optional.empty()));

    static final Kind<Temperature> TEMPERATURE = new Kind<>(
            "temperature",
            WaterUnits.class,
            Temperature.class,
            Units.KELVIN,
            WaterUnitNames.TEMPERATURE::units,
            WaterUnits::temperature,
            WaterUnits::temperature,
            Optional.of(WaterUnits::parseTemperature),
            Optional.empty());

    static List<Kind<?>> proportional() {
        return PROPORTIONAL;
    }

    static List<Kind<?>> all() {
        List<Kind<?>> all = new ArrayList<>(PROPORTIONAL);
        all.add(TEMPERATURE);
        return all;
    }

    private static <Q extends WaterQuantity<Q>> Kind<Q> kind(
            String name,
            Class<Q> type,
            Unit<?> coherentUnit,
            Supplier<List<Unit<Q>>> listed,
            Maker<Q> maker,
            Function<Quantity<Q>, WaterQuantity<Q>> from,
            Function<String, WaterQuantity<Q>> parse,
            Function<String, Unit<Q>> unit) {
        return new Kind<>(name, type, type, coherentUnit, listed, maker, from, Optional.of(parse), Optional.of(unit));
    }

    WaterQuantity<Q> of(double value, Unit<Q> unit) {
        return maker.of(value, unit);
    }

    /** The units as the class lists them now. */
    List<Unit<Q>> units() {
        return listed.get();
    }

    /** The coherent unit as a unit of this kind, which for indriya is nothing that it could check. */
    Unit<Q> coherent() {
        return Unchecked.unit(coherentUnit);
    }

    @Override
    public String toString() {
        return name;
    }
}
