/*
 * Evenwater for firmware: how a controller calls it. An invented house: 20 grains of hardness, a valve with a meter of one pulse
 * for each litre, a pump that doses after a water change.
 *
 *     cc -std=c99 example.c ew_control.c ew_fixed.c ew_units.c -o example && ./example
 */
#include <stdio.h>

#include "ew_control.h"
#include "ew_fixed.h"

/* Thousandths as people read them. */
static void print_thousandths(const char *what, int32_t value, const char *unit) {
    long size = value < 0 ? -(long) value : (long) value;
    printf("%s %s%ld.%03ld %s\n", what, value < 0 ? "-" : "", size / 1000, size % 1000, unit);
}

static int scales(void) {
    int32_t raw = 0;
    int32_t share = 0;
    int32_t sodium = 0;
    if (ew_fixed_hardness(EW_HARDNESS_GRAIN_PER_US_GALLON, EW_HARDNESS_GERMAN_DEGREE, 20000, &raw) != EW_OK
            || ew_fixed_bypass_share(raw, 0, 6000, &share) != EW_OK
            || ew_fixed_sodium_added(EW_HARDNESS_GERMAN_DEGREE, raw - 6000, &sodium) != EW_OK) {
        return 1;
    }
    print_thousandths("hardness", raw, "degrees");
    print_thousandths("raw water for 6 degrees", share / 10, "%"); /* a share is in millionths */
    print_thousandths("sodium added", sodium, "mg/L");
    return 0;
}

static int valve(void) {
    ew_valve_settings settings;
    ew_valve_state state;
    ew_valve_settings_init(&settings);
    if (ew_valve_settings_put(&settings, EW_VALVE_SETTING_PULSE_NANOLITRES, 1000000000) != EW_VALVE_OK
            || ew_valve_settings_put(&settings, EW_VALVE_SETTING_CAPACITY_NANOLITRES, INT64_C(2000000000000)) != EW_VALVE_OK) {
        return 2;
    }
    int64_t clock = INT64_C(1767225600); /* local time; here midnight of a first of January */
    if (ew_valve_begin(&settings, &state, 0, clock, INT64_C(2000000000000)) != EW_VALVE_OK) {
        return 3;
    }
    ew_bool starts = 0;
    for (int hour = 1; hour <= 24 * 10 && !starts; hour++) {
        clock += 3600;
        int32_t notices = ew_valve_step(&settings, &state, 15 * hour, clock); /* 15 L in each hour */
        if (notices < 0 || (notices & EW_VALVE_BAD_INPUT) || ew_valve_rule_is_to_start(&settings, &state, &starts) != EW_OK) {
            return 4;
        }
        if (starts) {
            printf("regeneration after %d hours\n", hour);
        }
    }
    int64_t save[EW_VALVE_SAVE_LENGTH];
    ew_valve_state restored;
    ew_bool same = 0;
    if (ew_valve_save_write(&settings, &state, save, EW_VALVE_SAVE_LENGTH) != EW_VALVE_SAVE_OK
            || ew_valve_save_read(&settings, &restored, save, EW_VALVE_SAVE_LENGTH) != EW_VALVE_SAVE_OK
            || ew_valve_state_is_same_as(&state, &restored, &same) != EW_OK) {
        return 5;
    }
    printf("restored as saved: %s\n", same ? "yes" : "no");
    return 0;
}

static int pump(void) {
    ew_pump_settings settings = {{0}};
    ew_pump_memory memory;
    settings.values[EW_PUMP_SETTINGS_CAP] = INT64_C(20000000000);       /* 20 mL in any 24 hours */
    settings.values[EW_PUMP_SETTINGS_PER_LITRE] = 500000000;            /* 0.5 mL for each litre added */
    settings.values[EW_PUMP_SETTINGS_GRACE] = 3600;
    settings.values[EW_PUMP_SETTINGS_RESERVOIR] = INT64_C(1000000000000); /* 1 L */
    settings.values[EW_PUMP_SETTINGS_DRIFT_PER_MILLE] = 100;
    settings.values[EW_PUMP_SETTINGS_CONFIRM_WITHIN] = 900;
    if (ew_pump_start(&settings, &memory, 1000, 10, 1000000, INT64_C(1000000000000), 0) != EW_PUMP_DONE) {
        return 6;
    }
    ew_pump_tube_seen_full(&memory);
    ew_pump_water_added(&settings, &memory, 12000000); /* 12 L in microlitres */
    if (ew_pump_tick(&settings, &memory, 1060, 70) != EW_PUMP_RUN) {
        return 7;
    }
    /* here: save the memory, then move the pump, then report */
    printf("pump makes %lld steps\n", (long long) memory.values[EW_PUMP_MEMORY_PENDING]);
    int32_t status = ew_pump_dosed(&settings, &memory, memory.values[EW_PUMP_MEMORY_RUN],
            memory.values[EW_PUMP_MEMORY_PENDING], 1100, 110);
    printf("dosed %lld uL\n", (long long) (memory.values[EW_PUMP_MEMORY_DOSED] / 1000000));
    return status == EW_PUMP_DONE ? 0 : 8;
}

int main(void) {
    int failed = scales();
    failed = failed ? failed : valve();
    return failed ? failed : pump();
}
