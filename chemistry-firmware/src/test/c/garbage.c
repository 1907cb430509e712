/*
 * Calls every event with structs of random bytes, under a sanitizer of the test beside it. Only the two numbers that say how long
 * a loop goes on are kept small, since a call may take long otherwise. Small numbers and ends of ranges are mixed in.
 */
#include <stdio.h>

#include "../../../c/ew_control.h"

static uint64_t seed = 88172645463325252u;

static int64_t anything(void) {
    seed ^= seed << 13;
    seed ^= seed >> 7;
    seed ^= seed << 17;
    uint64_t bits = seed * 2685821657736338717u;
    switch (seed >> 61) {
        case 0: return (int64_t) (bits >> 60);
        case 1: return INT64_MAX - (int64_t) (bits >> 62);
        case 2: return INT64_MIN + (int64_t) (bits >> 62);
        case 3: return -(int64_t) (bits >> 60);
        case 4: return (int64_t) (bits >> 20);
        default: return (int64_t) (bits >> 1) - (INT64_MAX >> 1);
    }
}

static void valve(void) {
    ew_valve_settings s;
    ew_valve_state n;
    for (int i = 0; i < EW_VALVE_SETTING_VALUES; i++) {
        s.values[i] = anything();
    }
    for (int i = 0; i < EW_VALVE_STATE_COUNT; i++) {
        n.counts[i] = anything();
    }
    for (int i = 0; i < EW_VALVE_STATE_LEARNED; i++) {
        union {
            int64_t bits;
            double number;
        } both;
        both.bits = anything();
        n.learned[i] = both.number;
    }
    int64_t save[EW_VALVE_SAVE_LENGTH];
    int32_t answer;
    int64_t number;
    ew_bool yes;
    ew_valve_step(&s, &n, anything(), anything());
    ew_valve_restart(&s, &n, anything(), anything());
    ew_valve_started(&s, &n);
    ew_valve_finished(&s, &n, anything());
    ew_valve_failed(&n, (ew_bool) (anything() & 1));
    ew_valve_salt(&n, (ew_bool) (anything() & 1));
    ew_valve_holiday(&n, (ew_bool) (anything() & 1));
    ew_valve_meter_exchanged(&s, &n, anything());
    ew_valve_failures_acknowledged(&n);
    ew_valve_rule_due(&s, &n, &answer);
    ew_valve_rule_hold(&s, &n, &answer);
    ew_valve_rule_is_to_start(&s, &n, &yes);
    ew_valve_use_reserve_nanolitres(&s, &n, &number);
    ew_valve_state_count(&n, (int32_t) anything(), &number);
    ew_valve_settings_value(&s, (int32_t) anything(), &number);
    ew_valve_settings_put(&s, (int32_t) anything(), anything());
    ew_valve_save_write(&s, &n, save, EW_VALVE_SAVE_LENGTH);
    ew_valve_save_read(&s, &n, save, EW_VALVE_SAVE_LENGTH);
    ew_valve_save_read(&s, &n, save, (int32_t) -(anything() & 0xff));
    ew_valve_begin(&s, &n, anything(), anything(), anything());
}

static void pump(void) {
    ew_pump_settings s;
    ew_pump_memory m;
    for (int i = 0; i < EW_PUMP_SETTINGS_LENGTH; i++) {
        s.values[i] = anything();
    }
    s.values[EW_PUMP_SETTINGS_PORTIONS] = anything() & 31;
    for (int event = 0; event < 16; event++) {
        for (int i = 0; i < EW_PUMP_MEMORY_LENGTH; i++) {
            m.values[i] = anything();
        }
        m.values[31] = anything() & 63; /* how many entries the window of 24 hours has */
        int64_t number;
        ew_bool yes;
        switch (event) {
            case 0: ew_pump_tick(&s, &m, anything(), anything()); break;
            case 1: ew_pump_restarted(&s, &m, anything(), anything(), anything()); break;
            case 2: ew_pump_dose_by_hand(&s, &m, anything(), anything(), anything()); break;
            case 3: ew_pump_prime(&s, &m, anything(), 1, anything(), anything()); break;
            case 4: ew_pump_dosed(&s, &m, anything(), anything(), anything(), anything()); break;
            case 5: ew_pump_failed(&s, &m, anything(), anything(), anything()); break;
            case 6: ew_pump_water_added(&s, &m, anything()); break;
            case 7: ew_pump_refilled(&s, &m, anything()); break;
            case 8: ew_pump_calibrated(&s, &m, anything()); break;
            case 9: ew_pump_resumed(&s, &m, anything(), anything()); break;
            case 10: ew_pump_dosed_unordered(&s, &m, anything(), anything(), anything()); break;
            case 11: ew_pump_settings_changed(&s, &m, anything(), anything(), anything()); break;
            case 12: ew_pump_is_low(&s, &m, &yes); break;
            case 13: ew_pump_memory_is_usable(&m, &yes); break;
            case 14: ew_pump_allowed(&s, &m, &number); break;
            default: ew_pump_start(&s, &m, anything(), anything(), anything(), anything(), anything()); break;
        }
    }
}

int main(void) {
    for (int i = 0; i < 20000; i++) {
        valve();
        pump();
    }
    puts("done");
    return 0;
}
