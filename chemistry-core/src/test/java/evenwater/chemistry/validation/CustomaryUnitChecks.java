package evenwater.chemistry.validation;

import static evenwater.chemistry.quantity.WaterUnits.CUBIC_FOOT;
import static evenwater.chemistry.quantity.WaterUnits.GRAIN;
import static evenwater.chemistry.quantity.WaterUnits.GRAM;
import static evenwater.chemistry.quantity.WaterUnits.IMPERIAL_GALLON;
import static evenwater.chemistry.quantity.WaterUnits.LITRE;
import static evenwater.chemistry.quantity.WaterUnits.MILLIGRAM;
import static evenwater.chemistry.quantity.WaterUnits.MILLILITRE;
import static evenwater.chemistry.quantity.WaterUnits.OUNCE;
import static evenwater.chemistry.quantity.WaterUnits.POUND;
import static evenwater.chemistry.quantity.WaterUnits.US_GALLON;
import static evenwater.chemistry.quantity.WaterUnits.US_TEASPOON;

import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.List;
import javax.measure.Unit;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/** Customary units of mass, volume and what is made of them. */
final class CustomaryUnitChecks {

    private CustomaryUnitChecks() {}

    static Topic topic() {
        return new Topic(
                "Customary units",
                "",
                List.of(
                        mass(GRAIN, MILLIGRAM, Figure.exact("64.79891")),
                        mass(POUND, GRAM, Figure.exact("453.59237")),
                        mass(POUND, GRAIN, Figure.exact("7000")),
                        mass(OUNCE, GRAM, Figure.printed("28.34952")),
                        volume(US_GALLON, LITRE, Source.NIST_SP_811, Figure.exact("3.785411784")),
                        volume(IMPERIAL_GALLON, LITRE, Source.UK_1985, Figure.exact("4.54609")),
                        volume(CUBIC_FOOT, LITRE, Source.NIST_SP_811, Figure.exact("28.316846592")),
                        volume(CUBIC_FOOT, US_GALLON, Source.NIST_SP_811, Figure.printed("7.48052")),
                        volume(US_TEASPOON, MILLILITRE, Source.NIST_SP_811, Figure.exact("4.92892159375")),
                        flow(FlowRate.US_GALLON_PER_MINUTE, FlowRate.LITRE_PER_MINUTE, "3.785412"),
                        flow(FlowRate.US_GALLON_PER_MINUTE, FlowRate.CUBIC_METRE_PER_HOUR, "0.2271"),
                        PublishedCheck.of(
                                "unit-lb/ft³",
                                "1 lb/ft³",
                                "g/L",
                                Source.NIST_SP_811,
                                Status.FROM_MEMORY,
                                Figure.printed("16.01846"),
                                SaltDose.of(1, SaltDose.POUND_PER_CUBIC_FOOT).in(SaltDose.GRAM_PER_LITRE)),
                        PublishedCheck.of(
                                "unit-lb/gal",
                                "1 lb per US gallon",
                                "kg/m³",
                                Source.NIST_SP_811,
                                Status.FROM_MEMORY,
                                Figure.printed("119.8264"),
                                MassConcentration.of(1, MassConcentration.POUND_PER_US_GALLON)
                                        .in(MassConcentration.KILOGRAM_PER_CUBIC_METRE)),
                        PublishedCheck.of(
                                "unit-lb-per-million-gallons",
                                "1 grain per US gallon",
                                "lb per million US gallons",
                                Source.SOFTENING_TRADE,
                                Status.COMMON_PRACTICE,
                                Figure.printed("142.9"),
                                MassConcentration.of(1e6, MassConcentration.GRAIN_PER_US_GALLON)
                                        .in(MassConcentration.POUND_PER_US_GALLON)),
                        unit(
                                "°C",
                                "K",
                                Source.NIST_SP_811,
                                Figure.exact("274.15"),
                                WaterUnits.temperature(1, WaterUnits.CELSIUS).in(WaterUnits.KELVIN)),
                        unit(
                                "°C",
                                "°F",
                                Source.NIST_SP_811,
                                Figure.exact("33.8"),
                                WaterUnits.temperature(1, WaterUnits.CELSIUS).in(WaterUnits.FAHRENHEIT)),
                        conductivity(Conductivity.MILLISIEMENS_PER_METRE, "10"),
                        conductivity(Conductivity.SIEMENS_PER_METRE, "10000")));
    }

    private static PublishedCheck mass(Unit<Mass> from, Unit<Mass> to, Figure published) {
        return unit(
                from.toString(),
                to.toString(),
                Source.NIST_SP_811,
                published,
                WaterUnits.mass(1, from).in(to));
    }

    private static PublishedCheck volume(Unit<Volume> from, Unit<Volume> to, Source source, Figure published) {
        return unit(
                from.toString(),
                to.toString(),
                source,
                published,
                WaterUnits.volume(1, from).in(to));
    }

    private static PublishedCheck flow(Unit<FlowRate> from, Unit<FlowRate> to, String published) {
        return unit(
                from.toString(),
                to.toString(),
                Source.NIST_SP_811,
                Figure.printed(published),
                FlowRate.of(1, from).in(to));
    }

    private static PublishedCheck conductivity(Unit<Conductivity> from, String published) {
        return unit(
                from.toString(),
                Conductivity.MICROSIEMENS_PER_CENTIMETRE.toString(),
                Source.SM_2510,
                Figure.exact(published),
                Conductivity.of(1, from).in(Conductivity.MICROSIEMENS_PER_CENTIMETRE));
    }

    private static PublishedCheck unit(String from, String to, Source source, Figure published, double ours) {
        return PublishedCheck.of(
                "unit-" + from + "-" + to, "1 " + from, to, source, Status.FROM_MEMORY, published, ours);
    }
}
