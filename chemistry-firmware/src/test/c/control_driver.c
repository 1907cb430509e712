/*
 * Plays events of valve and pump from the standard input and writes what came of each to the standard output: whole numbers of
 * 64 bits in the machine's order. An event is a code and eight arguments. The test beside it plays the same in Java.
 */
#include <stdio.h>

#include "../../../c/ew_control.h"

#define SAVE_LENGTH EW_VALVE_SAVE_LENGTH
#define BLOCK_LENGTH (EW_PUMP_MEMORY_LENGTH + EW_SAVE_OVERHEAD)

static ew_valve_settings valve_settings;
static ew_valve_state valve;
static ew_valve_state valve_before;
static ew_pump_settings pump_settings;
static ew_pump_memory pump;

static void put(int64_t number) {
    fwrite(&number, sizeof number, 1, stdout);
}

/* Writes, damages one number, and reads back. */
static int32_t valve_saved(const int64_t *a) {
    int64_t save[SAVE_LENGTH] = {0};
    int32_t written = ew_valve_save_write(&valve_settings, &valve, save, SAVE_LENGTH);
    save[a[0]] = (int64_t) ((uint64_t) save[a[0]] ^ (uint64_t) a[1]);
    int32_t read = a[2] ? ew_valve_save_read_under_new_settings(&valve_settings, &valve, save, (int32_t) a[3])
                        : ew_valve_save_read(&valve_settings, &valve, save, (int32_t) a[3]);
    return 100 * written + read;
}

static int32_t pump_saved(const int64_t *a) {
    int64_t block[BLOCK_LENGTH] = {0};
    int64_t print = 0;
    ew_save_checksum(pump_settings.values, EW_PUMP_SETTINGS_LENGTH, &print);
    int32_t written = ew_save_write(
            EW_PUMP_MEMORY_VERSION, print, pump.values, EW_PUMP_MEMORY_LENGTH, block, BLOCK_LENGTH);
    block[a[0]] = (int64_t) ((uint64_t) block[a[0]] ^ (uint64_t) a[1]);
    int32_t read = ew_save_read(EW_PUMP_MEMORY_VERSION, print + a[2], block, (int32_t) a[3], pump.values, EW_PUMP_MEMORY_LENGTH);
    return 100 * written + read;
}

static int32_t valve_event(int64_t code, const int64_t *a) {
    switch (code) {
        case 0: return ew_valve_settings_init(&valve_settings) + ew_valve_state_init(&valve);
        case 1: return ew_valve_settings_put(&valve_settings, (int32_t) a[0], a[1]);
        case 2: return ew_valve_begin(&valve_settings, &valve, a[0], a[1], a[2]);
        case 3: return ew_valve_step(&valve_settings, &valve, a[0], a[1]);
        case 4: return ew_valve_restart(&valve_settings, &valve, a[0], a[1]);
        case 5: return ew_valve_started(&valve_settings, &valve);
        case 6: return ew_valve_finished(&valve_settings, &valve, a[0]);
        case 7: return ew_valve_failed(&valve, a[0] != 0);
        case 8: return ew_valve_failures_acknowledged(&valve);
        case 9: return ew_valve_salt(&valve, a[0] != 0);
        case 10: return ew_valve_holiday(&valve, a[0] != 0);
        case 11: return ew_valve_meter_exchanged(&valve_settings, &valve, a[0]);
        case 12: return valve_saved(a);
        case 13: return ew_valve_state_init(&valve);
        default: return -100;
    }
}

static int32_t pump_forgotten(void) {
    static const ew_pump_settings no_settings;
    static const ew_pump_memory no_memory;
    pump_settings = no_settings;
    pump = no_memory;
    return 0;
}

static int32_t pump_event(int64_t code, const int64_t *a) {
    ew_pump_settings *s = &pump_settings;
    switch (code) {
        case 40: s->values[a[0]] = a[1]; return 0;
        case 41: return ew_pump_start(s, &pump, a[0], a[1], a[2], a[3], a[4]);
        case 42: return ew_pump_restarted(s, &pump, a[0], a[1], a[2]);
        case 43: return ew_pump_tick(s, &pump, a[0], a[1]);
        case 44: return ew_pump_dose_by_hand(s, &pump, a[0], a[1], a[2]);
        case 45: return ew_pump_prime(s, &pump, a[0], a[1] != 0, a[2], a[3]);
        case 46: return ew_pump_dosed(s, &pump, a[0], a[1], a[2], a[3]);
        case 47: return ew_pump_failed(s, &pump, a[0], a[1], a[2]);
        case 48: return ew_pump_water_added(s, &pump, a[0]);
        case 49: return ew_pump_refilled(s, &pump, a[0]);
        case 50: return ew_pump_calibrated(s, &pump, a[0]);
        case 51: return ew_pump_tube_seen_full(&pump);
        case 52: return ew_pump_tube_drained(&pump);
        case 53: return ew_pump_paused(&pump);
        case 54: return ew_pump_resumed(s, &pump, a[0], a[1]);
        case 55: return ew_pump_dosed_unordered(s, &pump, a[0], a[1], a[2]);
        case 56: return ew_pump_acknowledged(&pump, a[0]);
        case 57: return ew_pump_settings_changed(s, &pump, a[0], a[1], a[2]);
        case 58: return pump_saved(a);
        case 59: return pump_forgotten();
        default: return -100;
    }
}

static void show_valve(void) {
    int64_t save[SAVE_LENGTH] = {0};
    put(ew_valve_save_write(&valve_settings, &valve, save, SAVE_LENGTH));
    for (int i = 0; i < SAVE_LENGTH; i++) {
        put(save[i]);
    }
    int32_t answer = 0;
    ew_valve_rule_due(&valve_settings, &valve, &answer);
    put(answer);
    ew_valve_rule_reason(&valve_settings, &valve, &answer);
    put(answer);
    ew_valve_rule_hold(&valve_settings, &valve, &answer);
    put(answer);
    ew_bool yes = 0;
    ew_valve_rule_is_to_start(&valve_settings, &valve, &yes);
    put(yes);
    int64_t reserve = 0;
    ew_valve_use_reserve_nanolitres(&valve_settings, &valve, &reserve);
    put(reserve);
    for (int32_t i = 0; i < EW_VALVE_COUNT_VALUES; i++) {
        int64_t count = 0;
        ew_valve_state_count(&valve, i, &count);
        put(count);
    }
    double learned = 0;
    ew_valve_state_mean_nanolitres_per_day(&valve, &learned);
    fwrite(&learned, sizeof learned, 1, stdout);
    ew_valve_state_deviation_nanolitres_per_day(&valve, &learned);
    fwrite(&learned, sizeof learned, 1, stdout);
    for (int32_t i = 0; i < EW_VALVE_SETTING_VALUES; i++) {
        int64_t value = 0;
        ew_valve_settings_value(&valve_settings, i, &value);
        put(value);
    }
    int64_t print = 0;
    ew_valve_settings_fingerprint(&valve_settings, &print);
    put(print);
    ew_valve_state_is_same_as(&valve, &valve_before, &yes);
    put(yes);
}

static void show_pump(void) {
    for (int i = 0; i < EW_PUMP_MEMORY_LENGTH; i++) {
        put(pump.values[i]);
    }
    int64_t volume = 0;
    ew_pump_allowed(&pump_settings, &pump, &volume);
    put(volume);
    ew_pump_usable(&pump_settings, &pump, &volume);
    put(volume);
    ew_pump_daily_use(&pump_settings, &pump, &volume);
    put(volume);
    ew_bool yes = 0;
    ew_pump_is_low(&pump_settings, &pump, &yes);
    put(yes);
    ew_pump_settings_are_usable(&pump_settings, &yes);
    put(yes);
    ew_pump_memory_is_usable(&pump, &yes);
    put(yes);
}

int main(void) {
    int64_t event[9];
    while (fread(event, sizeof event, 1, stdin) == 1) {
        if (event[0] < 40) {
            valve_before = valve;
            put(valve_event(event[0], event + 1));
            valve_before = event[0] == 0 ? valve : valve_before;
            show_valve();
        } else {
            put(pump_event(event[0], event + 1));
            show_pump();
        }
    }
    return 0;
}
