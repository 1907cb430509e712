package evenwater.page;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import evenwater.chemistry.water.WaterBuilder;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;

/** What a number and its unit mean. */
final class Read {

    static final Unit<AmountConcentration> SODIUM_UNIT = Ion.SODIUM.milligramPerLitre();

    private Read() {}

    static Hardness hardness(Entries entries, String id) {
        return entries.at(id, () -> Hardness.of(entries.number(id), Hardness.parseUnit(entries.unit(id))));
    }

    static Alkalinity alkalinity(Entries entries, String id) {
        return entries.at(id, () -> Alkalinity.of(entries.number(id), Alkalinity.parseUnit(entries.unit(id))));
    }

    static AmountConcentration concentration(Entries entries, String id, Ion ion) {
        return entries.at(
                id, () -> AmountConcentration.of(entries.number(id), UnitOptions.unitOf(ion, entries.unit(id))));
    }

    static WaterQuantity<Temperature> temperature(Entries entries, String id) {
        return entries.at(
                id, () -> WaterUnits.temperature(entries.number(id), UnitOptions.temperature(entries.unit(id))));
    }

    /** A water of hardness, alkalinity and sodium; all hardness is taken for calcium, on which none of the three depends. */
    static Water water(Entries entries, String hardness, String alkalinity, String sodium) {
        WaterBuilder builder = withAlkalinityAndSodium(entries, alkalinity, sodium);
        Hardness stated = hardness(entries, hardness);
        entries.at(hardness, () -> {
            double millimoles = stated.in(Hardness.MILLIMOLE_PER_LITRE);
            if (millimoles < 0) {
                throw new IllegalArgumentException("hardness of a water must not be negative, but was " + stated);
            }
            return builder.total(
                    Ion.CALCIUM, AmountConcentration.of(millimoles, AmountConcentration.MILLIMOLE_PER_LITRE));
        });
        return entries.at(hardness, builder::build);
    }

    static WaterBuilder withAlkalinityAndSodium(Entries entries, String alkalinity, String sodium) {
        WaterBuilder builder = Water.builder();
        Alkalinity stated = alkalinity(entries, alkalinity);
        entries.at(alkalinity, () -> builder.alkalinity(stated));
        ion(builder, entries, sodium, Ion.SODIUM);
        return builder;
    }

    static void ion(WaterBuilder builder, Entries entries, String id, Ion ion) {
        AmountConcentration stated = concentration(entries, id, ion);
        entries.at(id, () -> builder.total(ion, stated));
    }

    static AmountConcentration sodium(Water water) {
        return water.total(Ion.SODIUM).to(SODIUM_UNIT);
    }
}
