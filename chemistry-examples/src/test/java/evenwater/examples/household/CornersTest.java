package evenwater.examples.household;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where a section has no answer, it says so, and the others stand. */
class CornersTest {

    private static final String HEADER = "analyte,value,unit,as\n";

    @TempDir
    Path folder;

    private String text(String rows, String... options) {
        Run run = Run.on(folder, HEADER + rows, options);
        assertEquals("", run.err());
        assertEquals(0, run.exitCode());
        return BundledHouseholdTest.flat(run.out());
    }

    @Test
    void aWaterWithNextToNoHardnessHasNoPlan() {
        String text = text("hardness,1e-9,mg/L,CaCO3\npH,7.5,,\nalkalinity,2,meq/L,\n");
        assertTrue(text.contains("There is no plan: volume of the resin must be from 1 mL to 1000 m³"), text);
        assertTrue(text.contains("Is it right for the tank?"), text);
    }

    @Test
    void aReportOfHotWaterHasNoEquilibrium() {
        String text =
                text("calcium,60,mg/L,\nmagnesium,10,mg/L,\npH,7.5,,\nalkalinity,3,meq/L,\ntemperature,99.9,°C,\n");
        assertTrue(text.contains("pH 7.5 not used: no equilibrium is computed above 50 °C"), text);
        assertTrue(text.contains("sodium 87.8 mg/L"), text);
    }

    @Test
    void aBrineHasNoRecipe() {
        String text =
                text("calcium,100000,mg/L,\nmagnesium,10,mg/L,\npH,7.5,,\nalkalinity,3,meq/L,\n", "--tank=planted");
        assertTrue(text.contains("There is no recipe: ionic strength must be at most 1000 mmol/L"), text);
        assertTrue(text.contains("Local codes and licensed practice come first."), text);
    }

    @Test
    void saltWaterIsNotMixedFromWhatIsOnTheShelf() {
        for (String kind : new String[] {"reef", "brackish"}) {
            String text = text("hardness,10,°dH,\nKH,6,°dKH,\n", "--tank=" + kind);
            assertTrue(text.contains("holds salt water: mix it from sea salt in pure water"), text);
            assertTrue(!text.contains("level teaspoons"), text);
        }
    }

    /** Anions for some 1.2 meq/L were not measured: by which they are, the conductivity keeps the range or not. */
    @Test
    void whatNobodyMeasuredStaysOpenBehindTheRecipe() {
        String text = text(
                "hardness,18,gpg,\nalkalinity,220,mg/L,CaCO3\npH,7.9,,\nsodium,12,mg/L,\nchloride,35,mg/L,\nnitrate,8,mg/L,NO3\n",
                "--softener=sodium",
                "--target=6 °dH",
                "--tank=general");
        assertTrue(text.contains("conductivity 555 µS/cm or more: undecided, wanted 200 to 600 µS/cm"), text);
        assertTrue(text.contains("0 to 100 % 200 to 600 µS/cm"), text);
    }

    @Test
    void aDoseThatNoBalanceShowsIsLeftOut() {
        Run run = Run.of("--bundled", "larch-lane", "--no-treatment", "--tank=planted");
        String text = BundledHouseholdTest.flat(run.out());
        assertTrue(text.contains("next to nothing of potassium bicarbonate: leave it out"), text);
        assertTrue(text.contains("Your options name another house"), text);
        assertTrue(text.contains("for planted tank with CO₂, from the source"), text);
    }
}
