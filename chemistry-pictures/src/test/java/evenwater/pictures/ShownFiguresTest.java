package evenwater.pictures;

import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.aquarium.TankCourse;
import evenwater.chemistry.equilibrium.CarbonateSystem;
import evenwater.chemistry.equilibrium.Mineral;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.exchange.CapacityCurve;
import evenwater.chemistry.exchange.ServiceRun;
import evenwater.chemistry.kernel.Species;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Stage;
import evenwater.chemistry.uncertainty.UncertainResult;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/**
 * The pictures show the numbers of the library: read back by the ticks, as with a ruler, they are what the library answers.
 *
 * <p>Coordinates are rounded to a hundredth of a unit of the picture, and so are the ticks they are read by: the tolerance.
 */
class ShownFiguresTest {

    private static final double RULER = 0.03;

    private static final Map<String, Picture> PICTURES = Samples.all();

    private static void assertShows(double expected, Drawn drawn, double y) {
        assertEquals(expected, drawn.valueAtY(y), RULER * drawn.perUnit(false));
    }

    private static List<Point> read(Drawn drawn, int line) {
        return drawn.lines().get(line).stream()
                .map(point -> new Point(drawn.valueAtX(point.x()), drawn.valueAtY(point.y())))
                .toList();
    }

    private static Drawn drawn(String name) {
        return Drawn.of(PICTURES.get(name).toSvg());
    }

    @Test
    void sodiumIsThatOfTheSoftenerAtEachHardness() {
        Drawn drawn = drawn("sodium");
        List<Point> line = read(drawn, 0);
        assertEquals(61, line.size());
        for (Point point : line) {
            Hardness hardness = Hardness.of(Math.max(0, point.x()), Hardness.GRAIN_PER_US_GALLON);
            Water water = Water.builder()
                    .total(
                            Ion.MAGNESIUM, // the picture takes calcium: by charge it is the same
                            AmountConcentration.of(
                                    hardness.in(Hardness.MILLIMOLE_PER_LITRE), AmountConcentration.MILLIMOLE_PER_LITRE))
                    .total(Ion.SODIUM, Samples.TAP.total(Ion.SODIUM))
                    .build();
            double sodium = Samples.SOFTENER.treat(water).total(Ion.SODIUM).in(Ion.SODIUM.milligramPerLitre());
            double ofX = 8 * RULER * drawn.perUnit(true); // some 7.9 mg/L of sodium for a grain per gallon
            assertEquals(sodium, point.y(), RULER * drawn.perUnit(false) + ofX);
        }
    }

    @Test
    void sodiumHasALineForEachPublishedValue() {
        Drawn drawn = drawn("sodium");
        List<Double> guides = drawn.all("line").stream()
                .filter(line -> line.getAttribute("class").equals("ew-axis"))
                .filter(line -> line.getAttribute("y1").equals(line.getAttribute("y2")))
                .map(line -> drawn.valueAtY(Drawn.number(line, "y1")))
                .map(value -> (double) Math.round(value))
                .toList();
        assertTrue(guides.containsAll(List.of(20.0, 30.0, 60.0, 200.0)), guides.toString()); // requirements.csv
    }

    @Test
    void breakthroughIsTheEffluentOfTheRun() {
        Drawn drawn = drawn("breakthrough");
        List<ServiceRun.Sample> samples = Samples.RUN.effluent();
        List<Ion> shown = List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.SODIUM);
        assertEquals(shown.size(), drawn.lines().size());
        int every = (samples.size() + 199) / 200;
        int first = (samples.size() - 1) % every;
        for (int line = 0; line < shown.size(); line++) {
            int ion = Samples.RUN.ions().indexOf(shown.get(line));
            List<Point> points = read(drawn, line);
            for (int i = 0; i < points.size(); i++) {
                ServiceRun.Sample sample = samples.get(first + i * every);
                assertEquals(
                        sample.concentrations().get(ion).in(MILLIEQUIVALENT_PER_LITRE),
                        points.get(i).y(),
                        RULER * drawn.perUnit(false));
                assertEquals(sample.bedVolumes() * 25, points.get(i).x(), RULER * drawn.perUnit(true)); // of 25 L
            }
            assertEquals(samples.size() - 1, first + (points.size() - 1) * every);
        }
    }

    @Test
    void breakthroughMarksWhereTheWaterBecomesHarderThanTheEndPoint() {
        Drawn drawn = drawn("breakthrough");
        Element upright = drawn.all("line").stream()
                .filter(line -> line.getAttribute("class").equals("ew-axis"))
                .filter(line -> Drawn.number(line, "y2") - Drawn.number(line, "y1") > 100)
                .findFirst()
                .orElseThrow();
        double litres = drawn.valueAtX(Drawn.number(upright, "x1"));
        double step = 25 * (Samples.RUN.bedVolumes() / Samples.RUN.effluent().size());
        Hardness limit = Hardness.parse("1 gpg");
        assertTrue(hardnessAt(litres - 2 * step).compareTo(limit) < 0, litres + " L");
        assertTrue(hardnessAt(litres + step).compareTo(limit) > 0, litres + " L");
    }

    private static Hardness hardnessAt(double litres) {
        return Samples.RUN.waterAt(WaterUnits.volume(litres, WaterUnits.LITRE)).hardness();
    }

    @Test
    void capacityIsThatOfTheCurve() {
        Drawn drawn = drawn("capacity");
        List<Point> trade = read(drawn, 1); // behind the theory
        assertEquals(65, trade.size());
        CapacityCurve curve = CapacityCurve.ofTheTrade();
        for (Point point : trade) {
            double pounds = Math.min(20, Math.max(4, point.x()));
            double kilograins = curve.capacity(SaltDose.of(pounds, SaltDose.POUND_PER_CUBIC_FOOT))
                    .in(ExchangeCapacity.KILOGRAIN_PER_CUBIC_FOOT);
            double ofX = 2 * RULER * drawn.perUnit(true); // no steeper than 2 kgr/lb
            assertEquals(kilograins, point.y(), RULER * drawn.perUnit(false) + ofX);
        }
    }

    @Test
    void theoryIsSixThousandGrainsForAPound() {
        Drawn drawn = drawn("capacity");
        Point end = read(drawn, 0).get(1);
        assertEquals(5.994, end.y() / end.x(), 0.01); // 5994 grain/lb: M(CaCO₃)/(2 M(NaCl)) of 7000 grains; ruler
    }

    @Test
    void carbonIsSharedAsTheCarbonateSystemSharesIt() {
        Drawn drawn = drawn("carbonate");
        Speciation own = Speciation.of(Samples.TAP);
        List<Species> species = List.of(Species.CARBON_DIOXIDE, Species.BICARBONATE, Species.CARBONATE);
        for (int i = 0; i <= 96; i += 8) {
            Speciation state = CarbonateSystem.of(Samples.TAP)
                    .withCarbon(own.carbon())
                    .withPH(4 + 8 * i / 96.0)
                    .solve();
            double sum = 0;
            for (int line = 0; line < 4; line++) {
                Point point = drawn.lines().get(line).get(i);
                double shown = drawn.valueAtY(point.y());
                sum += shown;
                assertEquals(state.pH(), drawn.valueAtX(point.x()), RULER * drawn.perUnit(true));
                if (line < 3) {
                    double share = 100 * state.concentration(species.get(line)).ratioTo(state.carbon());
                    assertEquals(share, shown, RULER * drawn.perUnit(false));
                }
            }
            assertEquals(100, sum, 4 * RULER * drawn.perUnit(false));
        }
    }

    @Test
    void saturationIsThatOfTheSpeciation() {
        Drawn drawn = drawn("saturation");
        List<Water> waters = List.of(Samples.TAP, Samples.LEDGER.stages().get(0).after());
        for (int line = 0; line < 2; line++) {
            List<Point> points = drawn.lines().get(line);
            for (int i = 0; i < points.size(); i++) {
                double celsius = 5 + 45.0 * i / (points.size() - 1);
                assertEquals(celsius, drawn.valueAtX(points.get(i).x()), RULER * drawn.perUnit(true));
                Water water = waters.get(line).with(WaterUnits.temperature(celsius, WaterUnits.CELSIUS));
                double index =
                        Speciation.of(water).saturationIndex(Mineral.CALCITE).orElseThrow();
                assertShows(index, drawn, points.get(i).y());
            }
        }
    }

    @Test
    void theTankIsAtEveryMomentWhereItsCourseIs() {
        Drawn drawn = drawn("tank");
        TankCourse pure = Samples.course(1.5, Water.pure());
        List<Point> line = drawn.lines().get(1);
        assertEquals(pure.moments().size(), line.size());
        for (int i = 0; i < line.size(); i++) {
            assertShows(
                    pure.moments().get(i).water().total(Ion.SODIUM).in(Ion.SODIUM.milligramPerLitre()),
                    drawn,
                    line.get(i).y());
            assertEquals(
                    pure.moments().get(i).time().in(WaterUnits.DAY) / 7,
                    drawn.valueAtX(line.get(i).x()),
                    RULER * drawn.perUnit(true));
        }
    }

    @Test
    void theBandIsTheIntervalOfTheDraws() {
        List<TankCourse> draws = IntStream.range(0, 200)
                .mapToObj(i -> Samples.course(1 + i / 200.0, Samples.SOFTENER.treat(Samples.TAP)))
                .toList();
        Drawn drawn = Drawn.of(TankPicture.of(
                        "sodium",
                        Ion.SODIUM.milligramPerLitre(),
                        water -> water.total(Ion.SODIUM),
                        "any",
                        draws.get(100))
                .withDraws(draws, 0.9)
                .toSvg());
        List<Point> outline = Drawn.points(drawn.areas().get(0).getAttribute("d"));
        int moments = draws.get(0).moments().size();
        assertEquals(2 * moments, outline.size());
        for (int i = 0; i < moments; i++) {
            List<AmountConcentration> outcomes = new ArrayList<>();
            for (TankCourse draw : draws) {
                outcomes.add(draw.moments().get(i).water().total(Ion.SODIUM).to(Ion.SODIUM.milligramPerLitre()));
            }
            var interval = UncertainResult.of(outcomes, 0.9).symmetricInterval();
            assertShows(interval.high().getValue(), drawn, outline.get(i).y());
            assertShows(
                    interval.low().getValue(),
                    drawn,
                    outline.get(2 * moments - 1 - i).y());
        }
    }

    @Test
    void barsAreTheEquivalentsOfTheIonsAndBothAsLong() {
        Drawn drawn = drawn("balance");
        List<Water> waters = new ArrayList<>(List.of(Samples.TAP));
        Samples.LEDGER.stages().stream().map(Stage::after).forEach(waters::add);
        List<Element> bars = drawn.all("rect").stream()
                .filter(rect -> rect.hasAttribute("x"))
                .toList();
        List<Double> rows =
                bars.stream().map(bar -> Drawn.number(bar, "y")).distinct().toList();
        assertEquals(2 * waters.size(), rows.size());
        for (int i = 0; i < waters.size(); i++) {
            double cations = length(bars, rows.get(2 * i)) * drawn.perUnit(true);
            double anions = length(bars, rows.get(2 * i + 1)) * drawn.perUnit(true);
            double longer = Math.max(
                    waters.get(i).ionBalance().cations().in(MILLIEQUIVALENT_PER_LITRE),
                    waters.get(i).ionBalance().anions().in(MILLIEQUIVALENT_PER_LITRE));
            double rounding = 7 * 0.01 * drawn.perUnit(true); // of as many parts
            assertEquals(longer, cations, rounding);
            assertEquals(longer, anions, rounding);
        }
        double calcium = Drawn.number(bars.get(0), "width") * drawn.perUnit(true);
        assertEquals(
                Ion.CALCIUM.equivalents(Samples.TAP.total(Ion.CALCIUM)).in(MILLIEQUIVALENT_PER_LITRE),
                calcium,
                RULER * drawn.perUnit(true));
    }

    private static double length(List<Element> bars, double row) {
        return bars.stream()
                .filter(bar -> Drawn.number(bar, "y") == row)
                .mapToDouble(bar -> Drawn.number(bar, "width"))
                .sum();
    }
}
