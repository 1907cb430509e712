package evenwater.page;

import static evenwater.chemistry.quantity.Hardness.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Blending;
import evenwater.chemistry.verdict.CautionTopic;
import evenwater.chemistry.water.Water;
import evenwater.chemistry.worked.WorkedSolutions;
import evenwater.page.Control.Choice;
import evenwater.page.Control.NumberField;
import evenwater.page.Control.Option;
import java.util.List;
import java.util.Set;
import javax.measure.Unit;

/** A blend of two waters by share or for a hardness. */
final class BlendPart implements Part {

    private static final List<String> NOTES =
            List.of("No pH is shown: it follows from the carbon dioxide of both waters, which nobody asked for here.");

    private static final String SODIUM = Ion.SODIUM.milligramPerLitre().getSymbol();

    @Override
    public String id() {
        return "blend";
    }

    @Override
    public String title() {
        return "Two waters in one bucket";
    }

    @Override
    public String lead() {
        return "What is conserved blends by volume: hardness, alkalinity and every ion lie on the straight line between the two waters. pH "
                + "does not.";
    }

    @Override
    public List<ControlGroup> groups() {
        return List.of(
                new ControlGroup(
                        "First water",
                        new NumberField("hardness", "Hardness", "18", UnitOptions.HARDNESS, "°dH"),
                        new NumberField("alkalinity", "Alkalinity", "12", UnitOptions.ALKALINITY, "°dKH"),
                        new NumberField("sodium", "Sodium", "15", UnitOptions.of(Ion.SODIUM), SODIUM)),
                new ControlGroup(
                        "Second water",
                        new NumberField("other-hardness", "Hardness", "0.5", UnitOptions.HARDNESS, "°dH"),
                        new NumberField("other-alkalinity", "Alkalinity", "0.4", UnitOptions.ALKALINITY, "°dKH"),
                        new NumberField("other-sodium", "Sodium", "2", UnitOptions.of(Ion.SODIUM), SODIUM)),
                new ControlGroup(
                        "Blend",
                        new Choice(
                                "by",
                                "Blend by",
                                List.of(
                                        new Option("share", "share of the second water"),
                                        new Option("hardness", "wanted hardness"))),
                        new NumberField("share", "Share of the second water", "60", UnitOptions.PERCENT, "%")
                                .onlyIf("by", "share"),
                        new NumberField("wanted", "Wanted hardness", "6", UnitOptions.HARDNESS, "°dH")
                                .onlyIf("by", "hardness")));
    }

    @Override
    public Set<CautionTopic> cautions() {
        return Set.of(CautionTopic.CHANGE);
    }

    @Override
    public Answer answer(Entries entries) {
        Water first = Read.water(entries, "hardness", "alkalinity", "sodium");
        Water second = Read.water(entries, "other-hardness", "other-alkalinity", "other-sodium");
        if (entries.isChosen("by", "share")) {
            Blending blending = entries.at(
                    "share",
                    () -> Blending.with(
                            second,
                            WaterUnits.share(entries.number("share"), WaterUnits.PERCENT)
                                    .in(WaterUnits.ONE)));
            return answer(entries, "share", first, blending);
        }
        Hardness wanted = Read.hardness(entries, "wanted");
        Blending blending = entries.at("wanted", () -> Blending.reaching(wanted, second));
        return answer(entries, "wanted", first, blending);
    }

    private static Answer answer(Entries entries, String asked, Water first, Blending blending) {
        double share = entries.at(asked, () -> blending.shareOfOther(first));
        return entries.at("hardness", () -> {
            Water blend = blending.treat(first);
            Unit<Hardness> spoken = Hardness.parseUnit(entries.unit("hardness"));
            Figure percent = Figure.of(
                    "share", "Share of the second water", WaterUnits.share(share, WaterUnits.ONE), WaterUnits.PERCENT);
            Figure hardness = Figure.of("hardness", "Hardness", blend.hardness(), spoken);
            Figure alkalinity = Figure.of(
                    "alkalinity", "Alkalinity", blend.alkalinity(), Alkalinity.parseUnit(entries.unit("alkalinity")));
            FigureTable table = new FigureTable(
                    "The blend",
                    List.of(
                            percent,
                            hardness,
                            Figure.of("hardness in mmol/L", "Hardness", blend.hardness(), MILLIMOLE_PER_LITRE),
                            alkalinity,
                            Figure.of("sodium", "Sodium", Read.sodium(blend), Read.SODIUM_UNIT)));
            String summary = "With " + percent.inWords() + " of the second water: hardness " + hardness.inWords()
                    + ", alkalinity " + alkalinity.inWords() + ".";
            return Way.to(() -> WorkedSolutions.blending(blending, first, spoken))
                    .answer(summary, List.of(table), NOTES);
        });
    }
}
