package evenwater.chemistry.recipe;

import static evenwater.chemistry.quantity.MassConcentration.GRAM_PER_LITRE;

import evenwater.chemistry.control.StockSolution;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.water.Change;
import java.util.Optional;

/** A compound on the shelf, dry or in a stock, with what 1 g/L of it brings. */
record ShelfItem(Compound compound, Optional<StockSolution> stock, Change ofOneGramPerLitre) {

    static ShelfItem of(Compound compound) {
        return new ShelfItem(compound, Optional.empty(), ofOneGramPerLitre(compound));
    }

    static ShelfItem of(StockSolution stock) {
        return new ShelfItem(stock.compound(), Optional.of(stock), ofOneGramPerLitre(stock.compound()));
    }

    private static Change ofOneGramPerLitre(Compound compound) {
        return Change.dissolving(compound, MassConcentration.of(1, GRAM_PER_LITRE));
    }
}
