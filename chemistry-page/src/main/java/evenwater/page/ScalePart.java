package evenwater.page;

import static evenwater.page.Control.NumberField;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.verdict.CautionTopic;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
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
        return List.of(new ControlGroup(
                "What the report says",
                new NumberField("hardness", "Hardness", "22", UnitOptions.HARDNESS, "gpg"),
                new NumberField("alkalinity", "Alkalinity", "14", UnitOptions.ALKALINITY, "°dKH")));
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
        return Answer.of(
                "Hardness " + sentence(hardnesses, hardness) + "; alkalinity " + sentence(alkalinities, alkalinity)
                        + ".",
                List.of(new FigureTable("Hardness", hardnesses), new FigureTable("Alkalinity", alkalinities)),
                List.of(),
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
