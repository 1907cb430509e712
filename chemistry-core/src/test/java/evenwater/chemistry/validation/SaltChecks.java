package evenwater.chemistry.validation;

import static evenwater.chemistry.quantity.EquivalentMass.GRAM_PER_EQUIVALENT;
import static evenwater.chemistry.quantity.WaterUnits.GRAIN;
import static evenwater.chemistry.quantity.WaterUnits.GRAM;
import static evenwater.chemistry.quantity.WaterUnits.KILOGRAM;
import static evenwater.chemistry.quantity.WaterUnits.POUND;

import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import javax.measure.quantity.Mass;

/** Salt that a softener takes, by theory and by the trade, and the capacity that it gives. */
final class SaltChecks {

    private static final double CALCIUM_CARBONATE =
            Compound.CALCIUM_CARBONATE.equivalentMass(Ion.CALCIUM).in(GRAM_PER_EQUIVALENT);
    private static final double SODIUM_CHLORIDE =
            Compound.SODIUM_CHLORIDE.equivalentMass(Ion.SODIUM).in(GRAM_PER_EQUIVALENT);
    private static final double POTASSIUM_CHLORIDE =
            Compound.POTASSIUM_CHLORIDE.equivalentMass(Ion.POTASSIUM).in(GRAM_PER_EQUIVALENT);

    private SaltChecks() {}

    static Topic theory() {
        Result sodium = new Result(
                "NaCl-1000",
                "NaCl for 1000 grains",
                "lb",
                for1000Grains(SODIUM_CHLORIDE).in(POUND));
        Result limit = new Result("NaCl-limit", "hardness for 1 lb of NaCl", "grains", grainsPerPound(SODIUM_CHLORIDE));
        return new Topic(
                "Salt by theory",
                "Two NaCl for one CaCO₃. No softener reaches this limit; the standards below ask for about half of it.",
                List.of(
                        new Result("NaCl-CaCO3", "NaCl for 1 g of CaCO₃", "g", SODIUM_CHLORIDE / CALCIUM_CARBONATE)
                                .computed("1.16779570"),
                        sodium.trade("0.17"),
                        sodium.computed("0.166827957"),
                        new Result(
                                        "NaCl-1000-g",
                                        "NaCl for 1000 grains",
                                        "g",
                                        for1000Grains(SODIUM_CHLORIDE).in(GRAM))
                                .computed("75.6718882"),
                        new Result(
                                        "KCl-1000",
                                        "KCl for 1000 grains",
                                        "lb",
                                        for1000Grains(POTASSIUM_CHLORIDE).in(POUND))
                                .computed("0.212811268"),
                        limit.against(Figure.within("6000", "50"), Source.SOFTENING_TRADE, Status.COMMON_PRACTICE)
                                .remarking("rounded to hundreds"),
                        limit.computed("5994.1992"),
                        new Result(
                                        "KCl-limit",
                                        "hardness for 1 lb of KCl",
                                        "grains",
                                        grainsPerPound(POTASSIUM_CHLORIDE))
                                .computed("4698.9993"),
                        new Result("KCl-NaCl", "KCl for 1 g of NaCl", "g", POTASSIUM_CHLORIDE / SODIUM_CHLORIDE)
                                .trade("1.2756")));
    }

    private static WaterQuantity<Mass> for1000Grains(double gramsPerEquivalent) {
        double equivalents = WaterUnits.mass(1000, GRAIN).in(GRAM) / CALCIUM_CARBONATE;
        return WaterUnits.mass(equivalents * gramsPerEquivalent, GRAM);
    }

    private static double grainsPerPound(double gramsPerEquivalent) {
        double equivalents = WaterUnits.mass(1, POUND).in(GRAM) / gramsPerEquivalent;
        return WaterUnits.mass(equivalents * CALCIUM_CARBONATE, GRAM).in(GRAIN);
    }

    static Topic efficiency() {
        return new Topic(
                "Salt efficiency",
                "Limits of standards, restated.",
                List.of(
                        restated(3350, Source.NSF_44, "478.571"),
                        restated(4000, Source.CALIFORNIA, "571.429"),
                        restated(2850, Source.CALIFORNIA, "407.143"),
                        new Result("efficiency-share", "3350 grains/lb of theory", "%", percentOfTheory(3350))
                                .computed("55.887"),
                        new Result("efficiency-share-4000", "4000 grains/lb of theory", "%", percentOfTheory(4000))
                                .computed("66.731"),
                        new Result("efficiency-eq", "NaCl for 1 eq at 3350 grains/lb", "g", perEquivalent(3350))
                                .computed("104.567"),
                        new Result("efficiency-eq-4000", "NaCl for 1 eq at 4000 grains/lb", "g", perEquivalent(4000))
                                .computed("87.575"),
                        new Result("regeneration-water", "5 US gallons for 1000 grains", "L/g CaCO₃", waterPerGram())
                                .computed("0.2921")));
    }

    private static PublishedCheck restated(int grainsPerPound, Source source, String published) {
        return new Result(
                        "efficiency-" + grainsPerPound,
                        grainsPerPound + " grains/lb",
                        "g CaCO₃ per kg of NaCl",
                        WaterUnits.mass(grainsPerPound, GRAIN).in(GRAM)
                                / WaterUnits.mass(1, POUND).in(KILOGRAM))
                .printed(published, source, Status.COMPUTED);
    }

    private static double percentOfTheory(double grainsPerPound) {
        return 100 * grainsPerPound / grainsPerPound(SODIUM_CHLORIDE);
    }

    private static double perEquivalent(double grainsPerPound) {
        double gramsOfHardness = WaterUnits.mass(grainsPerPound, GRAIN).in(GRAM);
        return WaterUnits.mass(1, POUND).in(GRAM) / gramsOfHardness * CALCIUM_CARBONATE;
    }

    private static double waterPerGram() {
        return WaterUnits.volume(5, WaterUnits.US_GALLON).in(WaterUnits.LITRE)
                / WaterUnits.mass(1000, GRAIN).in(GRAM);
    }

    static Topic capacity() {
        Result kilograin = new Result("kilograin", "1 kgr/ft³", "g/L CaCO₃", grams(1));
        return new Topic(
                "Capacity and salt dose of resin",
                "The sizing table of the trade, checked through grams per litre and back.",
                List.of(
                        kilograin.trade("2.29"),
                        kilograin.computed("2.28835191"),
                        new Result("kilograin-eq", "1 kgr/ft³", "eq/L", equivalents(1)).computed("0.0457277124"),
                        new Result("capacity-2.0", "2.0 eq/L", "kgr/ft³", kilograins(2.0))
                                .printed("43.7", Source.RESIN_SHEET, Status.VERIFIED),
                        new Result("capacity-1.8", "1.8 eq/L", "kgr/ft³", kilograins(1.8))
                                .printed("39.3", Source.RESIN_SHEET, Status.VERIFIED)
                                .differing(
                                        "as if printed with 50 g/eq of CaCO₃ instead of 50.043", byPlainFifty("1.8")),
                        dose(20, 6, "3333"),
                        dose(24, 8, "3000"),
                        dose(27, 10, "2700"),
                        dose(30, 15, "2000"),
                        new Result("brine", "0.317 kg/L of NaCl, saturated brine at 20 °C", "lb per US gallon", brine())
                                .printed("2.65", Source.CRC, Status.FROM_MEMORY)));
    }

    private static double grams(double kilograinsPerCubicFoot) {
        return ExchangeCapacity.of(kilograinsPerCubicFoot, ExchangeCapacity.KILOGRAIN_PER_CUBIC_FOOT)
                .in(ExchangeCapacity.GRAM_PER_LITRE_CALCIUM_CARBONATE);
    }

    private static double equivalents(double kilograinsPerCubicFoot) {
        return ExchangeCapacity.of(kilograinsPerCubicFoot, ExchangeCapacity.KILOGRAIN_PER_CUBIC_FOOT)
                .in(ExchangeCapacity.EQUIVALENT_PER_LITRE);
    }

    private static double kilograins(double equivalentsPerLitre) {
        return ExchangeCapacity.of(equivalentsPerLitre, ExchangeCapacity.EQUIVALENT_PER_LITRE)
                .in(ExchangeCapacity.KILOGRAIN_PER_CUBIC_FOOT);
    }

    private static BigDecimal byPlainFifty(String equivalentsPerLitre) {
        return new BigDecimal(equivalentsPerLitre)
                .multiply(new BigDecimal(50))
                .multiply(new BigDecimal("28.316846592"))
                .divide(new BigDecimal("64.79891"), MathContext.DECIMAL64);
    }

    private static PublishedCheck dose(int kilograins, int pounds, String grainsPerPound) {
        double gramsOfSalt = SaltDose.of(pounds, SaltDose.POUND_PER_CUBIC_FOOT).in(SaltDose.GRAM_PER_LITRE);
        double ours =
                grams(kilograins) / gramsOfSalt * WaterUnits.mass(1, POUND).in(GRAIN);
        return new Result(
                        "dose-" + pounds, kilograins + " kgr/ft³ with " + pounds + " lb/ft³ of salt", "grains/lb", ours)
                .printed(grainsPerPound, Source.TRADE_PAGE, Status.VERIFIED);
    }

    private static double brine() {
        return MassConcentration.of(0.317, MassConcentration.KILOGRAM_PER_LITRE)
                .in(MassConcentration.POUND_PER_US_GALLON);
    }
}
