package evenwater.page;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.equilibrium.CarbonDioxideRule;
import evenwater.chemistry.equilibrium.CarbonateSystem;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.kernel.Species;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.verdict.CautionTopic;
import evenwater.chemistry.water.Water;
import evenwater.chemistry.water.WaterBuilder;
import evenwater.chemistry.worked.WorkedSolutions;
import evenwater.page.Control.Choice;
import evenwater.page.Control.NumberField;
import evenwater.page.Control.Option;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Carbon dioxide from pH, or pH from carbon dioxide. */
final class CarbonDioxidePart implements Part {

    private static final List<String> NOTES = List.of(
            "Alkalinity is taken for bicarbonate, carbonate and hydroxide. Phosphate of a pH buffer, humic acids of peat and wood, and other "
                    + "acids and bases join its titration and falsify this: the true CO₂ is lower than shown, and a pH for a wanted CO₂ "
                    + "is wrong too.",
            "Other ions are left out here. Those of a tap water lower the CO₂ by some 2 to 12 %, in hard or salty water at pH 8.5 by up to "
                    + "18 %.");

    private static final List<Species> CARBON = List.of(Species.CARBON_DIOXIDE, Species.BICARBONATE, Species.CARBONATE);
    private static final List<Species> WATER = List.of(Species.HYDROGEN, Species.HYDROXIDE);

    @Override
    public String id() {
        return "carbon-dioxide";
    }

    @Override
    public String title() {
        return "pH and carbon dioxide";
    }

    @Override
    public String lead() {
        return "Alkalinity ties pH and carbon dioxide together: of the three, two tell the third.";
    }

    @Override
    public List<ControlGroup> groups() {
        return List.of(new ControlGroup(
                "The water",
                new NumberField("alkalinity", "Alkalinity", "4", UnitOptions.ALKALINITY, "°dKH"),
                new NumberField("temperature", "Temperature", "25", UnitOptions.TEMPERATURE, "°C"),
                new Choice(
                        "given", "What is known", List.of(new Option("ph", "pH"), new Option("co2", "carbon dioxide"))),
                new NumberField("ph", "pH", "6.8", UnitOptions.NONE, "").onlyIf("given", "ph"),
                new NumberField(
                                "co2",
                                "Carbon dioxide, CO₂",
                                "20",
                                UnitOptions.of(Ion.CARBON_DIOXIDE),
                                Ion.CARBON_DIOXIDE.milligramPerLitre().getSymbol())
                        .onlyIf("given", "co2")));
    }

    @Override
    public Set<CautionTopic> cautions() {
        return Set.of(CautionTopic.CARBON_DIOXIDE);
    }

    @Override
    public Answer answer(Entries entries) {
        WaterBuilder builder = Water.builder();
        Alkalinity alkalinity = Read.alkalinity(entries, "alkalinity");
        entries.at("temperature", () -> builder.temperature(Read.temperature(entries, "temperature")));
        Water water =
                entries.at("alkalinity", () -> builder.alkalinity(alkalinity).build());
        CarbonateSystem system = CarbonateSystem.of(water).withItsAlkalinity();
        String given = entries.text("given");
        Speciation found = entries.at(
                given,
                () -> (given.equals("ph")
                                ? system.withPH(entries.number("ph"))
                                : system.withCarbonDioxide(Read.concentration(entries, "co2", Ion.CARBON_DIOXIDE)))
                        .solve());
        // The pair above answers for hot water too, where the constants are extrapolated; the page keeps to the range
        // of a speciation.
        entries.at("temperature", () -> Speciation.of(found.water()));
        return entries.at(given, () -> answer(found));
    }

    private static Answer answer(Speciation found) {
        Figure pH = Figure.ofPH("pH", "pH", found.pH());
        Figure gas = Figure.of(
                "CO₂ in mg/L", "Carbon dioxide", found.carbonDioxide(), Ion.CARBON_DIOXIDE.milligramPerLitre());
        List<Figure> first = new ArrayList<>(List.of(
                pH,
                gas,
                Figure.of(
                        "pressure",
                        "Air with which it would exchange nothing",
                        found.partialPressureOfCarbonDioxide(),
                        WaterUnits.MICROATMOSPHERE),
                Figure.of("carbon", "Inorganic carbon", found.carbon(), MILLIMOLE_PER_LITRE)));
        List<Figure> species = new ArrayList<>();
        CARBON.forEach(each -> species.add(concentration(found, each)));
        WATER.forEach(each -> species.add(concentration(found, each)));
        species.add(Figure.of("ionic strength", "Ionic strength", found.ionicStrength(), MILLIMOLE_PER_LITRE));
        if (!(found.water().alkalinity().getValue() < 0)) {
            CarbonDioxideRule rule = CarbonDioxideRule.of(found);
            first.add(Figure.of(
                    "rule",
                    "Carbon dioxide by the aquarists' rule 3 · KH · 10^(7 − pH)",
                    rule.byRule(),
                    Ion.CARBON_DIOXIDE.milligramPerLitre()));
        }
        String summary = "pH " + pH.text() + " and " + gas.inWords() + ".";
        return Way.to(() -> WorkedSolutions.carbonDioxide(found))
                .answer(
                        summary,
                        List.of(new FigureTable("The balance", first), new FigureTable("The species", species)),
                        NOTES);
    }

    private static Figure concentration(Speciation found, Species species) {
        return Figure.of(species.symbol(), species.symbol(), found.concentration(species), MILLIMOLE_PER_LITRE);
    }
}
