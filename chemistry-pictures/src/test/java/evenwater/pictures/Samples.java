package evenwater.pictures;

import evenwater.chemistry.aquarium.Tank;
import evenwater.chemistry.aquarium.TankCourse;
import evenwater.chemistry.aquarium.TankVolume;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.exchange.CapacityCurve;
import evenwater.chemistry.exchange.Resin;
import evenwater.chemistry.exchange.ResinBed;
import evenwater.chemistry.exchange.ServiceRun;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Ledger;
import evenwater.chemistry.treatment.ReverseOsmosis;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.treatment.Train;
import evenwater.chemistry.uncertainty.MonteCarlo;
import evenwater.chemistry.uncertainty.Uncertain;
import evenwater.chemistry.water.Water;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Time;

/** One of each picture, of waters of our own invention. */
final class Samples {

    static final Water TAP = withCarbon(Water.builder()
            .total(Ion.CALCIUM, milligrams(Ion.CALCIUM, 104))
            .total(Ion.MAGNESIUM, milligrams(Ion.MAGNESIUM, 28))
            .total(Ion.SODIUM, milligrams(Ion.SODIUM, 9))
            .total(Ion.POTASSIUM, milligrams(Ion.POTASSIUM, 2))
            .total(Ion.CHLORIDE, milligrams(Ion.CHLORIDE, 32))
            .total(Ion.SULFATE, milligrams(Ion.SULFATE, 49))
            .total(Ion.NITRATE, milligrams(Ion.NITRATE, 18))
            .alkalinity(Alkalinity.parse("14.5 °dKH"))
            .temperature(WaterUnits.temperature(12, WaterUnits.CELSIUS))
            .measuredPH(7.6)
            .build());

    static final Softener SOFTENER = Softener.withSodium().leaking(Hardness.parse("0.5 gpg"));

    static final Ledger LEDGER =
            Train.of(SOFTENER, ReverseOsmosis.rejecting(0.95, 0.98)).run(TAP);

    static final ServiceRun RUN = run();

    static final WaterQuantity<Time> WEEKS = WaterUnits.time(84, WaterUnits.DAY);

    private Samples() {}

    /** The pH becomes carbon, which treatments conserve. */
    private static Water withCarbon(Water measured) {
        return measured.withCarbon(Speciation.of(measured).carbon());
    }

    static AmountConcentration milligrams(Ion ion, double value) {
        return AmountConcentration.of(value, ion.milligramPerLitre());
    }

    private static ServiceRun run() {
        ResinBed bed = ResinBed.of(Resin.gel(), WaterUnits.parseVolume("25 L"));
        return bed.serviceFor(TAP, bed.flow(16), WaterUnits.parseVolume("9000 L"));
    }

    static Map<String, Picture> all() {
        Map<String, Picture> all = new LinkedHashMap<>();
        all.put("sodium", SodiumPicture.of(SOFTENER, TAP, Hardness.GRAIN_PER_US_GALLON));
        all.put("breakthrough", BreakthroughPicture.of(RUN, WaterUnits.LITRE).endingAt(Hardness.parse("1 gpg")));
        all.put("capacity", capacity());
        all.put("carbonate", CarbonatePicture.of(TAP));
        all.put("saturation", saturation());
        all.put("tank", tank());
        all.put("balance", BalancePicture.of(LEDGER));
        return all;
    }

    static CapacityPicture capacity() {
        SaltDose dose = SaltDose.parse("8 lb/ft³");
        CapacityCurve trade = CapacityCurve.ofTheTrade();
        CapacityCurve own = CapacityCurve.of(
                Map.of(
                        SaltDose.parse("4 lb/ft³"), ExchangeCapacity.parse("14 kgr/ft³"),
                        SaltDose.parse("8 lb/ft³"), ExchangeCapacity.parse("20 kgr/ft³"),
                        SaltDose.parse("15 lb/ft³"), ExchangeCapacity.parse("26 kgr/ft³")),
                "own tests");
        return CapacityPicture.of(trade, SaltDose.POUND_PER_CUBIC_FOOT, ExchangeCapacity.KILOGRAIN_PER_CUBIC_FOOT)
                .with(own)
                .marking("planned", dose, trade.capacity(dose));
    }

    static SaturationPicture saturation() {
        return SaturationPicture.of(
                        "tap water",
                        TAP,
                        WaterUnits.temperature(5, WaterUnits.CELSIUS),
                        WaterUnits.temperature(50, WaterUnits.CELSIUS),
                        WaterUnits.CELSIUS)
                .with("behind the softener", LEDGER.stages().get(0).after());
    }

    static TankPicture<AmountConcentration> tank() {
        Uncertain<WaterQuantity<Dimensionless>> evaporation =
                Uncertain.normal(1, 0.15).named("evaporation");
        Uncertain<WaterQuantity<Dimensionless>> hardness =
                Uncertain.normal(1, 0.05).named("hardness");
        Water soft = SOFTENER.treat(TAP);
        List<TankCourse> draws = MonteCarlo.seeded(7)
                .draws(400)
                .outcomes(
                        List.of(evaporation, hardness),
                        draw -> course(
                                1.5 * draw.of(evaporation).in(WaterUnits.ONE),
                                TAP.mixedWith(soft, draw.of(hardness).in(WaterUnits.ONE) * 0.8)));
        return TankPicture.of(
                        "sodium",
                        Ion.SODIUM.milligramPerLitre(),
                        water -> water.total(Ion.SODIUM),
                        "topped off with softened water",
                        course(1.5, TAP.mixedWith(soft, 0.8)))
                .withDraws(draws, 0.95)
                .with("topped off with pure water", course(1.5, Water.pure()))
                .withLimit("what keepers of plants accept", milligrams(Ion.SODIUM, 50));
    }

    static TankCourse course(double evaporation, Water topOff) {
        return Tank.builder(TankVolume.estimatedFrom(WaterUnits.parseVolume("240 L")), TAP)
                .changing(0.25, WaterUnits.time(7, WaterUnits.DAY), TAP)
                .evaporatingToppedOffWith(FlowRate.of(evaporation, FlowRate.LITRE_PER_DAY), topOff)
                .build()
                .course(WEEKS);
    }

    /** Writes them into a folder, for those who want to look at them: {@code java … evenwater.pictures.Samples folder}. */
    public static void main(String[] args) throws IOException {
        for (Map.Entry<String, Picture> picture : all().entrySet()) {
            Files.writeString(
                    Path.of(args[0], picture.getKey() + ".svg"),
                    picture.getValue().toSvg());
        }
    }
}
