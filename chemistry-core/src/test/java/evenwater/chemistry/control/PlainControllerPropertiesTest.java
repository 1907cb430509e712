package evenwater.chemistry.control;

import static evenwater.chemistry.control.Household.NOON;
import static evenwater.chemistry.quantity.WaterUnits.LITRE;
import static evenwater.chemistry.quantity.WaterUnits.volume;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.testing.Json;
import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What the plain forms of controllers keep: a state that was taken up from them goes on as the one that was saved. */
class PlainControllerPropertiesTest {

    private static List<PlainSave> readBack(long[] save) {
        PlainSave plain = PlainSave.of(save);
        return List.of(
                plain,
                Json.throughJackson(plain, PlainSave.class),
                Json.throughGson(plain, PlainSave.class),
                Json.throughDoubles(plain, PlainSave.class));
    }

    @Property
    void anyNumbersSurvive(@ForAll long[] save) {
        for (PlainSave read : readBack(save)) {
            assertArrayEquals(save, read.toSave());
        }
    }

    private static SoftenerSettings settings(Random random) {
        return SoftenerSettings.builder(
                        volume(0.1 + random.nextDouble(), LITRE), volume(200 + 800 * random.nextDouble(), LITRE))
                .firstReserve(volume(150 * random.nextDouble(), LITRE))
                .atOnceBelow(volume(100 * random.nextDouble(), LITRE))
                .night(LocalTime.ofSecondOfDay(random.nextInt(86_400)), Duration.ofMinutes(1 + random.nextInt(600)))
                .longestAge(Duration.ofDays(random.nextInt(1000)))
                .mostFailures(1 + random.nextInt(1000))
                .build();
    }

    @Property(tries = 200)
    void aSoftenerGoesOnAlike(@ForAll Random random, @ForAll @IntRange(max = 60) int readings) {
        SoftenerSettings settings = settings(random);
        SoftenerState state = SoftenerState.regenerated(settings, 0, NOON);
        long reading = 0;
        for (int i = 0; i < readings; i++) { // days of use, so that something is learned
            reading += random.nextInt(300);
            state = state.read(reading, state.time().plusMinutes(300L + random.nextInt(300)));
            if (random.nextInt(10) == 0) {
                state = state.regenerationStarted();
            } else if (random.nextInt(10) == 0) {
                state = state.regenerationFinished();
            }
        }
        PlainSoftenerSettings plain = settings.toPlain();
        for (PlainSoftenerSettings read : List.of(
                plain,
                Json.throughJackson(plain, PlainSoftenerSettings.class),
                Json.throughGson(plain, PlainSoftenerSettings.class),
                Json.throughDoubles(plain, PlainSoftenerSettings.class))) {
            assertEquals(settings, SoftenerSettings.from(read));
            for (PlainSave save : readBack(state.save())) {
                SoftenerState back = SoftenerSettings.from(read).restore(save.toSave());
                assertArrayEquals(state.save(), back.save());
                assertEquals(state.decision(), back.decision());
            }
        }
    }

    @Property(tries = 200)
    void aPumpGoesOnAlike(@ForAll Random random, @ForAll @IntRange(max = 100) int ticks) {
        DosingPump pump = Bench.builder().build();
        DosingPumpState state = Bench.running(pump);
        double hours = 0.1;
        for (int i = 0; i < ticks; i++) {
            hours += random.nextDouble();
            PumpAnswer answer = Bench.tick(state, hours);
            state = answer.state();
            if (answer.status() == PumpStatus.RUN && random.nextInt(4) > 0) {
                state = state.dosed(state.runNumber(), state.stepsToRun(), Bench.at(hours), Bench.up(hours))
                        .state();
            }
        }
        for (PlainSave save : readBack(state.save())) {
            assertEquals(state, DosingPump.from(pump.toPlain()).restore(save.toSave()));
        }
    }
}
