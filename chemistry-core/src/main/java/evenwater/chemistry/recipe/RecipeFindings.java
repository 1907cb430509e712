package evenwater.chemistry.recipe;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.equilibrium.GasExchange;
import evenwater.chemistry.equilibrium.Mineral;
import evenwater.chemistry.equilibrium.MineralEquilibrium;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.recipe.RecipeFinding.Kind;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Dissolving;
import evenwater.chemistry.substance.Formula;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.WaterCondition;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;

/** What to mind about a recipe, found from its doses and its water. */
final class RecipeFindings {

    /** Compounds of which pure water takes up less dissolve slowly; own rule. */
    private static final double SPARING_IN_GRAMS_PER_KILOGRAM = 5;

    /** What rounds to an index of 0.00 is not told; own rule. */
    private static final double ROUNDS_TO_NOTHING = 0.005;

    private static final List<Mineral> MINERALS =
            List.of(Mineral.CALCITE, Mineral.GYPSUM, Mineral.FLUORITE, Mineral.BRUCITE);

    private final Recipe recipe;
    private final List<RecipeFinding> found = new ArrayList<>();

    private RecipeFindings(Recipe recipe) {
        this.recipe = recipe;
    }

    static List<RecipeFinding> of(Recipe recipe) {
        RecipeFindings findings = new RecipeFindings(recipe);
        recipe.doses().forEach(findings::dissolving);
        findings.saturation();
        findings.bottles();
        recipe.doses().forEach(findings::caution);
        return List.copyOf(findings.found);
    }

    private void dissolving(RecipeDose dose) {
        String name = dose.compound().name();
        dose.compound().solubility().ifPresent(solubility -> {
            String takesUp = "pure water takes up " + solubility.massPerMassOfWater() + " of " + solubility.basis();
            if (dose.dosing().exceedsSolubility()) {
                add(
                        Kind.DOES_NOT_DISSOLVE,
                        dose.dosing().dose().toText(Locale.ROOT, 3) + " of " + name + " do not simply dissolve: "
                                + takesUp
                                + "; how much more this water takes, if it holds CO₂ or acid, its saturation tells");
            } else if (solubility.massPerMassOfWater().in(WaterUnits.GRAM_PER_KILOGRAM)
                    < SPARING_IN_GRAMS_PER_KILOGRAM) {
                add(Kind.DISSOLVES_SLOWLY, name + " dissolves slowly: " + takesUp);
            }
        });
        dose.stock()
                .filter(stock -> stock.dissolving()
                        .filter(Dissolving.MAY_NOT_DISSOLVE::equals)
                        .isPresent())
                .ifPresent(stock ->
                        add(Kind.STOCK_MAY_NOT_DISSOLVE, stock + " is near saturation and may not dissolve at 20 °C"));
    }

    private void saturation() {
        WaterCondition closed = recipe.closed();
        if (closed.pH().isEmpty()) {
            add(Kind.PH_UNKNOWN, "pH and saturation closed to the air are unknown: " + closed.whyUnknown());
        }
        Optional<WaterCondition> open = recipe.openToAir();
        for (Mineral mineral : MINERALS) {
            List<String> states = new ArrayList<>();
            oversaturated(closed, mineral, "closed to the air", water -> MineralEquilibrium.saturated(water, mineral))
                    .ifPresent(states::add);
            open.flatMap(condition -> oversaturated(
                            condition,
                            mineral,
                            "in equilibrium with outdoor air",
                            water -> MineralEquilibrium.saturated(water, mineral, GasExchange.OUTDOOR_AIR)))
                    .ifPresent(states::add);
            if (!states.isEmpty()) {
                add(
                        Kind.MAY_PRECIPITATE,
                        "the water may drop " + mineral + ": " + String.join(", ", states) + usual(mineral));
            }
        }
    }

    private static String usual(Mineral mineral) {
        return mineral == Mineral.CALCITE
                ? "; an index of a few tenths is usual in hard tanks, and below some 0.3 to 0.5 calcite does not drop without a seed"
                : "";
    }

    private static Optional<String> oversaturated(
            WaterCondition condition, Mineral mineral, String where, UnaryOperator<Water> saturated) {
        return condition.speciation().flatMap(species -> {
            OptionalDouble index = species.saturationIndex(mineral);
            return index.isPresent() && index.getAsDouble() > ROUNDS_TO_NOTHING
                    ? Optional.of(String.format(Locale.ROOT, "index %+.2f %s", index.getAsDouble(), where)
                            + amount(species.water(), mineral, saturated))
                    : Optional.empty();
        });
    }

    private static String amount(Water water, Mineral mineral, UnaryOperator<Water> saturated) {
        Ion metal = mineral.ions().containsKey(Ion.CALCIUM) ? Ion.CALCIUM : Ion.MAGNESIUM;
        try {
            double millimoles = water.total(metal).in(MILLIMOLE_PER_LITRE)
                    - saturated.apply(water).total(metal).in(MILLIMOLE_PER_LITRE);
            double milligrams =
                    millimoles * Formula.parse(mineral.formula()).molarMass().in(MolarMass.GRAM_PER_MOLE);
            return String.format(Locale.ROOT, " (%.3g mg/L of %s until equilibrium)", milligrams, mineral.formula());
        } catch (NoAnswerException beyondTheModel) {
            return "";
        }
    }

    /** Every two doses once. */
    private void bottles() {
        List<RecipeDose> doses = recipe.doses();
        for (int i = 0; i < doses.size(); i++) {
            for (int j = i + 1; j < doses.size(); j++) {
                Compound one = doses.get(i).compound();
                Compound other = doses.get(j).compound();
                clash(one, other)
                        .or(() -> clash(other, one))
                        .ifPresent(why -> add(
                                Kind.NOT_IN_ONE_BOTTLE,
                                one.name() + " and " + other.name() + " must not share a bottle of stock: " + why));
            }
        }
    }

    /** Why the cation of one must not meet the anion of another in a concentrate; common practice, no source. */
    private static Optional<String> clash(Compound cation, Compound anion) {
        Set<Ion> cations = cation.ions().keySet();
        boolean carbonate = anion.ions().keySet().stream()
                .anyMatch(ion -> ion.referenceForm().equals(Ion.CARBON_DIOXIDE));
        boolean phosphate = anion.ions().keySet().stream()
                .anyMatch(ion -> ion.referenceForm().equals(Ion.DIHYDROGEN_PHOSPHATE));
        boolean hydroxide = anion.ions().containsKey(Ion.HYDROXIDE);
        boolean earth =
                cations.contains(Ion.CALCIUM) || cations.contains(Ion.MAGNESIUM) || cations.contains(Ion.STRONTIUM);
        boolean heavyEarth = cations.contains(Ion.CALCIUM) || cations.contains(Ion.STRONTIUM);
        if (cations.contains(Ion.HYDROGEN) && (carbonate || hydroxide)) {
            return Optional.of("acid meets base" + (carbonate ? " and CO₂ foams out" : ""));
        }
        if (earth && (carbonate || phosphate || hydroxide)) {
            return Optional.of((carbonate ? "carbonate" : phosphate ? "phosphate" : "hydroxide") + " drops out");
        }
        if (heavyEarth && anion.ions().containsKey(Ion.SULFATE)) {
            return Optional.of("sulfate drops out as gypsum or its like");
        }
        return heavyEarth && anion.ions().containsKey(Ion.FLUORIDE)
                ? Optional.of("fluoride drops out")
                : Optional.empty();
    }

    private void caution(RecipeDose dose) {
        if (!dose.compound().caution().isEmpty()) {
            add(Kind.CAUTION, dose.compound().name() + ": " + dose.compound().caution());
        }
    }

    private void add(Kind kind, String words) {
        found.add(new RecipeFinding(kind, words));
    }
}
