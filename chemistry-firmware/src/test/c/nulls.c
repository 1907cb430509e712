/* Calls with null pointers, each of which must be refused by its status. */
#include <stdio.h>

#include "../../../c/ew_control.h"
#include "../../../c/ew_double.h"
#include "../../../c/ew_fixed.h"

int main(void) {
    ew_valve_settings settings;
    ew_valve_state state;
    ew_pump_settings pump = {{0}};
    ew_pump_memory memory = {{0}};
    int64_t save[EW_VALVE_SAVE_LENGTH] = {0};
    ew_valve_settings_init(&settings);
    ew_valve_state_init(&state);
    int32_t answers[] = {
        ew_valve_settings_init(0),
        ew_valve_state_init(0),
        ew_valve_settings_put(0, 0, 1),
        ew_valve_begin(0, &state, 0, 0, 0),
        ew_valve_begin(&settings, 0, 0, 0, 0),
        ew_valve_step(&settings, 0, 0, 0),
        ew_valve_restart(0, 0, 0, 0),
        ew_valve_failed(0, 0),
        ew_valve_rule_due(&settings, &state, 0),
        ew_valve_save_write(&settings, &state, 0, EW_VALVE_SAVE_LENGTH),
        ew_valve_save_read(&settings, 0, save, EW_VALVE_SAVE_LENGTH),
        ew_save_checksum(0, 1, save),
        ew_pump_start(0, &memory, 0, 0, 1, 0, 0),
        ew_pump_tick(&pump, 0, 0, 0),
        ew_pump_tube_drained(0),
        ew_pump_allowed(&pump, &memory, 0),
        ew_hardness(0, 1, 1, 0),
        ew_temperature(0, 1, 1, 0),
        ew_bypass_share(3, 1, 2, 0),
        ew_sodium_added(0, 1, 0),
        ew_linear_to_25(1, 25, 0.02, 0),
        ew_natural_to_25(1, 25, 0),
        ew_membrane_concentrate(1, 0, 0, 0),
        ew_fixed_flow(0, 1, 1, 0),
        ew_fixed_temperature(0, 1, 1, 0),
        ew_fixed_bypass_share(3, 1, 2, 0),
        ew_fixed_blended_hardness(3, 1, 0, 0),
        ew_fixed_natural_to_25(1, 25000, 0),
        ew_fixed_linear_to_25(1, 25000, 20000, 0),
        ew_fixed_membrane_concentrate(1, 0, 0, 0),
    };
    int count = (int) (sizeof answers / sizeof answers[0]);
    int refused = 0;
    for (int i = 0; i < count; i++) {
        refused += answers[i] == EW_NULL_POINTER;
    }
    printf("refused %d of %d\n", refused, count);
    return 0;
}
