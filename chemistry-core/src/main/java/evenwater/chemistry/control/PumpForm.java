package evenwater.chemistry.control;

import static evenwater.chemistry.kernel.PumpSettings.LARGEST_CAP;
import static evenwater.chemistry.kernel.PumpSettings.LARGEST_PER_LITRE;
import static evenwater.chemistry.kernel.PumpSettings.LARGEST_RESERVOIR;
import static evenwater.chemistry.kernel.PumpSettings.MOST_PORTIONS;

import evenwater.chemistry.kernel.PumpMemory;
import evenwater.chemistry.kernel.PumpSettings;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.UnreadableTextException;
import evenwater.chemistry.substance.Compound;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Between {@link DosingPump} and {@link PlainDosingPump}: writes, and refuses by name what cannot be a pump. */
final class PumpForm {

    private static final String WHAT = "plain settings of a dosing pump";
    private static final String STEP = "picolitresPerStep";

    private static final long DAY = 86_400;

    /** A whole number of the form: where it stands among the settings, and its range. */
    private record Setting(String name, int place, long least, long most) {}

    private static final List<Setting> SETTINGS = List.of(
            new Setting("dailyCapInPicolitres", PumpSettings.CAP, 1, LARGEST_CAP),
            new Setting("dailyDoseInPicolitres", PumpSettings.DAILY, 0, LARGEST_CAP),
            new Setting("picolitresPerLitreOfAddedWater", PumpSettings.PER_LITRE, 0, LARGEST_PER_LITRE),
            new Setting("portionsToMakeUp", PumpSettings.CATCH_UP, 0, MOST_PORTIONS),
            new Setting("graceInSeconds", PumpSettings.GRACE, 60, DAY),
            new Setting("reservoirInPicolitres", PumpSettings.RESERVOIR, 1, LARGEST_RESERVOIR),
            new Setting("unusableInPicolitres", PumpSettings.UNUSABLE, 0, LARGEST_RESERVOIR),
            new Setting("tubeInPicolitres", PumpSettings.TUBE, 0, LARGEST_CAP),
            new Setting("warnBelowDays", PumpSettings.LOW_DAYS, 0, 366),
            new Setting("driftInThousandths", PumpSettings.DRIFT_PER_MILLE, 1, 1000),
            new Setting("confirmWithinInSeconds", PumpSettings.CONFIRM_WITHIN, 1, DAY));

    private PumpForm() {}

    static PlainDosingPump of(StockSolution stock, PumpCalibration calibration, long[] settings) {
        Map<String, @Nullable Number> numbers = new LinkedHashMap<>();
        numbers.put(STEP, calibration.picolitresPerStep());
        for (Setting setting : SETTINGS) {
            numbers.put(setting.name, settings[setting.place]);
        }
        List<@Nullable Number> portions = new ArrayList<>();
        for (int i = 0; i < settings[PumpSettings.PORTIONS]; i++) {
            portions.add(settings[PumpSettings.TIMES + i]);
        }
        return new PlainDosingPump(
                PlainDosingPump.VERSION,
                nameInTable(stock.compound()),
                stock.compound().strength(),
                text(stock.concentration()),
                calibration.isTimed(),
                numbers,
                portions);
    }

    private static String nameInTable(Compound compound) {
        for (Compound known : Compound.all()) {
            if (known.ofStrength(compound.strength()).equals(compound)) {
                return known.name();
            }
        }
        throw new IllegalArgumentException(
                "stock must be of a compound of the table to have a plain form, but was of " + compound.name());
    }

    private static String text(MassConcentration concentration) {
        String text = concentration.toString();
        try {
            if (MassConcentration.parse(text).equals(concentration)) {
                return text;
            }
        } catch (UnreadableTextException e) {
            // refused below, as one that reads as something else
        }
        throw new IllegalArgumentException("concentration of the stock must be in one of the units "
                + MassConcentration.units() + " to have a plain form, but was " + text);
    }

    static DosingPump read(PlainDosingPump plain) {
        PlainNumbers.version(WHAT, plain.version(), PlainDosingPump.VERSION);
        StockSolution stock = StockSolution.of(
                Compound.named(PlainNumbers.present(WHAT, "compound", plain.compound()))
                        .ofStrength(PlainNumbers.present(WHAT, "strength", plain.strength())),
                MassConcentration.parse(PlainNumbers.present(WHAT, "concentration", plain.concentration())));
        boolean timed = PlainNumbers.present(WHAT, "timed", plain.timed());
        PlainNumbers numbers = new PlainNumbers(WHAT, plain.numbers());
        long[] settings = new long[PumpSettings.LENGTH];
        List<String> names = new ArrayList<>(List.of(STEP));
        for (Setting setting : SETTINGS) {
            names.add(setting.name);
            settings[setting.place] = numbers.whole(setting.name, setting.least, setting.most);
        }
        settings[PumpSettings.MILLISECONDS_PER_STEP] = timed ? 1 : 0;
        long step = numbers.whole(STEP, 1, PumpMemory.LARGEST_STEP);
        numbers.refuseOthers(names);
        portions(
                settings,
                PlainNumbers.present(WHAT, "portionsInSecondsAfterMidnight", plain.portionsInSecondsAfterMidnight()));
        refuseMisfits(settings);
        return new DosingPump(stock, new PumpCalibration(step, timed), settings);
    }

    private static void portions(long[] settings, List<@Nullable Number> stated) {
        if (stated.size() > MOST_PORTIONS) {
            throw new IllegalArgumentException(
                    WHAT + " must have at most " + MOST_PORTIONS + " portions a day, but have " + stated.size());
        }
        settings[PumpSettings.PORTIONS] = stated.size();
        long least = 0;
        for (int i = 0; i < stated.size(); i++) {
            long time = PlainNumbers.whole(WHAT, "time of portion " + (i + 1), stated.get(i), least, DAY - 1);
            settings[PumpSettings.TIMES + i] = time;
            least = time + 1;
        }
    }

    /** What each number alone cannot show. */
    private static void refuseMisfits(long[] s) {
        String misfit = "";
        if (s[PumpSettings.DAILY] > s[PumpSettings.CAP]) {
            misfit = "dailyDoseInPicolitres must be at most dailyCapInPicolitres " + s[PumpSettings.CAP] + ", but was "
                    + s[PumpSettings.DAILY];
        } else if (s[PumpSettings.UNUSABLE] >= s[PumpSettings.RESERVOIR]) {
            misfit = "unusableInPicolitres must be below reservoirInPicolitres " + s[PumpSettings.RESERVOIR]
                    + ", but was " + s[PumpSettings.UNUSABLE];
        } else if ((s[PumpSettings.DAILY] > 0) != (s[PumpSettings.PORTIONS] > 0)) {
            misfit = "a daily dose needs portions and portions need one, but dailyDoseInPicolitres was "
                    + s[PumpSettings.DAILY] + " and portions were " + s[PumpSettings.PORTIONS];
        }
        if (!misfit.isEmpty()) {
            throw new IllegalArgumentException(WHAT + ": " + misfit);
        }
    }
}
