package evenwater.chemistry.validation;

import static evenwater.chemistry.quantity.Hardness.GERMAN_DEGREE;
import static evenwater.chemistry.quantity.Hardness.GRAIN_PER_US_GALLON;
import static evenwater.chemistry.quantity.Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE;
import static evenwater.chemistry.quantity.Hardness.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.analysis.IronCompensation;
import evenwater.chemistry.exchange.CapacityCurve;
import evenwater.chemistry.planning.HouseholdUse;
import evenwater.chemistry.planning.SoftenerPlan;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.CompensatedHardness;
import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Water;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import javax.measure.Unit;

/** What a softener exchanges, how much raw water passes by it, and how it is sized. */
final class SofteningChecks {

    /** The textbook names none; its capacity is that of any. */
    private static final SaltDose TEXTBOOK_DOSE = SaltDose.of(100, SaltDose.GRAM_PER_LITRE);

    private SofteningChecks() {}

    static Topic exchange() {
        Softener sodium = Softener.withSodium();
        Softener potassium = Softener.withPotassium();
        Result perGrain = added(sodium, 1, GRAIN_PER_US_GALLON);
        return new Topic(
                "Softening: what is exchanged",
                "Sodium or potassium that enters when hardness leaves, charge for charge.",
                List.of(
                        added(sodium, 1, MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE).trade("0.46"),
                        perGrain.trade("7.86"),
                        perGrain.trade("7.9"),
                        perGrain.computed("7.86412132"),
                        added(sodium, 15, GRAIN_PER_US_GALLON).computed("117.96"),
                        added(sodium, 1, GERMAN_DEGREE).trade("8.2"),
                        added(sodium, 1, GERMAN_DEGREE).computed("8.19944006"),
                        added(sodium, 1, MILLIMOLE_PER_LITRE).computed("45.98"),
                        added(potassium, 1, MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE)
                                .computed("0.781288092"),
                        added(potassium, 1, GRAIN_PER_US_GALLON).computed("13.3741373")));
    }

    private static Result added(Softener softener, double hardness, Unit<Hardness> unit) {
        Ion ion = softener.regenerant();
        Hardness removed = Hardness.of(hardness, unit);
        return new Result(
                "added-" + ion.name() + "-" + removed,
                ion.name() + " added for " + removed + " of hardness",
                "mg/L",
                softener.treat(hard(removed)).total(ion).in(ion.milligramPerLitre()));
    }

    /** A water of calcium bicarbonate alone. */
    private static Water hard(Hardness hardness) {
        return Water.builder()
                .total(
                        Ion.CALCIUM,
                        AmountConcentration.of(
                                hardness.in(MILLIMOLE_PER_LITRE), AmountConcentration.MILLIMOLE_PER_LITRE))
                .build();
    }

    static Topic sizing() {
        Result bypass = new Result("bypass", "bypass share, 280 to 85 mg/L CaCO₃", "", bypassShare());
        Result days =
                new Result("bypass-days", "time between regenerations, 57 kg/m³ CaCO₃, 0.1 m³, 2 m³/d", "d", days());
        Result iron = new Result("iron-exchanged", "1 mg/L of iron(II) exchanges like", "gpg", exchangedLikeIron());
        return new Topic(
                "Softening: bypass and sizing",
                "",
                List.of(
                        bypass.printed("0.30", Source.DAVIS_CORNWELL, Status.FROM_MEMORY),
                        bypass.printed("0.30357", Source.ARITHMETIC, Status.COMPUTED),
                        days.printed("14.5", Source.DAVIS_CORNWELL, Status.FROM_MEMORY)
                                .differing(
                                        "the example goes on with the rounded bypass of 0.30",
                                        new BigDecimal("5.7")
                                                .divide(
                                                        new BigDecimal("0.70").multiply(new BigDecimal("0.56")),
                                                        MathContext.DECIMAL64)),
                        days.computed("14.62"),
                        new Result("load", "hardness of 400 US gallons at 15 gpg", "grains/d", dailyGrains())
                                .printed("6000", Source.TRADE_PAGE, Status.VERIFIED),
                        new Result("days-20000", "20 000 grains last for", "d", lasting(6))
                                .printed("3.3", Source.TRADE_PAGE, Status.VERIFIED),
                        new Result("days-30000", "30 000 grains last for", "d", lasting(15))
                                .printed("5", Source.TRADE_PAGE, Status.VERIFIED),
                        new Result("iron-surcharge", "surcharge for 1 mg/L of iron", "gpg", surcharge(1, 0))
                                .printed("3", Source.TRADE_PAGE, Status.VERIFIED)
                                .remarking("others print up to 5"),
                        new Result("manganese-surcharge", "surcharge for 1 mg/L of manganese", "gpg", surcharge(0, 1))
                                .printed("2", Source.TRADE_PAGE, Status.VERIFIED),
                        iron.computed("0.1047").remarking("the surcharge is for fouling, not for charge"),
                        new Result("bed-volumes", "1 US gallon per minute and ft³", "bed volumes/h", bedVolumes())
                                .printed("8.02", Source.RESIN_MAKERS, Status.COMMON_PRACTICE)));
    }

    private static double bypassShare() {
        return textbook().bypassShare();
    }

    private static double days() {
        return textbook().at(TEXTBOOK_DOSE).days();
    }

    private static SoftenerPlan textbook() {
        ExchangeCapacity capacity = ExchangeCapacity.of(57, ExchangeCapacity.GRAM_PER_LITRE_CALCIUM_CARBONATE);
        return SoftenerPlan.of(
                        hard(Hardness.of(280, MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE)),
                        HouseholdUse.ofDaily(WaterUnits.volume(2000, WaterUnits.LITRE)),
                        WaterUnits.volume(0.1, WaterUnits.CUBIC_METRE))
                .with(CapacityCurve.of(
                        Map.of(TEXTBOOK_DOSE, capacity, TEXTBOOK_DOSE.multiply(2), capacity), "the textbook"))
                .withReserve(0)
                .leaving(Hardness.of(85, MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE));
    }

    private static double lasting(double pounds) {
        return SoftenerPlan.of(
                        hard(Hardness.of(15, GRAIN_PER_US_GALLON)),
                        HouseholdUse.ofPeople(5, WaterUnits.volume(80, WaterUnits.US_GALLON)),
                        WaterUnits.volume(1, WaterUnits.CUBIC_FOOT))
                .withReserve(0)
                .at(SaltDose.of(pounds, SaltDose.POUND_PER_CUBIC_FOOT))
                .days();
    }

    private static double dailyGrains() {
        double milligrams = Hardness.of(15, GRAIN_PER_US_GALLON).in(MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE)
                * HouseholdUse.ofPeople(5, WaterUnits.volume(80, WaterUnits.US_GALLON))
                        .daily()
                        .in(WaterUnits.LITRE);
        return WaterUnits.mass(milligrams, WaterUnits.MILLIGRAM).in(WaterUnits.GRAIN);
    }

    private static double surcharge(double ironInMilligrams, double manganeseInMilligrams) {
        return IronCompensation.USUAL
                .of(
                        Hardness.of(0, GRAIN_PER_US_GALLON),
                        AmountConcentration.of(ironInMilligrams, Ion.IRON_II.milligramPerLitre()),
                        AmountConcentration.of(manganeseInMilligrams, Ion.MANGANESE_II.milligramPerLitre()))
                .in(CompensatedHardness.GRAIN_PER_US_GALLON);
    }

    private static double exchangedLikeIron() {
        double millimoles =
                AmountConcentration.of(1, Ion.IRON_II.milligramPerLitre()).in(AmountConcentration.MILLIMOLE_PER_LITRE);
        return Hardness.of(millimoles, MILLIMOLE_PER_LITRE).in(GRAIN_PER_US_GALLON);
    }

    private static double bedVolumes() {
        return FlowRate.of(1, FlowRate.US_GALLON_PER_MINUTE).in(FlowRate.LITRE_PER_HOUR)
                / WaterUnits.volume(1, WaterUnits.CUBIC_FOOT).in(WaterUnits.LITRE);
    }
}
