package evenwater.chemistry.validation;

import evenwater.chemistry.testing.Kits;
import evenwater.chemistry.testing.NaturalWater;
import java.util.List;

/** The part of the page on what a kit leaves open of the natural waters. */
final class KitOfNaturalWaters {

    private static final List<NaturalWater> WATERS = NaturalWater.all();

    /** The page is written in several locales: this takes seconds. */
    private static final long INSIDE = WATERS.stream()
            .filter(natural -> Kits.outside(
                            natural.water(), Kits.readingsOf(natural).bounds())
                    .isEmpty())
            .count();

    private KitOfNaturalWaters() {}

    /** Returns the part as Markdown. */
    static String render() {
        return "## Bounds of what a kit does not say\n\n"
                + "Of the same waters a kit would read hardness and alkalinity in drops of 1 °dH and 1 °dKH, pH to 0.1 and conductivity to 2 %: every "
                + "measured amount lies within the bounds of `KitReadings` in " + INSIDE + " of " + WATERS.size()
                + " waters. How wide the bounds are, [kit.md](kit.md) shows.\n\n";
    }
}
