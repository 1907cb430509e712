package evenwater.examples.household;

import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Bypass;
import evenwater.chemistry.treatment.MembraneStreams;
import evenwater.chemistry.treatment.Neutralizer;
import evenwater.chemistry.treatment.ReverseOsmosis;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.treatment.Stage;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.HardnessCount;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import javax.measure.Unit;

/** Every stage: what goes in and out in charges that add up to zero, and the water behind it. */
final class StageSection {

    private final Stages stages;
    private final House house;
    private final Speech speech;
    private final Conditions conditions;

    StageSection(Stages stages, House house, Speech speech) {
        this.stages = stages;
        this.house = house;
        this.speech = speech;
        this.conditions = new Conditions(stages);
    }

    void write(Page page) {
        for (int i = 1; i <= stages.last(); i++) {
            Stage stage = stages.ledger().stages().get(i - 1);
            page.heading("Stage " + i + ": " + stage.name());
            if (stages.treatment(i) instanceof Neutralizer filter) {
                new NeutralizerSection(filter, stage.before(), speech).write(page);
            }
            if (stages.treatment(i) instanceof Softener softener) {
                softening(page, i, softener, stage);
            }
            if (stages.treatment(i) instanceof Bypass bypass) {
                page.say("Bypass: " + share(i, bypass::shareOfRaw) + " of the water goes past the membrane.");
            }
            if (stages.treatment(i) instanceof ReverseOsmosis || stages.treatment(i) instanceof Bypass) {
                ReverseOsmosis membrane = house.membrane().orElseThrow();
                membrane(page, i, membrane, membrane.streams(stage.before()));
            }
            page.say(behind(i));
            page.gap().table(ledger(stage.change()));
            page.gap().table(new WaterTable(stages).rows(i));
            conditions.write(page, i);
            warnings(page, i);
        }
        if (stages.last() > 0) {
            page.gap().say(aboutPH());
        }
    }

    private String aboutPH() {
        Optional<Span> inAir = conditions.pHInAir(stages.last());
        if (conditions.pH(stages.last()).isPresent() && inAir.isPresent()) {
            return "pH and CO₂ are computed closed to the air, as in a pipe. Air takes CO₂ out or brings some: at rest with "
                    + "the open air the water behind the last stage has pH "
                    + Page.number(inAir.get().value())
                    + ". Animals and plants move it again: measure it in the tank. A computed conductivity is good to some 3 % where "
                    + "every ion was measured, whatever its digits; a calcite index to 0.05, or to what the pH is good to.";
        }
        return "pH: not known here. " + (house.softener().isPresent() ? "A softener hardly changes it. " : "")
                + "Behind a membrane, or a dose of an acid, a base or a carbonate, it must be measured.";
    }

    private void softening(Page page, int number, Softener softener, Stage stage) {
        double bypass = softener.bypassShare(stage.before());
        double removed = stage.before().hardness().in(Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE)
                - stage.after().hardness().in(Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE);
        Ion ion = softener.regenerant();
        double added = stage.change().total(ion).in(ion.milligramPerLitre());
        if (bypass > 0) {
            page.say(
                    "Bypass: " + share(number, softener::bypassShare)
                            + " of the water goes past the resin. Set it by a measured hardness: what follows holds for the wanted one.");
        }
        if (added == 0) {
            page.say("The water is no harder than the leakage: it passes unchanged.");
            return;
        }
        page.say("Exchanged by charge: " + Page.number(removed) + " mg/L of hardness as CaCO₃" + others(stage.change())
                + " go, " + Page.number(added) + " mg/L of " + ion.name()
                + " come. \"One for one, ppm for ppm\" would be wrong by the charge: it takes two "
                + ion.name() + " for one calcium.");
        List<String> passing = Stream.of(Ion.AMMONIUM, Ion.ALUMINIUM, Ion.ZINC, Ion.COPPER_II, Ion.HYDROGEN)
                .filter(other -> other.equals(Ion.HYDROGEN)
                        ? stage.before().alkalinity().getValue() < 0
                        : stage.before().total(other).getValue() > 0)
                .map(Ion::name)
                .toList();
        if (!passing.isEmpty()) {
            page.say("A resin takes up " + String.join(", ", passing)
                    + " as well, which is not counted here: some more " + ion.name() + " comes for it.");
        }
    }

    /** A share in percent, over everything that the report leaves open. */
    private String share(int stage, ToDoubleFunction<Water> share) {
        Span span = Span.of(
                stages.bounds(stage - 1, water -> WaterUnits.share(share.applyAsDouble(water), WaterUnits.ONE)),
                WaterUnits.PERCENT);
        String range = span.rangeText("%");
        return Page.number(span.value()) + " %" + (range.isEmpty() ? "" : " (" + range + ")");
    }

    /** What goes with calcium and magnesium. */
    private static String others(Change change) {
        StringBuilder others = new StringBuilder();
        for (Ion ion : HardnessCount.EDTA_TITRATION.ions()) {
            if (HardnessCount.CALCIUM_AND_MAGNESIUM.ions().contains(ion)) {
                continue;
            }
            double milligrams = -change.total(ion).in(ion.milligramPerLitre());
            if (milligrams > 0) {
                others.append(" and ")
                        .append(Page.number(milligrams))
                        .append(" mg/L of ")
                        .append(ion.name());
            }
        }
        return others.toString();
    }

    private void membrane(Page page, int stage, ReverseOsmosis membrane, MembraneStreams streams) {
        List<Ion> heldBack = streams.adjusted();
        page.say((heldBack.isEmpty()
                        ? "The rejections pass equal charges."
                        : "The permeate is neutral, so these pass less than their rejections say: "
                                + String.join(
                                        ", ",
                                        heldBack.stream()
                                                .map(StageSection::name)
                                                .toList()) + ".")
                + " Dissolved CO₂ passes, which makes the permeate of most waters acid.");
        if (stages.water(stage - 1).total(Ion.BORIC_ACID).getValue() > 0) {
            page.say(
                    "Boric acid is taken to be held back like single-charged ions unless --reject says otherwise; most "
                            + "membranes hold back much less of it.");
        }
        double permeate = 100 * membrane.recovery();
        page.say("Of 100 L that are fed, " + Page.number(permeate) + " L pass and " + Page.number(100 - permeate)
                + " L go to the drain, with hardness " + drain(stage, membrane, Water::hardness, speech.hardness())
                + ", alkalinity " + drain(stage, membrane, Water::alkalinity, speech.alkalinity()) + ", sodium "
                + drain(stage, membrane, water -> water.total(Ion.SODIUM), Ion.SODIUM.milligramPerLitre())
                + ", chloride "
                + drain(stage, membrane, water -> water.total(Ion.CHLORIDE), Ion.CHLORIDE.milligramPerLitre()) + ".");
    }

    /** A result for the concentrate. */
    private <Q extends WaterQuantity<Q>> String drain(
            int stage, ReverseOsmosis membrane, Function<Water, Q> result, Unit<Q> unit) {
        Function<Water, Q> ofConcentrate =
                water -> result.apply(membrane.streams(water).concentrate());
        return spoken(Span.of(stages.bounds(stage - 1, ofConcentrate), unit), unit.toString());
    }

    private String behind(int stage) {
        Span hardness = Span.of(stages.bounds(stage, Water::hardness), speech.hardness());
        Span alkalinity = Span.of(stages.bounds(stage, Water::alkalinity), speech.alkalinity());
        return "The water behind this stage: hardness "
                + spoken(hardness, speech.hardness().toString()) + ", alkalinity "
                + spoken(alkalinity, speech.alkalinity().toString()) + "."
                + (alkalinity.isBelow(0)
                        ? " Negative alkalinity is free mineral acid: the pH is below about 4.5."
                        : "");
    }

    private static String spoken(Span span, String unit) {
        if (span.isGuess()) {
            return "about " + Page.number(span.value()) + " " + unit + " (what was not measured moves it)";
        }
        if (span.isUnknown()) {
            return "not known";
        }
        String range = span.rangeText(unit);
        return Page.number(span.value()) + " " + unit + (range.isEmpty() ? "" : " (" + range + ")");
    }

    /** Charges of a change in meq/L, anions negative; they add up to zero. */
    private static List<String[]> ledger(Change change) {
        List<String[]> rows = new ArrayList<>();
        rows.add(new String[] {"ledger", "mg/L", "charge, meq/L"});
        for (Ion ion : change.ions()) {
            double charge = Math.signum((double) ion.chargeNumber()) * equivalents(ion, change);
            rows.add(new String[] {
                ion.name() + " " + ion,
                signed(change.total(ion).in(ion.milligramPerLitre())),
                ion.chargeNumber() == 0 ? "neutral" : signed(charge)
            });
        }
        double alkalinity = change.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE);
        rows.add(new String[] {
            "alkalinity as HCO₃⁻",
            signed(change.alkalinity().in(Alkalinity.MILLIGRAM_PER_LITRE_BICARBONATE)),
            signed(-alkalinity)
        });
        double unmeasured = change.unmeasuredCharge().in(MILLIEQUIVALENT_PER_LITRE);
        if (Math.abs(unmeasured) > 1e-9) {
            rows.add(new String[] {"charge not measured", "", signed(unmeasured)});
        }
        rows.add(new String[] {"sum of charges", "", signed(change.netCharge().in(MILLIEQUIVALENT_PER_LITRE))});
        return rows;
    }

    private static double equivalents(Ion ion, Change change) {
        return ion.chargeNumber() == 0 ? 0 : ion.equivalents(change.total(ion)).in(MILLIEQUIVALENT_PER_LITRE);
    }

    private static String signed(double value) {
        String number = Page.number(value);
        return number.startsWith("-") || Double.parseDouble(number) == 0 ? number : "+" + number;
    }

    private static String name(Ion ion) {
        return ion.equals(Ion.BICARBONATE) ? "alkalinity (HCO₃⁻)" : ion.name() + " (" + ion + ")";
    }

    private void warnings(Page page, int stage) {
        house.doses().stream().filter(dose -> dose == stages.treatment(stage)).forEach(dose -> {
            if (dose.most().exceedsSolubility()) {
                page.say("More than dissolves in pure water at 20 °C: some of the "
                        + dose.compound().name() + " will stay undissolved, and the figures above are too high.");
            }
            if (dose.compound().strength() == 1 && dose.compound().name().endsWith("acid")) {
                page.say("Taken as pure " + dose.compound().name()
                        + "; sold in solution it is weaker: say its strength, such as '"
                        + dose.compound().name() + " 31 %'.");
            }
            if (dose.compound().strength() < 1
                    && dose.compound().formula().toString().contains("·")) {
                page.say(
                        "The strength is taken as that of the hydrate; if the label counts the salt without its water of "
                                + "crystallisation, dose the anhydrous salt of that strength.");
            }
            if (dose.least() != dose) {
                page.say("A teaspoon is no balance: the ranges hold for as much less or more as it may take.");
            }
        });
    }
}
