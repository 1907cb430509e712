package evenwater.page;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.verdict.CautionTopic;
import evenwater.chemistry.worked.WorkedSolutions;
import evenwater.page.Control.Choice;
import evenwater.page.Control.NumberField;
import evenwater.page.Control.Option;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;

/** One hardness and one alkalinity in all scales. */
final class ScalePart implements Part {

    private static final List<String> NOTES = List.of(
            "Scales that weigh calcium carbonate or oxide count one of them for each calcium or magnesium, and one for each two acids that "
                    + "alkalinity takes up.");

    private static final int DIGITS = 5;

    @Override
    public String id() {
        return "scales";
    }

    @Override
    public String title() {
        return "One water, many scales";
    }

    @Override
    public String lead() {
        return "A hardness and an alkalinity in every scale that reports, test kits and the softening trade use. The two share their "
                + "names of degrees and are different things: hardness counts calcium and magnesium, alkalinity counts what takes up acid.";
    }

    @Override
    public List<ControlGroup> groups() {
        return List.of(
                new ControlGroup(
                        "What the report says",
                        new NumberField("hardness", "Hardness", "22", UnitOptions.HARDNESS, "gpg"),
                        new NumberField("alkalinity", "Alkalinity", "14", UnitOptions.ALKALINITY, "°dKH")),
                new ControlGroup(
                        "Scales to show the way to",
                        new Choice("hardness-to", "For the hardness", startingWith(UnitOptions.HARDNESS, "°dH")),
                        new Choice(
                                "alkalinity-to",
                                "For the alkalinity",
                                startingWith(UnitOptions.ALKALINITY, "mg/L CaCO3"))));
    }

    /** The option that is chosen at first, then the others in their order. */
    private static List<Option> startingWith(List<Option> options, String first) {
        return Stream.concat(
                        options.stream().filter(option -> option.value().equals(first)),
                        options.stream().filter(option -> !option.value().equals(first)))
                .toList();
    }

    @Override
    public Set<CautionTopic> cautions() {
        return Set.of();
    }

    @Override
    public Answer answer(Entries entries) {
        Hardness hardness = Read.hardness(entries, "hardness");
        Alkalinity alkalinity = Read.alkalinity(entries, "alkalinity");
        List<Figure> hardnesses = entries.at("hardness", () -> inAll("hardness", hardness, Hardness.units()));
        List<Figure> alkalinities = entries.at("alkalinity", () -> inAll("alkalinity", alkalinity, Alkalinity.units()));
        String summary = "Hardness " + sentence(hardnesses, hardness) + "; alkalinity "
                + sentence(alkalinities, alkalinity) + ".";
        return Way.to(() -> WorkedSolutions.conversion(hardness, Hardness.parseUnit(entries.text("hardness-to"))))
                .and(() -> WorkedSolutions.conversion(alkalinity, Alkalinity.parseUnit(entries.text("alkalinity-to"))))
                .answer(
                        summary,
                        List.of(new FigureTable("Hardness", hardnesses), new FigureTable("Alkalinity", alkalinities)),
                        NOTES);
    }

    private static <Q extends Quantity<Q>> List<Figure> inAll(
            String name, WaterQuantity<Q> quantity, List<Unit<Q>> units) {
        List<Figure> figures = new ArrayList<>();
        for (Unit<Q> unit : units) {
            String symbol = unit.getSymbol();
            figures.add(Figure.of(name + " in " + symbol, UnitOptions.name(symbol), quantity, unit, DIGITS));
        }
        return figures;
    }

    /** The first figure is in mmol/L or meq/L, the chemist's scale. */
    private static String sentence(List<Figure> figures, WaterQuantity<?> stated) {
        return stated + " is " + figures.get(0).inWords();
    }
}
