package evenwater.chemistry.control;

import static evenwater.chemistry.control.Bench.ml;
import static evenwater.chemistry.quantity.WaterUnits.GRAM;
import static evenwater.chemistry.quantity.WaterUnits.MILLILITRE;
import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.hardness;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Dissolving;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.water.Change;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StockSolutionTest {

    private static StockSolution of(Compound compound, double gramsPerLitre) {
        return StockSolution.of(compound, MassConcentration.of(gramsPerLitre, MassConcentration.GRAM_PER_LITRE));
    }

    /** 0.1 mmol/L in 200 L are 20 mmol: 2.94016 g of CaCl₂·2H₂O (147.008 g/mol), 29.4016 mL of 100 g/L. */
    @Test
    void volumesForARiseAreWorkedByHand() {
        assertEquals(
                29.4016,
                Bench.STOCK.volumeRaising(Ion.CALCIUM, mmol(0.1), litres(200)).in(MILLILITRE),
                5e-4);
        assertEquals(
                29.4016,
                Bench.STOCK.volumeRaisingHardness(hardness(0.1), litres(200)).in(MILLILITRE),
                5e-4);
        // two chlorides each
        assertEquals(
                14.7008,
                Bench.STOCK.volumeRaising(Ion.CHLORIDE, mmol(0.1), litres(200)).in(MILLILITRE),
                5e-4);
        // 0.5 meq/L in 100 L are 50 mmol of NaHCO₃, 4.20033 g, of 84.0066 g/mol
        assertEquals(
                84.0066,
                of(Compound.SODIUM_BICARBONATE, 50)
                        .volumeRaisingAlkalinity(alkalinity(0.5), litres(100))
                        .in(MILLILITRE),
                5e-3);
    }

    @Test
    void whatIsInTheVolumeForARiseBringsTheRise() {
        Change change = Dosing.of(
                        Bench.STOCK.compound(),
                        Bench.STOCK.massIn(Bench.STOCK.volumeRaising(Ion.CALCIUM, mmol(0.1), litres(200))),
                        litres(200))
                .change();
        assertEquals(0.1, change.total(Ion.CALCIUM).getValue(), 1e-15);
        assertEquals(0.5, Bench.STOCK.massIn(ml(5)).in(GRAM), 1e-15);
    }

    @Test
    void aStockThatDoesNotDissolveIsRefused() {
        Refused.argument(
                "a stock with 10 g/L of calcium sulfate dihydrate does not dissolve: pure water takes up "
                        + Compound.CALCIUM_SULFATE_DIHYDRATE
                                .solubility()
                                .orElseThrow()
                                .massPerMassOfWater() + " of "
                        + Compound.CALCIUM_SULFATE_DIHYDRATE
                                .solubility()
                                .orElseThrow()
                                .basis(),
                () -> of(Compound.CALCIUM_SULFATE_DIHYDRATE, 10));
        assertEquals(
                "stock with 2 g/L of calcium sulfate dihydrate",
                of(Compound.CALCIUM_SULFATE_DIHYDRATE, 2).toString());
    }

    @Test
    void aStockSaysWhetherItDissolves() {
        assertEquals(
                Optional.of(Dissolving.DISSOLVES),
                of(Compound.SODIUM_CHLORIDE, 263).dissolving());
        assertEquals(
                Optional.of(Dissolving.MAY_NOT_DISSOLVE),
                of(Compound.SODIUM_CHLORIDE, 317).dissolving());
        assertEquals(Optional.empty(), of(Compound.SULFURIC_ACID, 100).dissolving());
        // half of what is weighed is something else
        assertEquals(
                Optional.of(Dissolving.DISSOLVES),
                of(Compound.SODIUM_CHLORIDE.ofStrength(0.5), 500).dissolving());
    }

    @Test
    void nonsenseIsRefused() {
        Refused.argument(
                "concentration of sodium chloride in the stock must be positive, but was 0 g/L",
                () -> of(Compound.SODIUM_CHLORIDE, 0));
        Refused.argument(
                "stock of calcium chloride dihydrate brings no Mg²⁺",
                () -> Bench.STOCK.volumeRaising(Ion.MAGNESIUM, mmol(1), litres(1)));
        Refused.argument(
                "rise of Ca²⁺ must not be negative, but was -1 mmol/L",
                () -> Bench.STOCK.volumeRaising(Ion.CALCIUM, mmol(-1), litres(1)));
        Refused.argument(
                "volume of the tank must be positive, but was 0 L",
                () -> Bench.STOCK.volumeRaising(Ion.CALCIUM, mmol(1), litres(0)));
        Refused.asNull("compound", () -> of(null, 1));
        Refused.asNull("ion", () -> Bench.STOCK.volumeRaising(null, mmol(1), litres(1)));
    }
}
