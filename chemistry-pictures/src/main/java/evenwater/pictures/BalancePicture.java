package evenwater.pictures;

import evenwater.chemistry.treatment.Ledger;
import evenwater.chemistry.treatment.Stage;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * The ions of a water before and after each stage of a treatment, as bars in meq/L: cations above anions.
 *
 * <p>The parts are the equivalents of each total; alkalinity counts as an anion, mineral acid as a cation, and the charge that nobody
 * measured closes the shorter bar, so that both are of one length. What has no charge is not shown.
 */
public final class BalancePicture extends Picture {

    private static final int MOST_STAGES = 20;

    private final List<ChargeBars> waters;

    private BalancePicture(List<ChargeBars> waters) {
        this.waters = waters;
    }

    /**
     * Returns the picture of a ledger.
     *
     * @param ledger a water and the stages that it passed; at most 20
     * @return the picture
     * @throws IllegalArgumentException if there are more stages
     */
    public static BalancePicture of(Ledger ledger) {
        Objects.requireNonNull(ledger, "ledger");
        if (ledger.stages().size() > MOST_STAGES) {
            throw new IllegalArgumentException("stages of one picture must be at most " + MOST_STAGES + ", but were "
                    + ledger.stages().size());
        }
        List<ChargeBars> waters = new ArrayList<>();
        waters.add(ChargeBars.of("source", ledger.source()));
        for (Stage stage : ledger.stages()) {
            waters.add(ChargeBars.of("behind " + stage.name(), stage.after()));
        }
        return new BalancePicture(List.copyOf(waters));
    }

    /**
     * Returns the picture of a single water.
     *
     * @param name of the water
     * @param water any water
     * @return the picture
     */
    public static BalancePicture of(String name, Water water) {
        return new BalancePicture(
                List.of(ChargeBars.of(Objects.requireNonNull(name, "name"), Objects.requireNonNull(water, "water"))));
    }

    @Override
    public String title() {
        return waters.size() == 1
                ? "The ions of the water, by charge"
                : "The ions of the water at each stage, by charge";
    }

    @Override
    public String description() {
        return waters.stream().map(ChargeBars::words).map(Figures::capital).collect(Collectors.joining(". "))
                + " meq/L.";
    }

    @Override
    void draw(Sheet sheet) {
        sheet.subtitle("In meq/L. On each side the charges add up to the same.");
        BarFrame frame = BarFrame.of(waters);
        waters.forEach(water -> frame.draw(sheet, water));
        frame.close(sheet);
    }
}
