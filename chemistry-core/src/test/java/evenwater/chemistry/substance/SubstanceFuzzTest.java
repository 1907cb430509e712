package evenwater.chemistry.substance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.UnreadableTextException;
import evenwater.chemistry.testing.FuzzTexts;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Whatever comes in: a value or our exception, nothing else. */
class SubstanceFuzzTest {

    private static final long SEED = 20_261_126;

    private static final List<String> FORMULAS = List.of(
            "{[(CH3)2N]2C}3",
            "K4[Fe(CN)6]·3H2O",
            "CuSO4·3Cu(OH)2·0.5H2O",
            "[Fe(CN)6]4-",
            "SO4^{2-}",
            "PO4---",
            "P2O7(4-)",
            "C₆₀²⁻",
            "Hg22+",
            "Na+1");

    private static final List<String> BASES = List.of("N", "P2O5", "CaCO3", "CaO", "SO₄²⁻", "Fe", "SiO2", "C");

    @Test
    void everyFormulaReadsOrThrowsOurException() {
        List<String> valid = new ArrayList<>(FORMULAS);
        Ion.all().forEach(ion -> valid.add(ion.symbol()));
        Compound.all().forEach(compound -> valid.add(compound.formula().toString()));
        fuzz(1, valid, text -> {
            Optional<Formula> formula = answer("formula", Formula::parse, text);
            formula.ifPresent(f -> {
                assertEquals(f, Formula.parse(f.toString()), () -> shown(text));
                assertTrue(f.hasSameAtomsAs(Formula.parse(f.toString())), () -> shown(text));
                assertTrue(Double.isFinite(f.molarMassInGramsPerMole()), () -> shown(text));
            });
            return formula.isPresent();
        });
    }

    @Test
    void everyIonReadsOrThrowsOurException() {
        List<String> valid =
                new ArrayList<>(List.of("Ca2+", "SO4^2-", "SO42-", "NO3-", "PO4-3", "Al+++", "HPO4(2-)", "SO₄2-"));
        Ion.all().forEach(ion -> valid.add(ion.symbol()));
        fuzz(2, valid, text -> {
            Optional<Ion> ion = answer("ion", Ion::parse, text);
            ion.ifPresent(i -> assertSame(i, Ion.parse(i.toString())));
            return ion.isPresent();
        });
    }

    @Test
    void everyConcentrationReadsOrThrowsOurException() {
        List<String> valid =
                new ArrayList<>(List.of("2 meq/L", "0.3 mmol/L", "1e-3 mol/L", "4 mval/L", "0.5eq/L", "7 mol/m³"));
        for (String basis : BASES) {
            valid.add("4.1 mg/L " + basis);
            valid.add("4.1 mg/L as " + basis);
            valid.add("1.5e3 µg/l of " + basis);
            valid.add("12 gr/gal(US) " + basis);
        }
        List<Ion> ions = Ion.all();
        fuzz(3, valid, text -> {
            Ion ion = ions.get(Math.floorMod(text.hashCode(), ions.size()));
            Optional<AmountConcentration> read = answer("concentration of " + ion, ion::parseConcentration, text);
            read.ifPresent(c -> assertEquals(c, ion.parseConcentration(c.toString()), () -> shown(text)));
            return read.isPresent();
        });
    }

    @Test
    void everyNameOfACompoundIsKnownOrRefused() {
        List<String> valid =
                new ArrayList<>(List.of("gypsum", "Epsom salt", "baking soda", "calcium chloride", "table salt"));
        Compound.all().forEach(compound -> {
            valid.add(compound.name());
            valid.add(compound.formula().toString());
        });
        fuzz(4, valid, text -> {
            try {
                Compound compound = Compound.named(text);
                assertSame(compound, Compound.named(compound.name()));
                return true;
            } catch (UnreadableTextException e) {
                assertTrue(e.getMessage().startsWith("cannot read compound '"), e::getMessage);
                return false;
            } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
                return fail("compound from " + shown(text), e);
            }
        });
    }

    /** Answers whether a text could be read. */
    @FunctionalInterface
    private interface Reader {
        boolean reads(String text);
    }

    private static void fuzz(int test, List<String> valid, Reader reader) {
        FuzzTexts texts = new FuzzTexts(SEED + test, valid);
        int count = FuzzTexts.count();
        int read = 0;
        for (int i = 0; i < count; i++) {
            read += reader.reads(texts.next()) ? 1 : 0;
        }
        int least =
                count / 20; // half of those that are not spoilt; else what stands behind the first check is not tested
        int all = read;
        assertTrue(all >= least && all < count, () -> all + " of " + count + " texts could be read");
    }

    private static <T> Optional<T> answer(String thing, Function<String, T> reader, String text) {
        try {
            return Optional.of(reader.apply(text));
        } catch (UnreadableTextException e) {
            assertTrue(e.index() >= 0 && e.index() <= text.length(), () -> "index " + e.index() + " of " + shown(text));
            assertTrue(e.getMessage().length() < 600, e::getMessage);
            assertTrue(e.getMessage().chars().noneMatch(Character::isISOControl), e::getMessage);
            return Optional.empty();
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            return fail(thing + " from " + shown(text), e);
        }
    }

    private static String shown(String text) {
        StringBuilder escaped = new StringBuilder();
        text.chars()
                .limit(200)
                .forEach(c -> escaped.append(
                        c < 128 && c >= ' ' ? String.valueOf((char) c) : String.format(Locale.ROOT, "\\u%04x", c)));
        return escaped.toString();
    }
}
