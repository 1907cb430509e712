package evenwater.page;

import static evenwater.chemistry.quantity.Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE;
import static evenwater.chemistry.quantity.Hardness.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.verdict.CautionTopic;
import evenwater.chemistry.water.Water;
import evenwater.chemistry.water.WaterBuilder;
import evenwater.chemistry.worked.WorkedSolutions;
import evenwater.page.Control.Choice;
import evenwater.page.Control.NumberField;
import evenwater.page.Control.Option;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.measure.Unit;

/** What a softener does to hardness, sodium and alkalinity, with a bypass for a wanted hardness. */
final class SofteningPart implements Part {

    private static final List<String> NOTES = List.of(
            "A total hardness is taken for calcium. For sodium, hardness and alkalinity it makes no difference how it divides into calcium "
                    + "and magnesium.",
            "The sodium of a blend does not depend on the leakage: raw minus wanted hardness decides.");

    @Override
    public String id() {
        return "softening";
    }

    @Override
    public String title() {
        return "What a softener changes";
    }

    @Override
    public String lead() {
        return "A softener trades calcium and magnesium for sodium, charge for charge: two sodium for one calcium. Alkalinity stays. Raw "
                + "water blended back past the resin brings hardness back.";
    }

    @Override
    public List<ControlGroup> groups() {
        return List.of(
                new ControlGroup(
                        "Raw water",
                        new Choice(
                                "stated",
                                "Hardness is stated as",
                                List.of(
                                        new Option("total", "total hardness"),
                                        new Option("ions", "calcium and magnesium"))),
                        new NumberField("raw", "Total hardness", "22", UnitOptions.HARDNESS, "gpg")
                                .onlyIf("stated", "total"),
                        ion("calcium", Ion.CALCIUM, "104").onlyIf("stated", "ions"),
                        ion("magnesium", Ion.MAGNESIUM, "28").onlyIf("stated", "ions"),
                        new NumberField("alkalinity", "Alkalinity", "14", UnitOptions.ALKALINITY, "°dKH"),
                        ion("sodium", Ion.SODIUM, "12")),
                new ControlGroup(
                        "Softener",
                        new NumberField("leakage", "Hardness right behind the resin", "0", UnitOptions.HARDNESS, "gpg")
                                .hinted("Leakage: what the resin lets through; 0 for a perfect one."),
                        new Choice(
                                "bypass",
                                "Raw water past the resin",
                                List.of(
                                        new Option("none", "none"),
                                        new Option("wanted", "as much as a wanted hardness takes"))),
                        new NumberField("wanted", "Wanted hardness", "6", UnitOptions.HARDNESS, "°dH")
                                .onlyIf("bypass", "wanted")));
    }

    private static NumberField ion(String id, Ion ion, String initial) {
        String label =
                ion.name().substring(0, 1).toUpperCase(Locale.ROOT) + ion.name().substring(1);
        return new NumberField(
                id, label, initial, UnitOptions.of(ion), ion.milligramPerLitre().getSymbol());
    }

    @Override
    public Set<CautionTopic> cautions() {
        return Set.of(CautionTopic.SODIUM, CautionTopic.SOFTENER, CautionTopic.STAGNANT);
    }

    @Override
    public Answer answer(Entries entries) {
        Water raw = raw(entries);
        boolean blended = entries.isChosen("bypass", "wanted");
        Softener leaking =
                entries.at("leakage", () -> Softener.withSodium().leaking(Read.hardness(entries, "leakage")));
        Softener softener =
                blended ? entries.at("wanted", () -> leaking.bypassFor(Read.hardness(entries, "wanted"))) : leaking;
        double share = entries.at("wanted", () -> softener.bypassShare(raw));
        String source = entries.isChosen("stated", "total") ? "raw" : "calcium";
        return entries.at(source, () -> answer(entries, raw, softener, share));
    }

    private static Answer answer(Entries entries, Water raw, Softener softener, double share) {
        Water treated = softener.treat(raw);
        Unit<Hardness> spoken = spoken(entries);
        Unit<Alkalinity> alkalinity = Alkalinity.parseUnit(entries.unit("alkalinity"));
        Figure hardness = Figure.of("hardness", "Hardness", treated.hardness(), spoken);
        Figure sodium = Figure.of("sodium", "Sodium", Read.sodium(treated), Read.SODIUM_UNIT);
        AmountConcentration added = Read.sodium(treated).subtract(Read.sodium(raw));
        FigureTable tap = new FigureTable(
                "Water at the tap",
                List.of(
                        hardness,
                        Figure.of("hardness in mmol/L", "Hardness", treated.hardness(), MILLIMOLE_PER_LITRE),
                        Figure.of(
                                "hardness in mg/L CaCO3",
                                "Hardness",
                                treated.hardness(),
                                MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE),
                        Figure.of("alkalinity", "Alkalinity", treated.alkalinity(), alkalinity),
                        sodium));
        FigureTable change = new FigureTable(
                "What changed",
                List.of(
                        Figure.of("raw hardness", "Hardness before", raw.hardness(), spoken),
                        Figure.of("sodium added", "Sodium added", added, Read.SODIUM_UNIT),
                        Figure.of(
                                "bypass",
                                "Raw water past the resin",
                                WaterUnits.share(share, WaterUnits.ONE),
                                WaterUnits.PERCENT)));
        String summary = "At the tap: hardness " + hardness.inWords() + ", sodium " + sodium.inWords()
                + ", alkalinity as before.";
        return Way.to(() -> WorkedSolutions.softening(softener, raw, spoken))
                .answer(summary, List.of(tap, change), NOTES);
    }

    private static Water raw(Entries entries) {
        if (entries.isChosen("stated", "total")) {
            return Read.water(entries, "raw", "alkalinity", "sodium");
        }
        WaterBuilder builder = Read.withAlkalinityAndSodium(entries, "alkalinity", "sodium");
        Read.ion(builder, entries, "calcium", Ion.CALCIUM);
        Read.ion(builder, entries, "magnesium", Ion.MAGNESIUM);
        return entries.at("calcium", builder::build);
    }

    /** The scale in which somebody asked. */
    private static Unit<Hardness> spoken(Entries entries) {
        if (entries.isChosen("bypass", "wanted")) {
            return Hardness.parseUnit(entries.unit("wanted"));
        }
        return entries.isChosen("stated", "total") ? Hardness.parseUnit(entries.unit("raw")) : Hardness.GERMAN_DEGREE;
    }
}
