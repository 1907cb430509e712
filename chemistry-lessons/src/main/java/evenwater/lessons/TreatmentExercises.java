package evenwater.lessons;

import static evenwater.lessons.ChargeExercises.SCALES;
import static evenwater.lessons.UnitExercises.VOLUMES;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.kernel.EquilibriumConstant;
import evenwater.chemistry.kernel.Species;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Blending;
import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Water;
import evenwater.chemistry.worked.WorkedSolutions;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import javax.measure.Unit;
import javax.measure.quantity.Volume;

/** Level 3: several steps. */
final class TreatmentExercises {

    private TreatmentExercises() {}

    static Exercise next(Dice dice) {
        return switch (dice.whole(1, 6)) {
            case 1 -> bypass(dice);
            case 2 -> blend(dice);
            case 3 -> hardening(dice);
            case 4 -> buffering(dice);
            case 5 -> dose(dice);
            default -> carbonDioxide(dice);
        };
    }

    private static Exercise bypass(Dice dice) {
        Unit<Hardness> scale = dice.one(SCALES);
        int calcium = dice.whole(40, 180);
        Water water = ChargeExercises.calciumWater(calcium, calcium / 25);
        double raw = water.hardness().in(scale);
        Hardness leakage = Hardness.of(twoDigits(raw * dice.whole(1, 5) / 100), scale);
        Hardness wanted = Hardness.of(twoDigits(raw * dice.whole(20, 60) / 100), scale);
        return new Exercise(
                "Behind the softener of " + dice.house() + " " + leakage
                        + " of hardness leak through. The raw water has " + calcium
                        + " mg/L of calcium, no magnesium and no sodium. How much of it must go past the resin for a blend of "
                        + wanted + ", and how much sodium is in the blend?",
                WorkedSolutions.softening(Softener.withSodium().leaking(leakage).bypassFor(wanted), water, scale));
    }

    private static Exercise blend(Dice dice) {
        Unit<Hardness> scale = dice.one(SCALES);
        double tap = twoDigits(
                Hardness.of(dice.tenths(2, 5), Hardness.MILLIMOLE_PER_LITRE).in(scale));
        double spring = twoDigits(tap / dice.whole(4, 9));
        Hardness wanted = Hardness.of(twoDigits(spring + (tap - spring) * dice.whole(25, 75) / 100), scale);
        return new Exercise(
                dice.person() + " has a tap of " + Hardness.of(tap, scale) + " and a spring of "
                        + Hardness.of(spring, scale) + ", both hard by calcium bicarbonate alone, and wants " + wanted
                        + ". What share comes from the spring, and what is the blend?",
                WorkedSolutions.blending(
                        Blending.reaching(wanted, ChargeExercises.hard(Hardness.of(spring, scale))),
                        ChargeExercises.hard(Hardness.of(tap, scale)),
                        scale));
    }

    private static Exercise hardening(Dice dice) {
        Compound compound = Compound.named(dice.one(
                List.of("magnesium sulfate heptahydrate", "calcium chloride dihydrate", "calcium sulfate dihydrate")));
        Hardness rise = Hardness.of(dice.tenths(1, 5), Hardness.GERMAN_DEGREE);
        WaterQuantity<Volume> volume = WaterUnits.volume(dice.whole(10, 90), dice.one(VOLUMES));
        return new Exercise(
                "How many grams of " + compound.name() + " raise the hardness of " + volume + " in " + dice.fishRoom()
                        + " by " + rise + "?",
                WorkedSolutions.raisingHardness(compound, rise, volume));
    }

    private static Exercise buffering(Dice dice) {
        Compound compound = Compound.named(
                dice.one(List.of("sodium bicarbonate", "potassium bicarbonate", "sodium carbonate decahydrate")));
        Alkalinity rise = Alkalinity.of(dice.tenths(0.5, 4), Alkalinity.DEGREE_OF_CARBONATE_HARDNESS);
        WaterQuantity<Volume> volume = WaterUnits.volume(dice.whole(10, 90), dice.one(VOLUMES));
        return new Exercise(
                dice.person() + " wants " + rise + " more alkalinity in " + volume + ". How many grams of "
                        + compound.name() + " are that?",
                WorkedSolutions.raisingAlkalinity(compound, rise, volume));
    }

    private static Exercise dose(Dice dice) {
        Compound compound = Compound.named(dice.one(List.of(
                "magnesium sulfate heptahydrate",
                "calcium chloride dihydrate",
                "potassium bicarbonate",
                "potassium chloride")));
        Dosing dosing = Dosing.of(
                compound,
                WaterUnits.mass(dice.whole(2, 25), WaterUnits.GRAM),
                WaterUnits.volume(dice.whole(20, 120), dice.one(VOLUMES)));
        return new Exercise(
                "Somebody tips " + dosing.mass() + " of " + compound.name() + " into a tank of " + dosing.volume()
                        + ". What does that bring?",
                WorkedSolutions.dosing(dosing));
    }

    /** From the carbon dioxide to the pH, so that the tank is one that somebody could have. */
    private static Exercise carbonDioxide(Dice dice) {
        int degrees = dice.whole(2, 10);
        Alkalinity alkalinity = Alkalinity.of(degrees, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS);
        double roughly = 7 - Math.log10(dice.whole(5, 35) / (3.0 * degrees));
        double pH = Math.rint(roughly * 10) / 10;
        int celsius = dice.whole(18, 28);
        Speciation speciation = Speciation.of(Water.builder()
                .total(
                        Ion.SODIUM,
                        AmountConcentration.of(
                                alkalinity.in(Alkalinity.MILLIEQUIVALENT_PER_LITRE),
                                AmountConcentration.MILLIMOLE_PER_LITRE))
                .alkalinity(alkalinity)
                .measuredPH(pH)
                .temperature(WaterUnits.temperature(celsius, WaterUnits.CELSIUS))
                .build());
        double lgK = EquilibriumConstant.CARBONIC_ACID_1.ln(celsius + 273.15) / Math.log(10);
        return new Exercise(
                dice.person() + " measures pH " + pH + " and " + alkalinity + " in a planted tank of " + celsius
                        + " °C; its alkalinity is sodium bicarbonate and nothing else, "
                        + fourPlaces(speciation
                                .concentration(Species.BICARBONATE)
                                .in(AmountConcentration.MILLIMOLE_PER_LITRE))
                        + " mmol/L of it free HCO₃⁻. At this temperature lg K₁ of carbonic acid is " + fourPlaces(lgK)
                        + "; in this water the activity coefficients are "
                        + fourPlaces(speciation.activityCoefficient(Species.BICARBONATE)) + " for bicarbonate and "
                        + fourPlaces(speciation.activityCoefficient(Species.CARBON_DIOXIDE))
                        + " for CO₂. How much carbon dioxide is in it?",
                WorkedSolutions.carbonDioxide(speciation));
    }

    private static BigDecimal fourPlaces(double value) {
        return new BigDecimal(value).setScale(4, RoundingMode.HALF_EVEN);
    }

    private static double twoDigits(double value) {
        double step = value >= 100 ? 10 : value >= 10 ? 1 : value >= 1 ? 0.1 : 0.01;
        return Math.rint(value / step) / (1 / step);
    }
}
