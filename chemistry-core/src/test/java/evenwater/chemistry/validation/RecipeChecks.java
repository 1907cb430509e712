package evenwater.chemistry.validation;

import static evenwater.chemistry.quantity.Alkalinity.DEGREE_OF_CARBONATE_HARDNESS;
import static evenwater.chemistry.quantity.Hardness.GERMAN_DEGREE;
import static evenwater.chemistry.quantity.WaterUnits.GRAM;
import static evenwater.chemistry.quantity.WaterUnits.LITRE;
import static evenwater.chemistry.substance.Compound.CALCIUM_CHLORIDE_DIHYDRATE;
import static evenwater.chemistry.substance.Compound.CALCIUM_SULFATE_DIHYDRATE;
import static evenwater.chemistry.substance.Compound.MAGNESIUM_SULFATE_ANHYDROUS;
import static evenwater.chemistry.substance.Compound.MAGNESIUM_SULFATE_HEPTAHYDRATE;
import static evenwater.chemistry.substance.Compound.POTASSIUM_CHLORIDE;
import static evenwater.chemistry.substance.Compound.SODIUM_BICARBONATE;

import evenwater.chemistry.analysis.CalciumToMagnesium;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.recipe.Recipe;
import evenwater.chemistry.recipe.RecipeBuilder;
import evenwater.chemistry.recipe.Target;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Doses and shares that bring a water to its targets. */
final class RecipeChecks {

    private RecipeChecks() {}

    static Topic topic() {
        List<PublishedCheck> checks = new ArrayList<>(reconstituted());
        checks.addAll(byHand());
        checks.addAll(factors());
        checks.addAll(blends());
        return new Topic(
                "Recipes",
                "The doses in pure water, or shares of waters, that meet targets: back from a composition to its recipe, and by hand.",
                checks);
    }

    /** Targets are the composition; the shelf holds more than is needed. */
    private static List<PublishedCheck> reconstituted() {
        List<Map.Entry<Compound, String>> published = List.of(
                Map.entry(SODIUM_BICARBONATE, "96"),
                Map.entry(CALCIUM_SULFATE_DIHYDRATE, "60"),
                Map.entry(MAGNESIUM_SULFATE_ANHYDROUS, "60"),
                Map.entry(POTASSIUM_CHLORIDE, "4"));
        Water water = Water.pure();
        for (Map.Entry<Compound, String> dose : published) {
            water = water.plus(Change.dissolving(
                    dose.getKey(),
                    MassConcentration.of(Double.parseDouble(dose.getValue()), MassConcentration.MILLIGRAM_PER_LITRE)));
        }
        RecipeBuilder builder = in(1000).alkalinity(Target.exactly(water.alkalinity()))
                .shelf(published.stream().map(Map.Entry::getKey).toArray(Compound[]::new))
                .shelf(
                        Compound.SODIUM_CHLORIDE,
                        Compound.SODIUM_SULFATE,
                        Compound.POTASSIUM_BICARBONATE,
                        CALCIUM_CHLORIDE_DIHYDRATE,
                        MAGNESIUM_SULFATE_HEPTAHYDRATE);
        for (Ion ion : List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.SODIUM, Ion.POTASSIUM, Ion.CHLORIDE, Ion.SULFATE)) {
            builder.total(ion, Target.exactly(water.total(ion)));
        }
        Recipe recipe = builder.solve();
        return published.stream()
                .map(dose -> new Result(
                                "recipe-hard-water-" + dose.getKey().name(),
                                dose.getKey().name() + " for moderately hard water",
                                "mg/L",
                                grams(recipe, dose.getKey()))
                        .against(Figure.within(dose.getValue(), "1E-9"), Source.EPA_2002, Status.VERIFIED))
                .toList();
    }

    private static List<PublishedCheck> byHand() {
        Recipe one = in(60).hardness(Target.exactly(Hardness.of(6, GERMAN_DEGREE)))
                .shelf(CALCIUM_CHLORIDE_DIHYDRATE)
                .solve();
        Recipe three = in(100).hardness(Target.exactly(Hardness.of(1, Hardness.MILLIMOLE_PER_LITRE)))
                .calciumToMagnesium(Target.exactly(CalciumToMagnesium.byAmount(3)))
                .alkalinity(Target.exactly(Alkalinity.of(4, DEGREE_OF_CARBONATE_HARDNESS)))
                .shelf(CALCIUM_CHLORIDE_DIHYDRATE, MAGNESIUM_SULFATE_HEPTAHYDRATE, SODIUM_BICARBONATE)
                .solve();
        Recipe salt = in(1).conductivity(
                        Target.exactly(Conductivity.of(1413, Conductivity.MICROSIEMENS_PER_CENTIMETRE)))
                .shelf(POTASSIUM_CHLORIDE)
                .solve();
        String what = " for 1 mmol/L, Ca : Mg = 3 : 1 and 4 °dKH in 100 L";
        return List.of(
                dose("one-salt", one, CALCIUM_CHLORIDE_DIHYDRATE, " for 6 °dH in 60 L")
                        .computed("9.437538"),
                dose("three-salts", three, CALCIUM_CHLORIDE_DIHYDRATE, what).computed("11.0256"),
                dose("three-salts", three, MAGNESIUM_SULFATE_HEPTAHYDRATE, what).computed("6.16165"),
                dose("three-salts", three, SODIUM_BICARBONATE, what).computed("11.984379"),
                dose("conductivity", salt, POTASSIUM_CHLORIDE, " for 1413 µS/cm in 1 L")
                        .against(Figure.within("0.7455", "0.0075"), Source.ISO_7888, Status.FROM_MEMORY)
                        .remarking("0.01 mol/L; the model of conductivity is good to 1 %"));
    }

    private static List<PublishedCheck> factors() {
        return List.of(
                factor(SODIUM_BICARBONATE, "1.68"),
                factor(Compound.SODIUM_CARBONATE_ANHYDROUS, "1.06"),
                factor(Compound.CALCIUM_HYDROXIDE, "0.74"),
                factor(Compound.POTASSIUM_BICARBONATE, "2.00"));
    }

    private static PublishedCheck factor(Compound compound, String milligrams) {
        Recipe recipe = in(1000).alkalinity(
                        Target.exactly(Alkalinity.of(1, Alkalinity.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE)))
                .shelf(compound)
                .solve();
        return new Result(
                        "recipe-alkalinity-" + compound.name(),
                        compound.name() + " for 1 mg/L CaCO₃ of alkalinity",
                        "mg/L",
                        grams(recipe, compound))
                .printed(milligrams, Source.LABORATORIES, Status.COMMON_PRACTICE);
    }

    private static List<PublishedCheck> blends() {
        Recipe bypass = Recipe.blending(WaterUnits.volume(1, LITRE))
                .source("raw", hard(280))
                .source("softened", Water.pure())
                .hardness(Target.exactly(Hardness.of(85, Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE)))
                .solve();
        Result share = new Result(
                "recipe-blend",
                "share of a water of 280 that makes 85 mg/L CaCO₃ with one of 0",
                "",
                bypass.shares().get(0).share());
        return List.of(
                share.printed("0.30", Source.DAVIS_CORNWELL, Status.FROM_MEMORY)
                        .remarking("the bypass of its softener, as a blend"),
                share.computed("0.30357143"));
    }

    private static Water hard(double milligrams) {
        double millimoles = Hardness.of(milligrams, Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE)
                .in(Hardness.MILLIMOLE_PER_LITRE);
        return Water.builder()
                .total(Ion.CALCIUM, AmountConcentration.of(millimoles, AmountConcentration.MILLIMOLE_PER_LITRE))
                .build();
    }

    private static RecipeBuilder in(double litres) {
        return Recipe.builder(Water.pure(), WaterUnits.volume(litres, LITRE));
    }

    private static Result dose(String id, Recipe recipe, Compound compound, String what) {
        return new Result("recipe-" + id + "-" + compound.name(), compound.name() + what, "g", grams(recipe, compound));
    }

    private static double grams(Recipe recipe, Compound compound) {
        return recipe.doses().stream()
                .filter(dose -> dose.compound().equals(compound))
                .mapToDouble(dose -> dose.mass().in(GRAM))
                .sum();
    }
}
