package evenwater.pictures;

import evenwater.chemistry.equilibrium.CarbonateSystem;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.kernel.Species;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * The parts of the inorganic carbon of a water against pH: carbon dioxide, bicarbonate, carbonate and what is paired with other ions.
 *
 * <p>Each point is a {@link CarbonateSystem} with the ions, the temperature and the carbon of the water and another pH, as if an acid or
 * a base of ions that take no part had moved it. Nothing drops out, although calcite would at high pH.
 */
public final class CarbonatePicture extends Picture {

    private static final double FROM_PH = 4;
    private static final double TO_PH = 12;
    private static final int STEPS = 96;

    private static final List<Species> SHOWN = List.of(Species.CARBON_DIOXIDE, Species.BICARBONATE, Species.CARBONATE);

    private static final List<String> NAMES =
            List.of("CO₂", "bicarbonate HCO₃⁻", "carbonate CO₃²⁻", "paired with other ions");

    /** From this share on pairs are worth a line. */
    private static final double LEAST_SHARE = 3;

    private final Speciation own;
    private final List<Speciation> states;

    private CarbonatePicture(Speciation own, List<Speciation> states) {
        this.own = own;
        this.states = states;
    }

    /**
     * Returns the picture of a water, from pH 4 to 12.
     *
     * @param water whose carbon is known, or its alkalinity and pH
     * @return the picture
     * @throws IllegalArgumentException if the water holds no inorganic carbon
     * @throws evenwater.chemistry.quantity.NoAnswerException if its pH is unknown, or outside of what the activities hold for
     */
    public static CarbonatePicture of(Water water) {
        Speciation own = Speciation.of(Objects.requireNonNull(water, "water"));
        if (!(own.carbon().getValue() > 0)) {
            throw new IllegalArgumentException(
                    "the picture of the carbonate species needs a water with inorganic carbon, " + "but this one has "
                            + own.carbon());
        }
        CarbonateSystem system = CarbonateSystem.of(water).withCarbon(own.carbon());
        List<Speciation> states = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            states.add(system.withPH(FROM_PH + (TO_PH - FROM_PH) * i / STEPS).solve());
        }
        return new CarbonatePicture(own, List.copyOf(states));
    }

    @Override
    public String title() {
        return "Where the carbon of this water is, against pH";
    }

    @Override
    public String description() {
        return "At its pH of " + Figures.text(own.pH()) + ", of "
                + own.carbon().toText(Locale.ROOT, 3) + " of inorganic carbon " + Figures.text(share(own, 0))
                + " % is CO₂ (" + carbonDioxide() + "), " + Figures.text(share(own, 1)) + " % bicarbonate, "
                + Figures.text(share(own, 2)) + " % carbonate, and " + Figures.text(share(own, 3))
                + " % is paired with calcium, magnesium and sodium. Of CO₂ and bicarbonate there is as much at pH "
                + crossing(0, 1) + ", of bicarbonate and carbonate at pH " + crossing(1, 2) + ".";
    }

    /** The pH from which on there is more of another part; to a tenth, as the states lie closer than that. */
    private String crossing(int less, int more) {
        return states.stream()
                .filter(state -> share(state, more) >= share(state, less))
                .findFirst()
                .map(state -> String.format(Locale.ROOT, "%.1f", state.pH()))
                .orElse("above " + Figures.text(TO_PH));
    }

    private String carbonDioxide() {
        return Figures.text(own.carbonDioxide().in(Ion.CARBON_DIOXIDE.milligramPerLitre()), "mg/L\u00A0CO₂");
    }

    @Override
    void draw(Sheet sheet) {
        sheet.subtitle(own.carbon().toText(Locale.ROOT, 3) + " of inorganic carbon at "
                + own.water().temperature().toText(Locale.ROOT, 3)
                + ", as if an acid or a base moved the pH and nothing dropped out.");
        Chart chart = new Chart("pH", "share of the carbon, %").fromZero();
        for (int i = 0; i < NAMES.size(); i++) {
            int part = i;
            List<Point> points = states.stream()
                    .map(state -> new Point(state.pH(), share(state, part)))
                    .toList();
            if (points.stream().anyMatch(point -> point.y() >= LEAST_SHARE)) {
                chart.line(NAMES.get(i), i, points);
            }
        }
        if (own.pH() >= FROM_PH && own.pH() <= TO_PH) {
            chart.upright(own.pH(), "this water: " + "pH\u00A0" + Figures.text(own.pH()) + ", " + carbonDioxide());
        }
        chart.draw(sheet);
    }

    /** In percent; the last part is what the others leave. */
    private static double share(Speciation state, int part) {
        if (part < SHOWN.size()) {
            return percent(state, state.concentration(SHOWN.get(part)));
        }
        return 100
                - SHOWN.stream()
                        .mapToDouble(s -> percent(state, state.concentration(s)))
                        .sum();
    }

    private static double percent(Speciation state, AmountConcentration part) {
        return 100 * part.ratioTo(state.carbon());
    }
}
