/*
 * Evenwater for firmware: the states of a softener's valve and of a dosing pump.
 *
 * Generated from the Java of the library's kernel; do not edit. See README.md. Apache License 2.0.
 */
#include "ew_control.h"

#if defined(__FAST_MATH__)
#error "compile without -ffast-math: with it NaN passes for a number"
#endif

/* A double must be the 64-bit one of IEEE 754: it is saved as its bits. */
typedef char ew_double_has_64_bits[sizeof(double) == sizeof(int64_t) ? 1 : -1];

#define EW_CHECK_POLYNOMIAL INT64_C(4823603603198064275)
#define EW_VALVE_SETTINGS_PULSE 0
#define EW_VALVE_SETTINGS_BITS 1
#define EW_VALVE_SETTINGS_FLOW 2
#define EW_VALVE_SETTINGS_DELAY 3
#define EW_VALVE_SETTINGS_GAP 4
#define EW_VALVE_SETTINGS_AGREEING 5
#define EW_VALVE_SETTINGS_SILENCE 6
#define EW_VALVE_SETTINGS_FIRST_RESERVE 7
#define EW_VALVE_SETTINGS_LEAST_RESERVE 8
#define EW_VALVE_SETTINGS_AT_ONCE 9
#define EW_VALVE_SETTINGS_NIGHT 10
#define EW_VALVE_SETTINGS_NIGHT_LASTS 11
#define EW_VALVE_SETTINGS_LONGEST_AGE 12
#define EW_VALVE_SETTINGS_INTERVAL 13
#define EW_VALVE_SETTINGS_DURATION 14
#define EW_VALVE_SETTINGS_CAPACITY 15
#define EW_VALVE_SETTINGS_FAILURES 16
#define EW_VALVE_STATE_SINCE_THE_RUN_BEGAN INT64_C(2)
#define EW_VALVE_STATE_CLOCK 0
#define EW_VALVE_STATE_READING 1
#define EW_VALVE_STATE_SINCE_READING 2
#define EW_VALVE_STATE_SUSPECT 3
#define EW_VALVE_STATE_SUSPECTS 4
#define EW_VALVE_STATE_WITHOUT_PULSE 5
#define EW_VALVE_STATE_PULSES 6
#define EW_VALVE_STATE_REGENERATING 7
#define EW_VALVE_STATE_REGENERATING_FOR 8
/* 1 if it is missing, EW_VALVE_STATE_SINCE_THE_RUN_BEGAN if a run began with it and has used it up. */
#define EW_VALVE_STATE_SALT_MISSING 9
#define EW_VALVE_STATE_FAILED 10
#define EW_VALVE_STATE_AGE 11
#define EW_VALVE_STATE_SINCE_END 12
#define EW_VALVE_STATE_CAPACITY 13
#define EW_VALVE_STATE_LEFT 14
#define EW_VALVE_STATE_OVERDRAWN 15
#define EW_VALVE_STATE_TODAY_SOFTENED 16
#define EW_VALVE_STATE_TODAY_BYPASSED 17
#define EW_VALVE_STATE_TODAY_EXHAUSTED 18
#define EW_VALVE_STATE_TOTAL_SOFTENED 19
#define EW_VALVE_STATE_TOTAL_BYPASSED 20
#define EW_VALVE_STATE_TOTAL_EXHAUSTED 21
#define EW_VALVE_STATE_WHOLE_DAY 22
#define EW_VALVE_STATE_AWAY 23
#define EW_VALVE_STATE_DAYS 24
#define EW_VALVE_STATE_LOW_DAYS 25
#define EW_VALVE_STATE_FAILURES 26
#define EW_VALVE_STATE_TIMED_OUT 27
#define EW_VALVE_STATE_READING_CLOCK 28
#define EW_VALVE_STATE_SEQUENCE 29
/* One in each microsecond would take thirty thousand years. */
#define EW_VALVE_STATE_MOST_EVENTS INT64_C(1000000000000000000)
/* Places in learned. */
#define EW_VALVE_STATE_MEAN 0
#define EW_VALVE_STATE_DEVIATION 1
#define EW_VALVE_DAY_SECONDS INT64_C(86400)
/* Spans of time stop growing here, some 300 years: no limit of theirs is as long. */
#define EW_VALVE_LONGEST_SECONDS INT64_C(10000000000)
/*
 * Longest time without power that is credited: 1000 days. Times the largest flow it stays far within a
 * long.
 */
#define EW_VALVE_LONGEST_OFF_SECONDS INT64_C(86400000)
#define EW_VALVE_MOST_COUNTED INT64_C(1000000)
#define EW_VALVE_SAVE_CONTENTS 32
#define EW_VALVE_USE_MOST_DAYS INT64_C(1000000)
/* No day's use and hence neither mean nor deviation comes near, in nL. */
#define EW_VALVE_USE_MOST_NANOLITRES 0x1.158e460913dp63 /* 1.0E19 */
#define EW_VALVE_USE_FIRST_DEVIATION 0x1.0p-2 /* 0.25 */
#define EW_VALVE_USE_SETTLED_DAYS 7
#define EW_VALVE_USE_LOW 0x1.999999999999ap-3 /* 0.2 */
#define EW_VALVE_USE_LOW_DAYS 14
#define EW_VALVE_USE_OUTLIER 0x1.8p1 /* 3.0 */
#define EW_VALVE_USE_LEAST_DEVIATION 0x1.999999999999ap-4 /* 0.1 */
#define EW_VALVE_USE_SHARE 0x1.0p-3 /* 0.125 */
#define EW_VALVE_USE_SLOW_SHARE 0x1.0p-5 /* 0.03125 */
#define EW_VALVE_USE_FLOOR_OF_FIRST INT64_C(4)
#define EW_VALVE_USE_COVER 0x1.0p1 /* 2.0 */
/* A step back is small below this part of a turn. */
#define EW_VALVE_METER_STEP_BACK INT64_C(100)
#define EW_PUMP_SETTINGS_DAY INT64_C(86400)
/*
 * Wall clock of the portion after EW_PUMP_MEMORY_SLOT, so that a tick before it need not look at the
 * schedule; 0 without portions.
 */
#define EW_PUMP_MEMORY_NEXT 29
#define EW_PUMP_MEMORY_WINDOW_HEAD 30
#define EW_PUMP_MEMORY_WINDOW_COUNT 31
#define EW_PUMP_MEMORY_WINDOW_TIMES 32
#define EW_PUMP_MEMORY_WINDOW_SIZE 50
#define EW_PUMP_MEMORY_WINDOW_VOLUMES 82
/* 4 million litres. */
#define EW_PUMP_MEMORY_LARGEST_TOTAL INT64_C(4000000000000000000)
/* What one run, asked for or not, may have moved: 1000 L. */
#define EW_PUMP_MEMORY_LARGEST_RUN INT64_C(1000000000000000)
#define EW_PUMP_ALL_FLAGS INT64_C(1023)
/* 10 m^3 in uL. */
#define EW_PUMP_MOST_WATER INT64_C(10000000000)
#define EW_PUMP_MICROLITRES_PER_LITRE INT64_C(1000000)
/*
 * By how many seconds the wall clock may run away from the uptime between two events before it counts
 * as set.
 */
#define EW_PUMP_CLOCK_TOLERANCE INT64_C(120)
#define EW_PUMP_WINDOW_LENGTH INT64_C(86400)
#define EW_PUMP_WINDOW_CELL INT64_C(1800)

/* Two's complement of 64 bits: what Java's long is. Compilers make nothing of it. */
static int64_t ew_wrap(uint64_t bits) {
    return bits <= (uint64_t) INT64_MAX ? (int64_t) bits : -(int64_t) (UINT64_MAX - bits) - 1;
}

/* The low 32 bits, as Java's cast to int has them. */
static int32_t ew_to_int(int64_t a) {
    uint32_t bits = (uint32_t) ((uint64_t) a & UINT32_MAX);
    return bits <= (uint32_t) INT32_MAX ? (int32_t) bits : -(int32_t) (UINT32_MAX - bits) - 1;
}

static int64_t ew_add(int64_t a, int64_t b) {
    return ew_wrap((uint64_t) a + (uint64_t) b);
}

static int64_t ew_sub(int64_t a, int64_t b) {
    return ew_wrap((uint64_t) a - (uint64_t) b);
}

static int64_t ew_mul(int64_t a, int64_t b) {
    return ew_wrap((uint64_t) a * (uint64_t) b);
}

static int32_t ew_add_int(int32_t a, int32_t b) {
    return ew_to_int((int64_t) a + b);
}

static int32_t ew_sub_int(int32_t a, int32_t b) {
    return ew_to_int((int64_t) a - b);
}

/* 0 for a divisor of 0, which only settings or a memory that no function made can have. */
static int64_t ew_div(int64_t a, int64_t b) {
    return b == 0 ? 0 : b == -1 ? ew_sub(0, a) : a / b;
}

static int64_t ew_shl(int64_t a, int64_t places) {
    return ew_wrap((uint64_t) a << ((uint64_t) places & 63));
}

static int64_t ew_sar(int64_t a, int64_t places) {
    uint64_t count = (uint64_t) places & 63;
    return a < 0 ? ew_wrap(~(~(uint64_t) a >> count)) : (int64_t) ((uint64_t) a >> count);
}

static int64_t ew_min(int64_t a, int64_t b) {
    return a < b ? a : b;
}

static int64_t ew_max(int64_t a, int64_t b) {
    return a > b ? a : b;
}

static int64_t ew_abs(int64_t a) {
    return a < 0 ? ew_sub(0, a) : a;
}

/* A place inside an array of so many elements. */
static int32_t ew_at(int64_t place, int32_t length) {
    return place < 0 ? 0 : place >= length ? length - 1 : (int32_t) place;
}

static void ew_copy(const int64_t *from, int64_t *to, int32_t count) {
    for (int32_t i = 0; i < count; i++) {
        to[i] = from[i];
    }
}

static void ew_fill(int64_t *to, int32_t count, int64_t value) {
    for (int32_t i = 0; i < count; i++) {
        to[i] = value;
    }
}

typedef union {
    double number;
    int64_t bits;
} ew_number;

static int64_t ew_bits(double number) {
    ew_number both;
    both.number = number;
    return both.bits;
}

static double ew_double(int64_t bits) {
    ew_number both;
    both.bits = bits;
    return both.number;
}

/* Neither may be NaN; the kernel's are not. */
static double ew_min_double(double a, double b) {
    return a < b ? a : b;
}

/* Neither may be NaN; the kernel's are not. */
static double ew_max_double(double a, double b) {
    return a > b ? a : b;
}

static double ew_abs_double(double a) {
    return a <= 0 ? 0 - a : a;
}

/* The nearest whole number towards 0; limits beyond the range and 0 for NaN, as Java's cast has it. */
static int64_t ew_to_long(double a) {
    if (a != a) {
        return 0;
    }
    if (a >= 0x1p63) {
        return INT64_MAX;
    }
    return a < -0x1p63 ? INT64_MIN : (int64_t) a;
}

/* From 2^52 on every double is whole. */
static double ew_ceil_double(double a) {
    if (!(a > -0x1p52 && a < 0x1p52)) {
        return a;
    }
    double whole = (double) (int64_t) a;
    return whole < a ? whole + 1 : whole;
}

static const struct {
    int32_t place;
    int64_t least;
    int64_t most;
    int64_t usual;
} ew_valve_setting_table[EW_VALVE_SETTING_VALUES] = {
    {EW_VALVE_SETTINGS_PULSE, INT64_C(1), INT64_C(1000000000000), INT64_C(100000000)}, /* pulse nanolitres */
    {EW_VALVE_SETTINGS_BITS, INT64_C(8), INT64_C(32), INT64_C(32)}, /* counter bits */
    {EW_VALVE_SETTINGS_FLOW, INT64_C(1), INT64_C(10000000000), INT64_C(1000000000)},
            /* largest flow nanolitres per second */
    {EW_VALVE_SETTINGS_DELAY, INT64_C(0), INT64_C(86400), INT64_C(60)}, /* reading delay seconds */
    {EW_VALVE_SETTINGS_GAP, INT64_C(60), INT64_C(2592000), INT64_C(90000)}, /* longest gap seconds */
    {EW_VALVE_SETTINGS_AGREEING, INT64_C(2), INT64_C(1000), INT64_C(3)}, /* agreeing readings */
    {EW_VALVE_SETTINGS_SILENCE, INT64_C(0), INT64_C(86400000), INT64_C(604800)}, /* silence seconds */
    {EW_VALVE_SETTINGS_CAPACITY, INT64_C(1), INT64_C(1000000000000000), INT64_C(1000000000000)},
            /* capacity nanolitres */
    {EW_VALVE_SETTINGS_FIRST_RESERVE, INT64_C(0), INT64_C(1000000000000000), INT64_C(400000000000)},
            /* first reserve nanolitres */
    {EW_VALVE_SETTINGS_LEAST_RESERVE, (-INT64_C(1)), INT64_C(1000000000000000), (-INT64_C(1))},
            /* least reserve nanolitres */
    {EW_VALVE_SETTINGS_AT_ONCE, (-INT64_C(1)), INT64_C(1000000000000000), (-INT64_C(1))}, /* at once nanolitres */
    {EW_VALVE_SETTINGS_NIGHT, INT64_C(0), INT64_C(86399), INT64_C(7200)}, /* night begins seconds */
    {EW_VALVE_SETTINGS_NIGHT_LASTS, INT64_C(60), INT64_C(86400), INT64_C(10800)}, /* night lasts seconds */
    {EW_VALVE_SETTINGS_LONGEST_AGE, INT64_C(0), INT64_C(86400000), INT64_C(1209600)}, /* longest age seconds */
    {EW_VALVE_SETTINGS_INTERVAL, INT64_C(0), INT64_C(2592000), INT64_C(21600)}, /* shortest interval seconds */
    {EW_VALVE_SETTINGS_DURATION, INT64_C(60), INT64_C(86400), INT64_C(14400)}, /* longest regeneration seconds */
    {EW_VALVE_SETTINGS_FAILURES, INT64_C(1), INT64_C(1000), INT64_C(3)}, /* most failures */
};

static const struct {
    int32_t place;
    int64_t most;
} ew_valve_count_table[EW_VALVE_COUNT_VALUES] = {
    {EW_VALVE_STATE_CLOCK, INT64_C(253402300799)}, /* clock */
    {EW_VALVE_STATE_READING, INT64_C(4294967295)}, /* reading */
    {EW_VALVE_STATE_SINCE_READING, INT64_C(10000000000)}, /* since reading */
    {EW_VALVE_STATE_READING_CLOCK, INT64_C(253402300799)}, /* reading clock */
    {EW_VALVE_STATE_SUSPECT, INT64_C(4294967295)}, /* refused reading */
    {EW_VALVE_STATE_SUSPECTS, INT64_C(1000)}, /* refused readings */
    {EW_VALVE_STATE_WITHOUT_PULSE, INT64_C(10000000000)}, /* without pulse */
    {EW_VALVE_STATE_PULSES, INT64_C(9000000000000000000)}, /* pulses */
    {EW_VALVE_STATE_REGENERATING, INT64_C(1)}, /* regenerating */
    {EW_VALVE_STATE_REGENERATING_FOR, INT64_C(10000000000)}, /* regenerating for */
    {EW_VALVE_STATE_SALT_MISSING, INT64_C(2)}, /* salt missing */
    {EW_VALVE_STATE_FAILED, INT64_C(1)}, /* failed */
    {EW_VALVE_STATE_AGE, INT64_C(10000000000)}, /* age */
    {EW_VALVE_STATE_SINCE_END, INT64_C(10000000000)}, /* since end */
    {EW_VALVE_STATE_CAPACITY, INT64_C(1000000000000000)}, /* capacity */
    {EW_VALVE_STATE_LEFT, INT64_C(1000000000000000)}, /* left */
    {EW_VALVE_STATE_OVERDRAWN, INT64_C(3000000000000000000)}, /* overdrawn */
    {EW_VALVE_STATE_TODAY_SOFTENED, INT64_C(3000000000000000000)}, /* today softened */
    {EW_VALVE_STATE_TODAY_BYPASSED, INT64_C(3000000000000000000)}, /* today bypassed */
    {EW_VALVE_STATE_TODAY_EXHAUSTED, INT64_C(3000000000000000000)}, /* today exhausted */
    {EW_VALVE_STATE_TOTAL_SOFTENED, INT64_C(3000000000000000000)}, /* total softened */
    {EW_VALVE_STATE_TOTAL_BYPASSED, INT64_C(3000000000000000000)}, /* total bypassed */
    {EW_VALVE_STATE_TOTAL_EXHAUSTED, INT64_C(3000000000000000000)}, /* total exhausted */
    {EW_VALVE_STATE_WHOLE_DAY, INT64_C(1)}, /* whole day */
    {EW_VALVE_STATE_AWAY, INT64_C(1)}, /* holiday */
    {EW_VALVE_STATE_DAYS, INT64_C(1000000)}, /* days */
    {EW_VALVE_STATE_LOW_DAYS, INT64_C(1000000)}, /* low days */
    {EW_VALVE_STATE_FAILURES, INT64_C(1000000)}, /* failures */
    {EW_VALVE_STATE_TIMED_OUT, INT64_C(1)}, /* timed out */
    {EW_VALVE_STATE_SEQUENCE, INT64_C(1000000000000000000)}, /* sequence */
};

static int64_t ew_check_of(const int64_t *numbers, int32_t count);
static int64_t ew_in_save_checksum(const int64_t *numbers, int32_t count);
static void ew_in_valve_settings_init(ew_valve_settings *settings);
static int64_t ew_in_valve_settings_value(const ew_valve_settings *settings, int32_t setting);
static int64_t ew_in_valve_settings_fingerprint(const ew_valve_settings *settings);
static void ew_in_valve_state_init(ew_valve_state *state);
static ew_bool ew_in_valve_state_is_same_as(const ew_valve_state *state, const ew_valve_state *other);
static void ew_valve_state_taken(ew_valve_state *state);
static ew_bool ew_valve_state_has_begun(const ew_valve_state *state);
static int64_t ew_in_valve_state_count(const ew_valve_state *state, int32_t count);
static double ew_in_valve_state_mean_nanolitres_per_day(const ew_valve_state *state);
static double ew_in_valve_state_deviation_nanolitres_per_day(const ew_valve_state *state);
static ew_bool ew_valve_is_usable(const ew_valve_settings *settings, int64_t reading, int64_t clock);
static int32_t ew_valve_advance(const ew_valve_settings *settings, ew_valve_state *state, int64_t reading,
        int64_t clock, ew_bool restarted);
static int32_t ew_valve_turn_day(const ew_valve_settings *settings, ew_valve_state *state, int64_t clock,
        ew_bool disturbed);
static int64_t ew_valve_day(const ew_valve_settings *settings, int64_t clock);
static int32_t ew_valve_credit(const ew_valve_settings *settings, ew_valve_state *state, int64_t elapsed);
static int64_t ew_valve_later(int64_t seconds, int64_t elapsed);
static int32_t ew_valve_not_regenerating(const ew_valve_state *state);
static void ew_valve_end(int64_t *n, ew_bool failed);
static int32_t ew_in_valve_rule_due(const ew_valve_settings *settings, const ew_valve_state *state);
static int32_t ew_in_valve_rule_reason(const ew_valve_settings *settings, const ew_valve_state *state);
static ew_bool ew_valve_rule_is_for_at_once(const ew_valve_settings *settings, const ew_valve_state *state);
static ew_bool ew_valve_rule_is_old(const ew_valve_settings *settings, const ew_valve_state *state);
static int32_t ew_in_valve_rule_hold(const ew_valve_settings *settings, const ew_valve_state *state);
static ew_bool ew_in_valve_rule_is_to_start(const ew_valve_settings *settings, const ew_valve_state *state);
static ew_bool ew_valve_rule_is_held_by_failures(const ew_valve_settings *settings, const ew_valve_state *state);
static ew_bool ew_valve_rule_is_night(const ew_valve_settings *settings, int64_t since_opening);
static int64_t ew_valve_rule_seconds_since_opening(const ew_valve_settings *settings, const ew_valve_state *state);
static int32_t ew_valve_save_read_with_new_settings(const ew_valve_settings *settings, ew_valve_state *state,
        const int64_t *save, int32_t save_length, ew_bool new_settings);
static ew_bool ew_valve_save_is_in_range(const ew_valve_settings *settings, const int64_t *numbers);
static int32_t ew_valve_use_learn(const ew_valve_settings *settings, ew_valve_state *state, double use);
static int64_t ew_in_valve_use_reserve_nanolitres(const ew_valve_settings *settings, const ew_valve_state *state);
static ew_bool ew_valve_meter_is_reading(const ew_valve_settings *settings, int64_t reading);
static int64_t ew_valve_meter_turn(const ew_valve_settings *settings);
static int64_t ew_valve_meter_between(const ew_valve_settings *settings, int64_t earlier, int64_t later);
static int64_t ew_valve_meter_possible(const ew_valve_settings *settings, int64_t seconds);
static int32_t ew_valve_meter_take(const ew_valve_settings *settings, ew_valve_state *state, int64_t reading,
        int64_t seconds);
static ew_bool ew_valve_meter_is_step_back(const ew_valve_settings *settings, int64_t pulses);
static int32_t ew_valve_meter_refuse(const ew_valve_settings *settings, int64_t *n, int64_t reading, int64_t seconds);
static int32_t ew_valve_meter_use(const ew_valve_settings *settings, int64_t *n, int64_t pulses);
static int64_t ew_valve_meter_sum(int64_t total, int64_t volume);
static ew_bool ew_in_pump_settings_are_usable(const ew_pump_settings *settings);
static ew_bool ew_pump_settings_times_rise(const ew_pump_settings *settings);
static ew_bool ew_pump_settings_in(int64_t number, int64_t least, int64_t most);
static int64_t ew_pump_settings_portion(const ew_pump_settings *settings, int32_t index);
static ew_bool ew_in_pump_memory_is_usable(const ew_pump_memory *memory);
static ew_bool ew_pump_memory_clocks_are_usable(const ew_pump_memory *memory);
static ew_bool ew_pump_memory_volumes_are_usable(const ew_pump_memory *memory);
static ew_bool ew_pump_memory_run_is_usable(const ew_pump_memory *memory);
static ew_bool ew_pump_memory_in(int64_t number, int64_t most);
static int64_t ew_pump_longest_run(const ew_pump_settings *settings, const ew_pump_memory *memory);
static int32_t ew_pump_give(const ew_pump_settings *settings, ew_pump_memory *memory);
static int32_t ew_pump_readiness(const ew_pump_memory *memory);
static int32_t ew_pump_stopped(const ew_pump_memory *memory);
static ew_bool ew_pump_can_count(const ew_pump_memory *memory, int64_t steps, int64_t local, int64_t uptime);
static void ew_pump_calibrate(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t picolitres_per_step);
static ew_bool ew_pump_was_started(const ew_pump_memory *memory);
static void ew_in_pump_tube_seen_full(ew_pump_memory *memory);
static void ew_in_pump_tube_drained(ew_pump_memory *memory);
static void ew_in_pump_paused(ew_pump_memory *memory);
static void ew_in_pump_acknowledged(ew_pump_memory *memory, int64_t flags);
static int64_t ew_in_pump_allowed(const ew_pump_settings *settings, const ew_pump_memory *memory);
static int64_t ew_in_pump_usable(const ew_pump_settings *settings, const ew_pump_memory *memory);
static int64_t ew_in_pump_daily_use(const ew_pump_settings *settings, const ew_pump_memory *memory);
static ew_bool ew_in_pump_is_low(const ew_pump_settings *settings, const ew_pump_memory *memory);
static ew_bool ew_pump_clock_is_usable(const ew_pump_memory *memory, int64_t local, int64_t uptime);
static void ew_pump_clock_advance(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t local,
        int64_t uptime);
static void ew_pump_clock_restart(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t local,
        int64_t uptime, int64_t seconds_off);
static void ew_pump_clock_take(ew_pump_memory *memory, int64_t local, int64_t elapsed);
static int64_t ew_pump_run_allowed(const ew_pump_settings *settings, const ew_pump_memory *memory);
static int64_t ew_pump_run_reachable(const ew_pump_settings *settings, const ew_pump_memory *memory);
static ew_bool ew_pump_run_fits(const ew_pump_settings *settings, const ew_pump_memory *memory, int64_t steps);
static int32_t ew_pump_run_order(ew_pump_memory *memory, int32_t purpose, int64_t steps);
static void ew_pump_run_take(ew_pump_memory *memory, int64_t wanted, int64_t volume);
static int64_t ew_pump_run_take_from(ew_pump_memory *memory, int32_t place, int64_t most);
static int64_t ew_pump_run_believed(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t steps);
static void ew_pump_run_settle(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t steps);
static void ew_pump_run_dose(ew_pump_memory *memory, int64_t volume);
static void ew_pump_run_draw(ew_pump_memory *memory, int64_t volume);
static void ew_pump_run_count(ew_pump_memory *memory, int64_t volume);
static void ew_pump_run_prime(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t volume);
static void ew_pump_schedule_look(const ew_pump_settings *settings, ew_pump_memory *memory);
static void ew_pump_schedule_let_go(const ew_pump_settings *settings, ew_pump_memory *memory);
static ew_bool ew_pump_schedule_is_between_portions(const ew_pump_memory *memory);
static void ew_pump_schedule_stand(const ew_pump_settings *settings, ew_pump_memory *memory, int32_t passed);
static int32_t ew_pump_schedule_passed(const ew_pump_settings *settings, const ew_pump_memory *memory);
static void ew_pump_schedule_pass(const ew_pump_settings *settings, ew_pump_memory *memory, ew_bool jumped);
static void ew_pump_schedule_miss_what_is_due(const ew_pump_settings *settings, ew_pump_memory *memory);
static void ew_pump_schedule_miss(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t portions);
static void ew_pump_schedule_note(ew_pump_memory *memory, int64_t portions);
static void ew_pump_schedule_owe(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t volume);
static int64_t ew_pump_schedule_usual_portion(const ew_pump_settings *settings);
static void ew_pump_window_add(ew_pump_memory *memory, int64_t volume);
static void ew_pump_window_expire(ew_pump_memory *memory);
static int32_t ew_pump_window_place(const ew_pump_memory *memory, int32_t index);
static ew_bool ew_pump_window_is_usable(const ew_pump_memory *memory);

/* Returns the check of the first numbers of an array. */
static int64_t ew_check_of(const int64_t *numbers, int32_t count) {
    int64_t remainder = -1;
    for (int32_t i = 0; i < count; i++) {
        remainder = remainder ^ numbers[i];
        for (int32_t bit = 0; bit < 64; bit++) {
            /* all ones if the bit that is shifted out is one */
            int64_t carry = ew_sar(remainder, 64 - 1);
            remainder = ew_shl(remainder, 1) ^ (carry & EW_CHECK_POLYNOMIAL);
        }
    }
    return ~remainder;
}

static int64_t ew_in_save_checksum(const int64_t *numbers, int32_t count) {
    return ew_check_of(numbers, count);
}

int32_t ew_save_checksum(const int64_t *numbers, int32_t count, int64_t *result) {
    if (numbers == 0) {
        return EW_NULL_POINTER;
    }
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    *result = ew_in_save_checksum(numbers, count);
    return EW_OK;
}

int32_t ew_save_write(int64_t version, int64_t fingerprint, const int64_t *numbers, int32_t numbers_length,
        int64_t *block, int32_t block_length) {
    if (numbers == 0 || block == 0) {
        return EW_NULL_POINTER;
    }
    if (numbers_length < 0) {
        return EW_OUT_OF_RANGE;
    }
    if (block_length < 0) {
        return EW_OUT_OF_RANGE;
    }
    if (block_length != ew_add_int(numbers_length, EW_SAVE_OVERHEAD)) {
        return EW_SAVE_WRONG_LENGTH;
    }
    block[0] = version;
    block[1] = fingerprint;
    ew_copy(numbers + 0, block + 2, numbers_length);
    block[ew_at(ew_sub_int(block_length, 1), block_length)] = ew_in_save_checksum(block, ew_sub_int(block_length, 1));
    return EW_SAVE_WHOLE;
}

int32_t ew_save_read(int64_t version, int64_t fingerprint, const int64_t *block, int32_t block_length,
        int64_t *numbers, int32_t numbers_length) {
    if (block == 0 || numbers == 0) {
        return EW_NULL_POINTER;
    }
    if (block_length < 0) {
        return EW_OUT_OF_RANGE;
    }
    if (numbers_length < 0) {
        return EW_OUT_OF_RANGE;
    }
    if (block_length != ew_add_int(numbers_length, EW_SAVE_OVERHEAD)) {
        return EW_SAVE_WRONG_LENGTH;
    }
    if (block[ew_at(ew_sub_int(block_length, 1), block_length)]
            != ew_in_save_checksum(block, ew_sub_int(block_length, 1))) {
        return (block[0] == version) ? EW_SAVE_TORN : EW_SAVE_OTHER_VERSION;
    }
    if (block[0] != version) {
        return EW_SAVE_OTHER_VERSION;
    }
    ew_copy(block + 2, numbers + 0, numbers_length);
    return (block[1] == fingerprint) ? EW_SAVE_WHOLE : EW_SAVE_OTHER_FINGERPRINT;
}

static void ew_in_valve_settings_init(ew_valve_settings *settings) {
    for (int32_t i = 0; i < EW_VALVE_SETTINGS_COUNT; i++) {
        settings->values[i] = 0;
    }
    for (int32_t setting = 0; setting < EW_VALVE_SETTING_VALUES; setting++) {
        settings->values[ew_at(ew_valve_setting_table[ew_at(setting, EW_VALVE_SETTING_VALUES)].place,
                EW_VALVE_SETTINGS_COUNT)] = ew_valve_setting_table[ew_at(setting, EW_VALVE_SETTING_VALUES)].usual;
    }
}

int32_t ew_valve_settings_init(ew_valve_settings *settings) {
    if (settings == 0) {
        return EW_NULL_POINTER;
    }
    ew_in_valve_settings_init(settings);
    return EW_OK;
}

int32_t ew_valve_settings_put(ew_valve_settings *settings, int32_t setting, int64_t value) {
    if (settings == 0) {
        return EW_NULL_POINTER;
    }
    if (setting < 0 || setting >= EW_VALVE_SETTING_VALUES) {
        return EW_OUT_OF_RANGE;
    }
    if (value < ew_valve_setting_table[ew_at(setting, EW_VALVE_SETTING_VALUES)].least
            || value > ew_valve_setting_table[ew_at(setting, EW_VALVE_SETTING_VALUES)].most) {
        return EW_VALVE_BAD_INPUT;
    }
    settings->values[ew_at(ew_valve_setting_table[ew_at(setting, EW_VALVE_SETTING_VALUES)].place,
            EW_VALVE_SETTINGS_COUNT)] = value;
    return EW_VALVE_OK;
}

static int64_t ew_in_valve_settings_value(const ew_valve_settings *settings, int32_t setting) {
    return settings->values[ew_at(ew_valve_setting_table[ew_at(setting, EW_VALVE_SETTING_VALUES)].place,
            EW_VALVE_SETTINGS_COUNT)];
}

int32_t ew_valve_settings_value(const ew_valve_settings *settings, int32_t setting, int64_t *result) {
    if (settings == 0) {
        return EW_NULL_POINTER;
    }
    if (setting < 0 || setting >= EW_VALVE_SETTING_VALUES) {
        return EW_OUT_OF_RANGE;
    }
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    *result = ew_in_valve_settings_value(settings, setting);
    return EW_OK;
}

static int64_t ew_in_valve_settings_fingerprint(const ew_valve_settings *settings) {
    return ew_check_of(settings->values, EW_VALVE_SETTINGS_COUNT);
}

int32_t ew_valve_settings_fingerprint(const ew_valve_settings *settings, int64_t *result) {
    if (settings == 0) {
        return EW_NULL_POINTER;
    }
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    *result = ew_in_valve_settings_fingerprint(settings);
    return EW_OK;
}

static void ew_in_valve_state_init(ew_valve_state *state) {
    for (int32_t i = 0; i < EW_VALVE_STATE_COUNT; i++) {
        state->counts[i] = 0;
    }
    for (int32_t i = 0; i < EW_VALVE_STATE_LEARNED; i++) {
        state->learned[i] = 0;
    }
    state->counts[EW_VALVE_STATE_CLOCK] = -1;
}

int32_t ew_valve_state_init(ew_valve_state *state) {
    if (state == 0) {
        return EW_NULL_POINTER;
    }
    ew_in_valve_state_init(state);
    return EW_OK;
}

static ew_bool ew_in_valve_state_is_same_as(const ew_valve_state *state, const ew_valve_state *other) {
    ew_bool same = 1;
    for (int32_t i = 0; i < EW_VALVE_STATE_COUNT; i++) {
        same = same & (state->counts[ew_at(i, EW_VALVE_STATE_COUNT)] == other->counts[ew_at(i, EW_VALVE_STATE_COUNT)]);
    }
    for (int32_t i = 0; i < EW_VALVE_STATE_LEARNED; i++) {
        same = same & (ew_bits(state->learned[ew_at(i, EW_VALVE_STATE_LEARNED)])
                == ew_bits(other->learned[ew_at(i, EW_VALVE_STATE_LEARNED)]));
    }
    return same;
}

int32_t ew_valve_state_is_same_as(const ew_valve_state *state, const ew_valve_state *other, ew_bool *result) {
    if (state == 0 || other == 0) {
        return EW_NULL_POINTER;
    }
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    *result = ew_in_valve_state_is_same_as(state, other);
    return EW_OK;
}

/* Counts a step or an event that was taken. */
static void ew_valve_state_taken(ew_valve_state *state) {
    state->counts[EW_VALVE_STATE_SEQUENCE] = ew_min(ew_add(state->counts[EW_VALVE_STATE_SEQUENCE], 1),
            EW_VALVE_STATE_MOST_EVENTS);
}

/* Whether ew_valve_begin or a save has filled it. */
static ew_bool ew_valve_state_has_begun(const ew_valve_state *state) {
    return state->counts[EW_VALVE_STATE_CLOCK] >= 0;
}

static int64_t ew_in_valve_state_count(const ew_valve_state *state, int32_t count) {
    return state->counts[ew_at(ew_valve_count_table[ew_at(count, EW_VALVE_COUNT_VALUES)].place, EW_VALVE_STATE_COUNT)];
}

int32_t ew_valve_state_count(const ew_valve_state *state, int32_t count, int64_t *result) {
    if (state == 0) {
        return EW_NULL_POINTER;
    }
    if (count < 0 || count >= EW_VALVE_COUNT_VALUES) {
        return EW_OUT_OF_RANGE;
    }
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    *result = ew_in_valve_state_count(state, count);
    return EW_OK;
}

static double ew_in_valve_state_mean_nanolitres_per_day(const ew_valve_state *state) {
    return state->learned[EW_VALVE_STATE_MEAN];
}

int32_t ew_valve_state_mean_nanolitres_per_day(const ew_valve_state *state, double *result) {
    if (state == 0) {
        return EW_NULL_POINTER;
    }
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    *result = ew_in_valve_state_mean_nanolitres_per_day(state);
    return EW_OK;
}

static double ew_in_valve_state_deviation_nanolitres_per_day(const ew_valve_state *state) {
    return state->learned[EW_VALVE_STATE_DEVIATION];
}

int32_t ew_valve_state_deviation_nanolitres_per_day(const ew_valve_state *state, double *result) {
    if (state == 0) {
        return EW_NULL_POINTER;
    }
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    *result = ew_in_valve_state_deviation_nanolitres_per_day(state);
    return EW_OK;
}

int32_t ew_valve_begin(const ew_valve_settings *settings, ew_valve_state *state, int64_t reading, int64_t clock,
        int64_t left_nanolitres) {
    if (settings == 0 || state == 0) {
        return EW_NULL_POINTER;
    }
    int64_t capacity = settings->values[EW_VALVE_SETTINGS_CAPACITY];
    if (!ew_valve_is_usable(settings, reading, clock) || left_nanolitres < 0 || left_nanolitres > capacity) {
        return EW_VALVE_BAD_INPUT;
    }
    int64_t *n = state->counts;
    for (int32_t i = 0; i < EW_VALVE_STATE_COUNT; i++) {
        n[ew_at(i, EW_VALVE_STATE_COUNT)] = 0;
    }
    for (int32_t i = 0; i < EW_VALVE_STATE_LEARNED; i++) {
        state->learned[ew_at(i, EW_VALVE_STATE_LEARNED)] = 0;
    }
    n[EW_VALVE_STATE_CLOCK] = clock;
    n[EW_VALVE_STATE_READING] = reading;
    n[EW_VALVE_STATE_READING_CLOCK] = clock;
    n[EW_VALVE_STATE_CAPACITY] = capacity;
    n[EW_VALVE_STATE_LEFT] = left_nanolitres;
    /* no regeneration is known that the next must keep away from */
    n[EW_VALVE_STATE_SINCE_END] = EW_VALVE_LONGEST_SECONDS;
    return EW_VALVE_OK;
}

int32_t ew_valve_step(const ew_valve_settings *settings, ew_valve_state *state, int64_t reading, int64_t clock) {
    if (settings == 0 || state == 0) {
        return EW_NULL_POINTER;
    }
    return ew_valve_advance(settings, state, reading, clock, 0);
}

int32_t ew_valve_restart(const ew_valve_settings *settings, ew_valve_state *state, int64_t reading, int64_t clock) {
    if (settings == 0 || state == 0) {
        return EW_NULL_POINTER;
    }
    return ew_valve_advance(settings, state, reading, clock, 1);
}

static ew_bool ew_valve_is_usable(const ew_valve_settings *settings, int64_t reading, int64_t clock) {
    return clock >= 0 && clock <= EW_VALVE_LAST_CLOCK && ew_valve_meter_is_reading(settings, reading);
}

static int32_t ew_valve_advance(const ew_valve_settings *settings, ew_valve_state *state, int64_t reading,
        int64_t clock, ew_bool restarted) {
    if (!ew_valve_is_usable(settings, reading, clock)) {
        return EW_VALVE_BAD_INPUT;
    }
    if (!ew_valve_state_has_begun(state)) {
        return EW_VALVE_NOT_BEGUN;
    }
    ew_valve_state_taken(state);
    int64_t gap = settings->values[EW_VALVE_SETTINGS_GAP];
    int64_t elapsed = ew_sub(clock, state->counts[EW_VALVE_STATE_CLOCK]);
    ew_bool changed = elapsed < 0 || (elapsed > (restarted ? EW_VALVE_LONGEST_OFF_SECONDS : gap));
    int32_t notices = changed ? EW_VALVE_CLOCK_CHANGED : EW_VALVE_OK;
    notices = notices | ((elapsed > gap) ? EW_VALVE_LONG_GAP : EW_VALVE_OK);
    notices = notices | ((elapsed == 0 && reading == state->counts[EW_VALVE_STATE_READING]) ? EW_VALVE_REPEATED
            : EW_VALVE_OK);
    notices = notices | ew_valve_turn_day(settings, state, clock, changed || restarted);
    state->counts[EW_VALVE_STATE_CLOCK] = clock;
    state->counts[EW_VALVE_STATE_WITHOUT_PULSE] = ew_valve_later(state->counts[EW_VALVE_STATE_WITHOUT_PULSE], changed
            ? 0 : elapsed);
    /* what a changed clock may hide: the longest time between two readings, or, without power, the longest outage */
    int64_t hidden = restarted ? EW_VALVE_LONGEST_OFF_SECONDS : gap;
    notices = notices | ew_valve_meter_take(settings, state, reading, changed ? hidden : elapsed);
    return notices | ew_valve_credit(settings, state, changed ? 0 : elapsed);
}

static int32_t ew_valve_turn_day(const ew_valve_settings *settings, ew_valve_state *state, int64_t clock,
        ew_bool disturbed) {
    int64_t *n = state->counts;
    int64_t before = ew_valve_day(settings, n[EW_VALVE_STATE_CLOCK]);
    int64_t now = ew_valve_day(settings, clock);
    if (now == before) {
        n[EW_VALVE_STATE_WHOLE_DAY] = disturbed ? 0 : n[EW_VALVE_STATE_WHOLE_DAY];
        return EW_VALVE_OK;
    }
    int32_t notices = EW_VALVE_OK;
    ew_bool ordinary = !disturbed && now == ew_add(before, 1);
    if (ordinary && n[EW_VALVE_STATE_WHOLE_DAY] == 1 && n[EW_VALVE_STATE_AWAY] == 0) {
        double use = ((double) n[EW_VALVE_STATE_TODAY_SOFTENED] + (double) n[EW_VALVE_STATE_TODAY_BYPASSED])
                + (double) n[EW_VALVE_STATE_TODAY_EXHAUSTED];
        notices = ew_valve_use_learn(settings, state, use);
    }
    n[EW_VALVE_STATE_TODAY_SOFTENED] = 0;
    n[EW_VALVE_STATE_TODAY_BYPASSED] = 0;
    n[EW_VALVE_STATE_TODAY_EXHAUSTED] = 0;
    n[EW_VALVE_STATE_WHOLE_DAY] = ordinary ? 1 : 0;
    return notices;
}

/* Number of the day that began at the regeneration hour. */
static int64_t ew_valve_day(const ew_valve_settings *settings, int64_t clock) {
    return ew_sub(ew_add(clock, EW_VALVE_DAY_SECONDS),
            settings->values[EW_VALVE_SETTINGS_NIGHT]) / EW_VALVE_DAY_SECONDS;
}

/* Lets time pass, after the water that it brought was taken with the valve as it stood. */
static int32_t ew_valve_credit(const ew_valve_settings *settings, ew_valve_state *state, int64_t elapsed) {
    int64_t *n = state->counts;
    n[EW_VALVE_STATE_AGE] = ew_valve_later(n[EW_VALVE_STATE_AGE], elapsed);
    n[EW_VALVE_STATE_SINCE_END] = ew_valve_later(n[EW_VALVE_STATE_SINCE_END], elapsed);
    int32_t notices = EW_VALVE_OK;
    if (n[EW_VALVE_STATE_REGENERATING] == 1) {
        n[EW_VALVE_STATE_REGENERATING_FOR] = ew_valve_later(n[EW_VALVE_STATE_REGENERATING_FOR], elapsed);
        if (n[EW_VALVE_STATE_REGENERATING_FOR] > settings->values[EW_VALVE_SETTINGS_DURATION]) {
            ew_valve_end(n, 1);
            n[EW_VALVE_STATE_TIMED_OUT] = 1;
            n[EW_VALVE_STATE_LEFT] = 0;
            notices = EW_VALVE_INTERRUPTED;
        }
    }
    int64_t silence = settings->values[EW_VALVE_SETTINGS_SILENCE];
    ew_bool silent = silence > 0 && n[EW_VALVE_STATE_WITHOUT_PULSE] > silence && n[EW_VALVE_STATE_AWAY] == 0
            && n[EW_VALVE_STATE_SUSPECTS] < settings->values[EW_VALVE_SETTINGS_AGREEING];
    return silent ? (notices | EW_VALVE_METER_SILENT) : notices;
}

static int64_t ew_valve_later(int64_t seconds, int64_t elapsed) {
    return ew_min(ew_add(seconds, elapsed), EW_VALVE_LONGEST_SECONDS);
}

int32_t ew_valve_started(const ew_valve_settings *settings, ew_valve_state *state) {
    if (settings == 0 || state == 0) {
        return EW_NULL_POINTER;
    }
    int64_t *n = state->counts;
    if (!ew_valve_state_has_begun(state)) {
        return EW_VALVE_NOT_BEGUN;
    }
    if (n[EW_VALVE_STATE_REGENERATING] == 1) {
        return EW_VALVE_DOES_NOT_FIT;
    }
    if (ew_valve_rule_is_held_by_failures(settings, state)) {
        n[EW_VALVE_STATE_FAILURES] = 0;
    }
    n[EW_VALVE_STATE_SALT_MISSING] = ew_min(1, n[EW_VALVE_STATE_SALT_MISSING]);
    n[EW_VALVE_STATE_REGENERATING] = 1;
    n[EW_VALVE_STATE_REGENERATING_FOR] = 0;
    n[EW_VALVE_STATE_TIMED_OUT] = 0;
    ew_valve_state_taken(state);
    return EW_VALVE_OK;
}

int32_t ew_valve_finished(const ew_valve_settings *settings, ew_valve_state *state, int64_t capacity_nanolitres) {
    if (settings == 0 || state == 0) {
        return EW_NULL_POINTER;
    }
    int64_t *n = state->counts;
    if (capacity_nanolitres < 1 || capacity_nanolitres > EW_VALVE_LARGEST_CAPACITY
            || capacity_nanolitres <= settings->values[EW_VALVE_SETTINGS_AT_ONCE]) {
        return EW_VALVE_BAD_INPUT;
    }
    ew_bool late = n[EW_VALVE_STATE_TIMED_OUT] == 1;
    int32_t refusal = ew_valve_not_regenerating(state);
    if (refusal != EW_VALVE_OK && !late) {
        return refusal;
    }
    ew_valve_state_taken(state);
    if (n[EW_VALVE_STATE_SALT_MISSING] == 1) {
        int64_t failures = n[EW_VALVE_STATE_FAILURES];
        ew_valve_end(n, 1);
        /* once for each run */
        n[EW_VALVE_STATE_FAILURES] = late ? failures : n[EW_VALVE_STATE_FAILURES];
        return EW_VALVE_WITHOUT_SALT;
    }
    ew_valve_end(n, 0);
    n[EW_VALVE_STATE_CAPACITY] = capacity_nanolitres;
    n[EW_VALVE_STATE_LEFT] = capacity_nanolitres;
    n[EW_VALVE_STATE_OVERDRAWN] = 0;
    n[EW_VALVE_STATE_AGE] = 0;
    return late ? EW_VALVE_FINISHED_LATE : EW_VALVE_OK;
}

int32_t ew_valve_failed(ew_valve_state *state, ew_bool brine_drawn) {
    if (state == 0) {
        return EW_NULL_POINTER;
    }
    int32_t refusal = ew_valve_not_regenerating(state);
    if (refusal != EW_VALVE_OK) {
        return refusal;
    }
    ew_valve_state_taken(state);
    ew_valve_end(state->counts, 1);
    state->counts[EW_VALVE_STATE_LEFT] = brine_drawn ? 0 : state->counts[EW_VALVE_STATE_LEFT];
    return EW_VALVE_OK;
}

static int32_t ew_valve_not_regenerating(const ew_valve_state *state) {
    if (!ew_valve_state_has_begun(state)) {
        return EW_VALVE_NOT_BEGUN;
    }
    return (state->counts[EW_VALVE_STATE_REGENERATING] == 1) ? EW_VALVE_OK : EW_VALVE_DOES_NOT_FIT;
}

static void ew_valve_end(int64_t *n, ew_bool failed) {
    n[EW_VALVE_STATE_REGENERATING] = 0;
    n[EW_VALVE_STATE_REGENERATING_FOR] = 0;
    n[EW_VALVE_STATE_SINCE_END] = 0;
    n[EW_VALVE_STATE_FAILED] = failed ? 1 : 0;
    n[EW_VALVE_STATE_FAILURES] = failed ? ew_min(ew_add(n[EW_VALVE_STATE_FAILURES], 1), EW_VALVE_MOST_COUNTED) : 0;
    n[EW_VALVE_STATE_TIMED_OUT] = 0;
}

int32_t ew_valve_failures_acknowledged(ew_valve_state *state) {
    if (state == 0) {
        return EW_NULL_POINTER;
    }
    if (!ew_valve_state_has_begun(state)) {
        return EW_VALVE_NOT_BEGUN;
    }
    ew_valve_state_taken(state);
    state->counts[EW_VALVE_STATE_FAILURES] = 0;
    return EW_VALVE_OK;
}

int32_t ew_valve_salt(ew_valve_state *state, ew_bool missing) {
    if (state == 0) {
        return EW_NULL_POINTER;
    }
    if (!ew_valve_state_has_begun(state)) {
        return EW_VALVE_NOT_BEGUN;
    }
    ew_valve_state_taken(state);
    int64_t *n = state->counts;
    ew_bool run = n[EW_VALVE_STATE_REGENERATING] == 1 || n[EW_VALVE_STATE_TIMED_OUT] == 1;
    if (!missing) {
        n[EW_VALVE_STATE_SALT_MISSING] = 0;
    } else if (n[EW_VALVE_STATE_SALT_MISSING] == 0) {
        n[EW_VALVE_STATE_SALT_MISSING] = run ? EW_VALVE_STATE_SINCE_THE_RUN_BEGAN : 1;
    }
    return EW_VALVE_OK;
}

int32_t ew_valve_holiday(ew_valve_state *state, ew_bool away) {
    if (state == 0) {
        return EW_NULL_POINTER;
    }
    if (!ew_valve_state_has_begun(state)) {
        return EW_VALVE_NOT_BEGUN;
    }
    int64_t before = state->counts[EW_VALVE_STATE_AWAY];
    state->counts[EW_VALVE_STATE_AWAY] = away ? 1 : 0;
    if (before != state->counts[EW_VALVE_STATE_AWAY]) {
        ew_valve_state_taken(state);
        state->counts[EW_VALVE_STATE_WHOLE_DAY] = 0;
    }
    return EW_VALVE_OK;
}

int32_t ew_valve_meter_exchanged(const ew_valve_settings *settings, ew_valve_state *state, int64_t reading) {
    if (settings == 0 || state == 0) {
        return EW_NULL_POINTER;
    }
    if (!ew_valve_meter_is_reading(settings, reading)) {
        return EW_VALVE_BAD_INPUT;
    }
    if (!ew_valve_state_has_begun(state)) {
        return EW_VALVE_NOT_BEGUN;
    }
    int64_t *n = state->counts;
    n[EW_VALVE_STATE_READING] = reading;
    n[EW_VALVE_STATE_READING_CLOCK] = n[EW_VALVE_STATE_CLOCK];
    n[EW_VALVE_STATE_SINCE_READING] = 0;
    n[EW_VALVE_STATE_SUSPECT] = 0;
    n[EW_VALVE_STATE_SUSPECTS] = 0;
    n[EW_VALVE_STATE_WITHOUT_PULSE] = 0;
    n[EW_VALVE_STATE_WHOLE_DAY] = 0;
    ew_valve_state_taken(state);
    return EW_VALVE_OK;
}

static int32_t ew_in_valve_rule_due(const ew_valve_settings *settings, const ew_valve_state *state) {
    int32_t reason = ew_in_valve_rule_reason(settings, state);
    if (reason == EW_VALVE_RULE_NONE) {
        return EW_VALVE_RULE_NOT_DUE;
    }
    return ew_valve_rule_is_for_at_once(settings, state) ? EW_VALVE_RULE_AT_ONCE : EW_VALVE_RULE_AT_NIGHT;
}

int32_t ew_valve_rule_due(const ew_valve_settings *settings, const ew_valve_state *state, int32_t *result) {
    if (settings == 0 || state == 0) {
        return EW_NULL_POINTER;
    }
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    *result = ew_in_valve_rule_due(settings, state);
    return EW_OK;
}

static int32_t ew_in_valve_rule_reason(const ew_valve_settings *settings, const ew_valve_state *state) {
    const int64_t *n = state->counts;
    if (!ew_valve_state_has_begun(state) || n[EW_VALVE_STATE_REGENERATING] == 1) {
        return EW_VALVE_RULE_NONE;
    }
    int64_t left = n[EW_VALVE_STATE_LEFT];
    if (left == 0) {
        return EW_VALVE_RULE_EXHAUSTED;
    }
    if (ew_valve_rule_is_for_at_once(settings, state)) {
        return EW_VALVE_RULE_NEARLY_EXHAUSTED;
    }
    if (left < ew_in_valve_use_reserve_nanolitres(settings, state)) {
        return EW_VALVE_RULE_RESERVE;
    }
    return ew_valve_rule_is_old(settings, state) ? EW_VALVE_RULE_CALENDAR : EW_VALVE_RULE_NONE;
}

int32_t ew_valve_rule_reason(const ew_valve_settings *settings, const ew_valve_state *state, int32_t *result) {
    if (settings == 0 || state == 0) {
        return EW_NULL_POINTER;
    }
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    *result = ew_in_valve_rule_reason(settings, state);
    return EW_OK;
}

static ew_bool ew_valve_rule_is_for_at_once(const ew_valve_settings *settings, const ew_valve_state *state) {
    return state->counts[EW_VALVE_STATE_LEFT] <= settings->values[EW_VALVE_SETTINGS_AT_ONCE];
}

static ew_bool ew_valve_rule_is_old(const ew_valve_settings *settings, const ew_valve_state *state) {
    int64_t longest = settings->values[EW_VALVE_SETTINGS_LONGEST_AGE];
    if (longest == 0) {
        return 0;
    }
    int64_t since_opening = ew_valve_rule_seconds_since_opening(settings, state);
    int64_t to_opening = ew_valve_rule_is_night(settings, since_opening) ? 0 : EW_VALVE_DAY_SECONDS;
    int64_t age_at_opening = ew_add(ew_sub(state->counts[EW_VALVE_STATE_AGE], since_opening), to_opening);
    return ew_add(age_at_opening, EW_VALVE_DAY_SECONDS) > longest;
}

static int32_t ew_in_valve_rule_hold(const ew_valve_settings *settings, const ew_valve_state *state) {
    int32_t due = ew_in_valve_rule_due(settings, state);
    if (due == EW_VALVE_RULE_NOT_DUE) {
        return EW_VALVE_RULE_NONE;
    }
    if (state->counts[EW_VALVE_STATE_SALT_MISSING] != 0) {
        return EW_VALVE_RULE_HELD_BY_SALT;
    }
    if (ew_valve_rule_is_held_by_failures(settings, state)) {
        return EW_VALVE_RULE_HELD_BY_FAILURES;
    }
    if (state->counts[EW_VALVE_STATE_SINCE_END] < settings->values[EW_VALVE_SETTINGS_INTERVAL]) {
        return EW_VALVE_RULE_HELD_BY_INTERVAL;
    }
    ew_bool waits = due == EW_VALVE_RULE_AT_NIGHT
            && !ew_valve_rule_is_night(settings, ew_valve_rule_seconds_since_opening(settings, state));
    return waits ? EW_VALVE_RULE_HELD_FOR_NIGHT : EW_VALVE_RULE_NONE;
}

int32_t ew_valve_rule_hold(const ew_valve_settings *settings, const ew_valve_state *state, int32_t *result) {
    if (settings == 0 || state == 0) {
        return EW_NULL_POINTER;
    }
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    *result = ew_in_valve_rule_hold(settings, state);
    return EW_OK;
}

static ew_bool ew_in_valve_rule_is_to_start(const ew_valve_settings *settings, const ew_valve_state *state) {
    return ew_in_valve_rule_due(settings, state) != EW_VALVE_RULE_NOT_DUE
            && ew_in_valve_rule_hold(settings, state) == EW_VALVE_RULE_NONE;
}

int32_t ew_valve_rule_is_to_start(const ew_valve_settings *settings, const ew_valve_state *state, ew_bool *result) {
    if (settings == 0 || state == 0) {
        return EW_NULL_POINTER;
    }
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    *result = ew_in_valve_rule_is_to_start(settings, state);
    return EW_OK;
}

static ew_bool ew_valve_rule_is_held_by_failures(const ew_valve_settings *settings, const ew_valve_state *state) {
    return state->counts[EW_VALVE_STATE_FAILURES] >= settings->values[EW_VALVE_SETTINGS_FAILURES];
}

static ew_bool ew_valve_rule_is_night(const ew_valve_settings *settings, int64_t since_opening) {
    return since_opening < settings->values[EW_VALVE_SETTINGS_NIGHT_LASTS];
}

/* Since the night's window last opened; 0 to one day less a second. */
static int64_t ew_valve_rule_seconds_since_opening(const ew_valve_settings *settings, const ew_valve_state *state) {
    return ew_sub(ew_add(state->counts[EW_VALVE_STATE_CLOCK], EW_VALVE_DAY_SECONDS),
            settings->values[EW_VALVE_SETTINGS_NIGHT]) % EW_VALVE_DAY_SECONDS;
}

int32_t ew_valve_save_write(const ew_valve_settings *settings, const ew_valve_state *state, int64_t *save,
        int32_t save_length) {
    if (settings == 0 || state == 0 || save == 0) {
        return EW_NULL_POINTER;
    }
    if (save_length < 0) {
        return EW_OUT_OF_RANGE;
    }
    if (!ew_valve_state_has_begun(state)) {
        return EW_VALVE_SAVE_OUT_OF_RANGE;
    }
    int64_t numbers[EW_VALVE_SAVE_CONTENTS] = {0};
    ew_copy(state->counts + 0, numbers + 0, EW_VALVE_STATE_COUNT);
    for (int32_t i = 0; i < EW_VALVE_STATE_LEARNED; i++) {
        numbers[ew_at(ew_add_int(EW_VALVE_STATE_COUNT, i), EW_VALVE_SAVE_CONTENTS)] = ew_bits(state->learned[ew_at(i,
                EW_VALVE_STATE_LEARNED)]);
    }
    return ew_save_write(EW_VALVE_SAVE_VERSION, ew_in_valve_settings_fingerprint(settings), numbers,
            EW_VALVE_SAVE_CONTENTS, save, save_length);
}

int32_t ew_valve_save_read(const ew_valve_settings *settings, ew_valve_state *state, const int64_t *save,
        int32_t save_length) {
    if (settings == 0 || state == 0 || save == 0) {
        return EW_NULL_POINTER;
    }
    if (save_length < 0) {
        return EW_OUT_OF_RANGE;
    }
    return ew_valve_save_read_with_new_settings(settings, state, save, save_length, 0);
}

int32_t ew_valve_save_read_under_new_settings(const ew_valve_settings *settings, ew_valve_state *state,
        const int64_t *save, int32_t save_length) {
    if (settings == 0 || state == 0 || save == 0) {
        return EW_NULL_POINTER;
    }
    if (save_length < 0) {
        return EW_OUT_OF_RANGE;
    }
    return ew_valve_save_read_with_new_settings(settings, state, save, save_length, 1);
}

static int32_t ew_valve_save_read_with_new_settings(const ew_valve_settings *settings, ew_valve_state *state,
        const int64_t *save, int32_t save_length, ew_bool new_settings) {
    int64_t numbers[EW_VALVE_SAVE_CONTENTS] = {0};
    int32_t status = ew_save_read(EW_VALVE_SAVE_VERSION, ew_in_valve_settings_fingerprint(settings), save, save_length,
            numbers, EW_VALVE_SAVE_CONTENTS);
    if (status != EW_VALVE_SAVE_OK && !(new_settings && status == EW_VALVE_SAVE_OTHER_SETTINGS)) {
        return status;
    }
    if (!ew_valve_save_is_in_range(settings, numbers)) {
        return EW_VALVE_SAVE_OUT_OF_RANGE;
    }
    ew_copy(numbers + 0, state->counts + 0, EW_VALVE_STATE_COUNT);
    for (int32_t i = 0; i < EW_VALVE_STATE_LEARNED; i++) {
        state->learned[ew_at(i, EW_VALVE_STATE_LEARNED)] = ew_double(numbers[ew_at(ew_add_int(EW_VALVE_STATE_COUNT, i),
                EW_VALVE_SAVE_CONTENTS)]);
    }
    if (new_settings) {
        state->counts[EW_VALVE_STATE_WHOLE_DAY] = 0;
    }
    return EW_VALVE_SAVE_OK;
}

static ew_bool ew_valve_save_is_in_range(const ew_valve_settings *settings, const int64_t *numbers) {
    ew_bool in_range = 1;
    for (int32_t count = 0; count < EW_VALVE_COUNT_VALUES; count++) {
        int64_t value = numbers[ew_valve_count_table[ew_at(count, EW_VALVE_COUNT_VALUES)].place];
        in_range = in_range & (value >= 0 && value <= ew_valve_count_table[ew_at(count, EW_VALVE_COUNT_VALUES)].most);
    }
    for (int32_t i = 0; i < EW_VALVE_STATE_LEARNED; i++) {
        double value = ew_double(numbers[ew_add_int(EW_VALVE_STATE_COUNT, i)]);
        /* NaN fails */
        in_range = in_range & (value >= 0 && value <= EW_VALVE_USE_MOST_NANOLITRES);
    }
    return in_range && numbers[EW_VALVE_STATE_CAPACITY] > 0
            && numbers[EW_VALVE_STATE_LEFT] <= numbers[EW_VALVE_STATE_CAPACITY]
            && ew_valve_meter_is_reading(settings, numbers[EW_VALVE_STATE_READING])
            && ew_valve_meter_is_reading(settings, numbers[EW_VALVE_STATE_SUSPECT]);
}

/* Learns from a whole day. */
static int32_t ew_valve_use_learn(const ew_valve_settings *settings, ew_valve_state *state, double use) {
    int64_t *n = state->counts;
    double m = state->learned[EW_VALVE_STATE_MEAN];
    double d = state->learned[EW_VALVE_STATE_DEVIATION];
    if (use == 0) {
        return EW_VALVE_LOW_DAY;
    }
    if (n[EW_VALVE_STATE_DAYS] == 0) {
        n[EW_VALVE_STATE_DAYS] = 1;
        state->learned[EW_VALVE_STATE_MEAN] = use;
        state->learned[EW_VALVE_STATE_DEVIATION] = use * EW_VALVE_USE_FIRST_DEVIATION;
        return EW_VALVE_DAY_LEARNED;
    }
    int32_t notices = EW_VALVE_DAY_LEARNED;
    ew_bool settled = n[EW_VALVE_STATE_DAYS] >= EW_VALVE_USE_SETTLED_DAYS;
    if (settled && use < (EW_VALVE_USE_LOW * m)) {
        n[EW_VALVE_STATE_LOW_DAYS] = ew_min(ew_add(n[EW_VALVE_STATE_LOW_DAYS], 1), EW_VALVE_USE_MOST_DAYS);
        if (n[EW_VALVE_STATE_LOW_DAYS] <= EW_VALVE_USE_LOW_DAYS) {
            return EW_VALVE_LOW_DAY;
        }
        notices = notices | EW_VALVE_LOW_DAY;
    } else {
        n[EW_VALVE_STATE_LOW_DAYS] = 0;
    }
    double limit = m + (EW_VALVE_USE_OUTLIER * ew_max_double(d, EW_VALVE_USE_LEAST_DEVIATION * m));
    double most = settled ? ew_max_double(limit, (double) settings->values[EW_VALVE_SETTINGS_FIRST_RESERVE]) : use;
    if (use > most) {
        notices = notices | EW_VALVE_OUTLIER_DAY;
    }
    n[EW_VALVE_STATE_DAYS] = ew_min(ew_add(n[EW_VALVE_STATE_DAYS], 1), EW_VALVE_USE_MOST_DAYS);
    ew_bool slow = n[EW_VALVE_STATE_LOW_DAYS] > 0;
    double a = slow ? EW_VALVE_USE_SLOW_SHARE
            : ew_max_double(EW_VALVE_USE_SHARE, 0x1.0p0 / (double) n[EW_VALVE_STATE_DAYS]);
    double difference = ew_min_double(use, most) - m;
    state->learned[EW_VALVE_STATE_MEAN] = m + (a * difference);
    state->learned[EW_VALVE_STATE_DEVIATION] = d + (a * (ew_abs_double(difference) - d));
    return notices;
}

static int64_t ew_in_valve_use_reserve_nanolitres(const ew_valve_settings *settings, const ew_valve_state *state) {
    int64_t first = settings->values[EW_VALVE_SETTINGS_FIRST_RESERVE];
    int64_t stated = settings->values[EW_VALVE_SETTINGS_LEAST_RESERVE];
    int64_t floor = (stated < 0) ? (first / EW_VALVE_USE_FLOOR_OF_FIRST) : stated;
    int64_t days = state->counts[EW_VALVE_STATE_DAYS];
    int64_t least = (days < EW_VALVE_USE_SETTLED_DAYS) ? ew_max(first, floor) : floor;
    int64_t learned = ew_to_long(ew_ceil_double(state->learned[EW_VALVE_STATE_MEAN]
            + (EW_VALVE_USE_COVER * state->learned[EW_VALVE_STATE_DEVIATION])));
    return ew_min(ew_max(learned, least), state->counts[EW_VALVE_STATE_CAPACITY]);
}

int32_t ew_valve_use_reserve_nanolitres(const ew_valve_settings *settings, const ew_valve_state *state,
        int64_t *result) {
    if (settings == 0 || state == 0) {
        return EW_NULL_POINTER;
    }
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    *result = ew_in_valve_use_reserve_nanolitres(settings, state);
    return EW_OK;
}

static ew_bool ew_valve_meter_is_reading(const ew_valve_settings *settings, int64_t reading) {
    return reading >= 0 && reading < ew_valve_meter_turn(settings);
}

static int64_t ew_valve_meter_turn(const ew_valve_settings *settings) {
    return ew_shl(INT64_C(1), settings->values[EW_VALVE_SETTINGS_BITS]);
}

static int64_t ew_valve_meter_between(const ew_valve_settings *settings, int64_t earlier, int64_t later) {
    return ew_sub(later, earlier) & ew_sub(ew_valve_meter_turn(settings), 1);
}

/* At most some 8.6e17 nL of water, and one pulse, since the seconds never pass 1000 days and a day. */
static int64_t ew_valve_meter_possible(const ew_valve_settings *settings, int64_t seconds) {
    const int64_t *s = settings->values;
    return ew_add(ew_div(ew_mul(s[EW_VALVE_SETTINGS_FLOW], ew_add(seconds, s[EW_VALVE_SETTINGS_DELAY])),
            s[EW_VALVE_SETTINGS_PULSE]), 1);
}

/* Takes a reading. */
static int32_t ew_valve_meter_take(const ew_valve_settings *settings, ew_valve_state *state, int64_t reading,
        int64_t seconds) {
    int64_t *n = state->counts;
    int64_t agreeing = settings->values[EW_VALVE_SETTINGS_AGREEING];
    if (n[EW_VALVE_STATE_SUSPECTS] >= agreeing) {
        n[EW_VALVE_STATE_WHOLE_DAY] = 0;
        return EW_VALVE_METER_UNCLEAR;
    }
    int64_t shown = ew_min(ew_sub(state->counts[EW_VALVE_STATE_CLOCK], n[EW_VALVE_STATE_READING_CLOCK]),
            EW_VALVE_LONGEST_OFF_SECONDS);
    n[EW_VALVE_STATE_SINCE_READING] = ew_min(ew_add(n[EW_VALVE_STATE_SINCE_READING], seconds),
            EW_VALVE_LONGEST_OFF_SECONDS);
    int64_t pulses = ew_valve_meter_between(settings, n[EW_VALVE_STATE_READING], reading);
    ew_bool again = n[EW_VALVE_STATE_SUSPECTS] > 0 && reading == n[EW_VALVE_STATE_SUSPECT];
    if (again) {
        return EW_VALVE_READING_REFUSED;
    }
    int64_t possible = ew_valve_meter_possible(settings, ew_max(n[EW_VALVE_STATE_SINCE_READING], shown));
    if (pulses > possible || ew_valve_meter_is_step_back(settings, pulses)) {
        return ew_valve_meter_refuse(settings, n, reading, seconds);
    }
    n[EW_VALVE_STATE_SUSPECTS] = 0;
    n[EW_VALVE_STATE_SUSPECT] = 0;
    n[EW_VALVE_STATE_READING] = reading;
    n[EW_VALVE_STATE_READING_CLOCK] = n[EW_VALVE_STATE_CLOCK];
    n[EW_VALVE_STATE_SINCE_READING] = 0;
    int32_t notices = (possible >= ew_add(pulses, ew_valve_meter_turn(settings))) ? EW_VALVE_ROLLOVER_AMBIGUOUS : 0;
    return (pulses == 0) ? notices : (notices | ew_valve_meter_use(settings, n, pulses));
}

static ew_bool ew_valve_meter_is_step_back(const ew_valve_settings *settings, int64_t pulses) {
    return ew_mul(ew_sub(ew_valve_meter_turn(settings), pulses), EW_VALVE_METER_STEP_BACK)
            < ew_valve_meter_turn(settings);
}

static int32_t ew_valve_meter_refuse(const ew_valve_settings *settings, int64_t *n, int64_t reading, int64_t seconds) {
    ew_bool goes_on = n[EW_VALVE_STATE_SUSPECTS] > 0
            && ew_valve_meter_between(settings, n[EW_VALVE_STATE_SUSPECT], reading)
            <= ew_valve_meter_possible(settings, seconds);
    n[EW_VALVE_STATE_SUSPECTS] = goes_on ? ew_add(n[EW_VALVE_STATE_SUSPECTS], 1) : 1;
    n[EW_VALVE_STATE_SUSPECT] = reading;
    if (n[EW_VALVE_STATE_SUSPECTS] < settings->values[EW_VALVE_SETTINGS_AGREEING]) {
        return EW_VALVE_READING_REFUSED;
    }
    n[EW_VALVE_STATE_WHOLE_DAY] = 0;
    return EW_VALVE_READING_REFUSED | EW_VALVE_METER_UNCLEAR;
}

static int32_t ew_valve_meter_use(const ew_valve_settings *settings, int64_t *n, int64_t pulses) {
    n[EW_VALVE_STATE_WITHOUT_PULSE] = 0;
    int64_t volume = ew_mul(pulses, settings->values[EW_VALVE_SETTINGS_PULSE]);
    int64_t bypassed = ew_mul(n[EW_VALVE_STATE_REGENERATING], volume);
    int64_t softened = ew_min(ew_sub(volume, bypassed), n[EW_VALVE_STATE_LEFT]);
    int64_t exhausted = ew_sub(ew_sub(volume, bypassed), softened);
    n[EW_VALVE_STATE_LEFT] = ew_sub(n[EW_VALVE_STATE_LEFT], softened);
    n[EW_VALVE_STATE_OVERDRAWN] = ew_valve_meter_sum(n[EW_VALVE_STATE_OVERDRAWN], exhausted);
    n[EW_VALVE_STATE_TODAY_SOFTENED] = ew_valve_meter_sum(n[EW_VALVE_STATE_TODAY_SOFTENED], softened);
    n[EW_VALVE_STATE_TODAY_BYPASSED] = ew_valve_meter_sum(n[EW_VALVE_STATE_TODAY_BYPASSED], bypassed);
    n[EW_VALVE_STATE_TODAY_EXHAUSTED] = ew_valve_meter_sum(n[EW_VALVE_STATE_TODAY_EXHAUSTED], exhausted);
    n[EW_VALVE_STATE_TOTAL_SOFTENED] = ew_valve_meter_sum(n[EW_VALVE_STATE_TOTAL_SOFTENED], softened);
    n[EW_VALVE_STATE_TOTAL_BYPASSED] = ew_valve_meter_sum(n[EW_VALVE_STATE_TOTAL_BYPASSED], bypassed);
    n[EW_VALVE_STATE_TOTAL_EXHAUSTED] = ew_valve_meter_sum(n[EW_VALVE_STATE_TOTAL_EXHAUSTED], exhausted);
    ew_bool full = n[EW_VALVE_STATE_TOTAL_SOFTENED] == EW_VALVE_FULL_NANOLITRES
            || n[EW_VALVE_STATE_TOTAL_BYPASSED] == EW_VALVE_FULL_NANOLITRES
            || n[EW_VALVE_STATE_TOTAL_EXHAUSTED] == EW_VALVE_FULL_NANOLITRES;
    if (full) {
        return EW_VALVE_TOTALS_FULL;
    }
    n[EW_VALVE_STATE_PULSES] = ew_add(n[EW_VALVE_STATE_PULSES], pulses);
    return EW_VALVE_OK;
}

static int64_t ew_valve_meter_sum(int64_t total, int64_t volume) {
    return ew_min(ew_add(total, volume), EW_VALVE_FULL_NANOLITRES);
}

static ew_bool ew_in_pump_settings_are_usable(const ew_pump_settings *settings) {
    return (((((((((((EW_PUMP_SETTINGS_LENGTH == EW_PUMP_SETTINGS_LENGTH
            && ew_pump_settings_in(settings->values[EW_PUMP_SETTINGS_CAP], 1, EW_PUMP_SETTINGS_LARGEST_CAP)
            && ew_pump_settings_in(settings->values[EW_PUMP_SETTINGS_DAILY], 0,
            settings->values[EW_PUMP_SETTINGS_CAP])
            && ew_pump_settings_in(settings->values[EW_PUMP_SETTINGS_PORTIONS], 0, EW_PUMP_SETTINGS_MOST_PORTIONS)
            && (settings->values[EW_PUMP_SETTINGS_DAILY] == 0 || settings->values[EW_PUMP_SETTINGS_PORTIONS] > 0))
            && ew_pump_settings_in(settings->values[EW_PUMP_SETTINGS_PER_LITRE], 0,
            EW_PUMP_SETTINGS_LARGEST_PER_LITRE))
            && ew_pump_settings_in(settings->values[EW_PUMP_SETTINGS_CATCH_UP], 0, EW_PUMP_SETTINGS_MOST_PORTIONS))
            && ew_pump_settings_in(settings->values[EW_PUMP_SETTINGS_GRACE], 60, EW_PUMP_SETTINGS_DAY))
            && ew_pump_settings_in(settings->values[EW_PUMP_SETTINGS_RESERVOIR], 1,
            EW_PUMP_SETTINGS_LARGEST_RESERVOIR))
            && ew_pump_settings_in(settings->values[EW_PUMP_SETTINGS_UNUSABLE], 0,
            ew_sub(settings->values[EW_PUMP_SETTINGS_RESERVOIR], 1)))
            && ew_pump_settings_in(settings->values[EW_PUMP_SETTINGS_TUBE], 0, EW_PUMP_SETTINGS_LARGEST_CAP))
            && ew_pump_settings_in(settings->values[EW_PUMP_SETTINGS_LOW_DAYS], 0, 366))
            && ew_pump_settings_in(settings->values[EW_PUMP_SETTINGS_DRIFT_PER_MILLE], 1, 1000))
            && ew_pump_settings_in(settings->values[EW_PUMP_SETTINGS_CONFIRM_WITHIN], 1, EW_PUMP_SETTINGS_DAY))
            && ew_pump_settings_in(settings->values[EW_PUMP_SETTINGS_MILLISECONDS_PER_STEP], 0, 1000))
            && ew_pump_settings_times_rise(settings);
}

int32_t ew_pump_settings_are_usable(const ew_pump_settings *settings, ew_bool *result) {
    if (settings == 0) {
        return EW_NULL_POINTER;
    }
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    *result = ew_in_pump_settings_are_usable(settings);
    return EW_OK;
}

static ew_bool ew_pump_settings_times_rise(const ew_pump_settings *settings) {
    int64_t before = -1;
    for (int32_t i = 0; i < settings->values[EW_PUMP_SETTINGS_PORTIONS]; i++) {
        int64_t time = settings->values[ew_at(ew_add_int(EW_PUMP_SETTINGS_TIMES, i), EW_PUMP_SETTINGS_LENGTH)];
        if (!ew_pump_settings_in(time, ew_add(before, 1), EW_PUMP_SETTINGS_DAY - 1)) {
            return 0;
        }
        before = time;
    }
    return 1;
}

static ew_bool ew_pump_settings_in(int64_t number, int64_t least, int64_t most) {
    return number >= least && number <= most;
}

/* The volume of a portion: the shares of a day add up to the dose of the day, to the last picolitre. */
static int64_t ew_pump_settings_portion(const ew_pump_settings *settings, int32_t index) {
    int64_t daily = settings->values[EW_PUMP_SETTINGS_DAILY];
    int64_t n = settings->values[EW_PUMP_SETTINGS_PORTIONS];
    return ew_sub(ew_div(ew_mul(daily, ew_add_int(index, 1)), n), ew_div(ew_mul(daily, index), n));
}

static ew_bool ew_in_pump_memory_is_usable(const ew_pump_memory *memory) {
    return EW_PUMP_MEMORY_LENGTH == EW_PUMP_MEMORY_LENGTH && ew_pump_memory_clocks_are_usable(memory)
            && ew_pump_memory_volumes_are_usable(memory) && ew_pump_memory_run_is_usable(memory)
            && ew_pump_window_is_usable(memory);
}

int32_t ew_pump_memory_is_usable(const ew_pump_memory *memory, ew_bool *result) {
    if (memory == 0) {
        return EW_NULL_POINTER;
    }
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    *result = ew_in_pump_memory_is_usable(memory);
    return EW_OK;
}

static ew_bool ew_pump_memory_clocks_are_usable(const ew_pump_memory *memory) {
    return ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_LOCAL], EW_PUMP_MEMORY_LATEST)
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_UPTIME], EW_PUMP_MEMORY_LATEST + 1)
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_ACCRUED], EW_PUMP_MEMORY_LARGEST_TOTAL)
            && memory->values[EW_PUMP_MEMORY_DAY] == (memory->values[EW_PUMP_MEMORY_LOCAL] / EW_PUMP_SETTINGS_DAY)
            && memory->values[EW_PUMP_MEMORY_SLOT] >= (-1)
            && memory->values[EW_PUMP_MEMORY_SLOT] <= (((EW_PUMP_MEMORY_LATEST / EW_PUMP_SETTINGS_DAY)
            + 1) * EW_PUMP_SETTINGS_MOST_PORTIONS)
            && memory->values[EW_PUMP_MEMORY_DUE_SINCE] >= (-EW_PUMP_SETTINGS_DAY)
            && memory->values[EW_PUMP_MEMORY_DUE_SINCE] <= memory->values[EW_PUMP_MEMORY_ACCRUED]
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_PENDING_SINCE],
            memory->values[EW_PUMP_MEMORY_ACCRUED])
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_NEXT], EW_PUMP_MEMORY_LATEST
            + (2 * EW_PUMP_SETTINGS_DAY))
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_SEQUENCE], EW_PUMP_MEMORY_LARGEST_TOTAL)
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_MISSED], EW_PUMP_MEMORY_LARGEST_TOTAL)
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_JUMPED], 1);
}

static ew_bool ew_pump_memory_volumes_are_usable(const ew_pump_memory *memory) {
    return memory->values[EW_PUMP_MEMORY_STEP] >= 1
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_STEP], EW_PUMP_MEMORY_LARGEST_STEP)
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_GIVEN_TODAY], EW_PUMP_MEMORY_LARGEST_TOTAL)
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_DUE], EW_PUMP_MEMORY_LARGEST_RUN)
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_OWED], EW_PUMP_MEMORY_LARGEST_RUN)
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_CARRY], EW_PUMP_MEMORY_LARGEST_STEP)
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_DEBT],
            EW_PUMP_MEMORY_LARGEST_RUN * EW_PUMP_SETTINGS_MOST_PORTIONS)
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_WATER_REST], 999999)
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_LEVEL], EW_PUMP_SETTINGS_LARGEST_RESERVOIR)
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_FILLED], EW_PUMP_MEMORY_LARGEST_TOTAL)
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_DOSED], EW_PUMP_MEMORY_LARGEST_TOTAL)
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_PRIMED], EW_PUMP_MEMORY_LARGEST_TOTAL)
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_PRIMED_SINCE], EW_PUMP_MEMORY_LARGEST_TOTAL)
            && ew_sub(ew_sub(memory->values[EW_PUMP_MEMORY_FILLED], memory->values[EW_PUMP_MEMORY_DOSED]),
            memory->values[EW_PUMP_MEMORY_PRIMED]) == memory->values[EW_PUMP_MEMORY_LEVEL];
}

static ew_bool ew_pump_memory_run_is_usable(const ew_pump_memory *memory) {
    return ((((ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_PENDING], ew_div(EW_PUMP_MEMORY_LARGEST_RUN,
            memory->values[EW_PUMP_MEMORY_STEP]))
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_PURPOSE], EW_PUMP_PRIMING_INTO_TANK)
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_RUN], EW_PUMP_MEMORY_LARGEST_TOTAL)
            && (memory->values[EW_PUMP_MEMORY_RUN] > 0 || memory->values[EW_PUMP_MEMORY_PENDING] == 0))
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_SHORT], EW_PUMP_SETTINGS_LARGEST_CAP))
            && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_SHORT_DAY], EW_PUMP_MEMORY_LARGEST_TOTAL))
            && (memory->values[EW_PUMP_MEMORY_PENDING] > 0) == (memory->values[EW_PUMP_MEMORY_PURPOSE]
            != EW_PUMP_NO_RUN)) && ew_pump_memory_in(memory->values[EW_PUMP_MEMORY_FLAGS], EW_PUMP_ALL_FLAGS);
}

static ew_bool ew_pump_memory_in(int64_t number, int64_t most) {
    return number >= 0 && number <= most;
}

int32_t ew_pump_start(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t local, int64_t uptime,
        int64_t picolitres_per_step, int64_t level, int64_t given_before) {
    if (settings == 0 || memory == 0) {
        return EW_NULL_POINTER;
    }
    if (!ew_in_pump_settings_are_usable(settings) || EW_PUMP_MEMORY_LENGTH != EW_PUMP_MEMORY_LENGTH
            || !ew_pump_settings_in(picolitres_per_step, 1, EW_PUMP_MEMORY_LARGEST_STEP)
            || !ew_pump_settings_in(level, 0, settings->values[EW_PUMP_SETTINGS_RESERVOIR])
            || !ew_pump_settings_in(given_before, 0, settings->values[EW_PUMP_SETTINGS_CAP])
            || !ew_pump_settings_in(local, 0, EW_PUMP_MEMORY_LATEST)
            || !ew_pump_settings_in(uptime, 0, EW_PUMP_MEMORY_LATEST)) {
        return EW_PUMP_BAD_INPUT;
    }
    ew_fill(memory->values, EW_PUMP_MEMORY_LENGTH, 0);
    memory->values[EW_PUMP_MEMORY_STEP] = picolitres_per_step;
    memory->values[EW_PUMP_MEMORY_LOCAL] = local;
    memory->values[EW_PUMP_MEMORY_DAY] = local / EW_PUMP_SETTINGS_DAY;
    memory->values[EW_PUMP_MEMORY_UPTIME] = ew_add(uptime, 1);
    memory->values[EW_PUMP_MEMORY_LEVEL] = level;
    memory->values[EW_PUMP_MEMORY_FILLED] = level;
    memory->values[EW_PUMP_MEMORY_FLAGS] = EW_PUMP_PRIMING_NEEDED;
    memory->values[EW_PUMP_MEMORY_SEQUENCE] = 1;
    ew_pump_schedule_let_go(settings, memory);
    ew_pump_run_count(memory, given_before);
    return EW_PUMP_DONE;
}

int32_t ew_pump_restarted(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t local, int64_t uptime,
        int64_t seconds_off) {
    if (settings == 0 || memory == 0) {
        return EW_NULL_POINTER;
    }
    if (!ew_pump_clock_is_usable(memory, local, uptime)
            || !ew_pump_settings_in(seconds_off, 0, EW_PUMP_MEMORY_LATEST)) {
        return EW_PUMP_BAD_INPUT;
    }
    ew_pump_clock_restart(settings, memory, local, uptime, seconds_off);
    return EW_PUMP_DONE;
}

int32_t ew_pump_tick(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t local, int64_t uptime) {
    if (settings == 0 || memory == 0) {
        return EW_NULL_POINTER;
    }
    if (!ew_pump_clock_is_usable(memory, local, uptime)) {
        return EW_PUMP_BAD_INPUT;
    }
    ew_pump_clock_advance(settings, memory, local, uptime);
    if (memory->values[EW_PUMP_MEMORY_PENDING] > 0) {
        if (ew_sub(memory->values[EW_PUMP_MEMORY_ACCRUED], memory->values[EW_PUMP_MEMORY_PENDING_SINCE])
                <= ew_pump_longest_run(settings, memory)) {
            return EW_PUMP_AWAITING;
        }
        memory->values[EW_PUMP_MEMORY_FLAGS] = memory->values[EW_PUMP_MEMORY_FLAGS] | EW_PUMP_UNCONFIRMED;
        ew_pump_run_settle(settings, memory, memory->values[EW_PUMP_MEMORY_PENDING]);
    }
    if ((memory->values[EW_PUMP_MEMORY_FLAGS] & (EW_PUMP_PAUSED | EW_PUMP_FAILED)) != 0) {
        ew_pump_schedule_let_go(settings, memory);
        return ew_pump_stopped(memory);
    }
    ew_pump_schedule_look(settings, memory);
    return (ew_add(memory->values[EW_PUMP_MEMORY_DUE], memory->values[EW_PUMP_MEMORY_OWED]) == 0)
            ? EW_PUMP_NOTHING_DUE : ew_pump_give(settings, memory);
}

static int64_t ew_pump_longest_run(const ew_pump_settings *settings, const ew_pump_memory *memory) {
    return ew_add(settings->values[EW_PUMP_SETTINGS_CONFIRM_WITHIN], ew_mul(memory->values[EW_PUMP_MEMORY_PENDING],
            settings->values[EW_PUMP_SETTINGS_MILLISECONDS_PER_STEP]) / 1000);
}

static int32_t ew_pump_give(const ew_pump_settings *settings, ew_pump_memory *memory) {
    int64_t wanted = ew_add(ew_add(memory->values[EW_PUMP_MEMORY_DUE], memory->values[EW_PUMP_MEMORY_OWED]),
            memory->values[EW_PUMP_MEMORY_CARRY]);
    if (wanted < memory->values[EW_PUMP_MEMORY_STEP]) {
        ew_pump_run_take(memory, wanted, 0);
        return EW_PUMP_NOTHING_DUE;
    }
    int64_t steps = ew_div(ew_min(wanted, ew_pump_run_allowed(settings, memory)), memory->values[EW_PUMP_MEMORY_STEP]);
    if (steps == 0) {
        return EW_PUMP_HELD_BY_CAP;
    }
    /* the rest waits for a refill */
    steps = ew_min(steps, ew_pump_run_reachable(settings, memory));
    if (((memory->values[EW_PUMP_MEMORY_FLAGS] & EW_PUMP_RESERVOIR_EMPTY) != 0) || steps == 0) {
        memory->values[EW_PUMP_MEMORY_FLAGS] =
                memory->values[EW_PUMP_MEMORY_FLAGS] | (EW_PUMP_RESERVOIR_EMPTY | EW_PUMP_PRIMING_NEEDED);
        memory->values[EW_PUMP_MEMORY_PRIMED_SINCE] = 0;
        return EW_PUMP_EMPTY;
    }
    if ((memory->values[EW_PUMP_MEMORY_FLAGS] & EW_PUMP_PRIMING_NEEDED) != 0) {
        return EW_PUMP_UNPRIMED;
    }
    ew_pump_run_take(memory, wanted, ew_mul(steps, memory->values[EW_PUMP_MEMORY_STEP]));
    return ew_pump_run_order(memory, EW_PUMP_DOSE, steps);
}

int32_t ew_pump_dose_by_hand(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t volume, int64_t local,
        int64_t uptime) {
    if (settings == 0 || memory == 0) {
        return EW_NULL_POINTER;
    }
    if (!ew_pump_settings_in(volume, 1, EW_PUMP_SETTINGS_LARGEST_CAP)
            || !ew_pump_clock_is_usable(memory, local, uptime)) {
        return EW_PUMP_BAD_INPUT;
    }
    ew_pump_clock_advance(settings, memory, local, uptime);
    int64_t allowed = ew_pump_run_allowed(settings, memory);
    int64_t wanted = ew_add(volume, memory->values[EW_PUMP_MEMORY_CARRY]);
    int64_t steps = ew_div(ew_min(wanted, allowed), memory->values[EW_PUMP_MEMORY_STEP]);
    int32_t status = ew_pump_readiness(memory);
    if (status == EW_PUMP_DONE && ((memory->values[EW_PUMP_MEMORY_FLAGS] & EW_PUMP_PRIMING_NEEDED) != 0)) {
        status = EW_PUMP_UNPRIMED;
    }
    if (status == EW_PUMP_DONE) {
        status = (wanted < memory->values[EW_PUMP_MEMORY_STEP]) ? EW_PUMP_TOO_SMALL : ((volume > allowed
                || steps == 0) ? EW_PUMP_HELD_BY_CAP : EW_PUMP_DONE);
    }
    if (status != EW_PUMP_DONE || !ew_pump_run_fits(settings, memory, steps)) {
        return (status == EW_PUMP_DONE) ? EW_PUMP_EMPTY : status;
    }
    memory->values[EW_PUMP_MEMORY_CARRY] = ew_min(ew_sub(wanted, ew_mul(steps, memory->values[EW_PUMP_MEMORY_STEP])),
            ew_sub(memory->values[EW_PUMP_MEMORY_STEP], 1));
    return ew_pump_run_order(memory, EW_PUMP_DOSE_BY_HAND, steps);
}

int32_t ew_pump_prime(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t volume, ew_bool into_tank,
        int64_t local, int64_t uptime) {
    if (settings == 0 || memory == 0) {
        return EW_NULL_POINTER;
    }
    if (!ew_pump_settings_in(volume, 1, EW_PUMP_SETTINGS_LARGEST_CAP)
            || !ew_pump_clock_is_usable(memory, local, uptime)) {
        return EW_PUMP_BAD_INPUT;
    }
    ew_pump_clock_advance(settings, memory, local, uptime);
    int64_t steps = ew_div(volume, memory->values[EW_PUMP_MEMORY_STEP]);
    int32_t status = ew_pump_readiness(memory);
    if (status == EW_PUMP_DONE) {
        status = (volume > settings->values[EW_PUMP_SETTINGS_TUBE]) ? EW_PUMP_TOO_MUCH : ((steps == 0)
                ? EW_PUMP_TOO_SMALL : EW_PUMP_DONE);
    }
    if (status == EW_PUMP_DONE && into_tank
            && ew_mul(steps, memory->values[EW_PUMP_MEMORY_STEP]) > ew_pump_run_allowed(settings, memory)) {
        status = EW_PUMP_HELD_BY_CAP;
    }
    if (status != EW_PUMP_DONE || !ew_pump_run_fits(settings, memory, steps)) {
        return (status == EW_PUMP_DONE) ? EW_PUMP_EMPTY : status;
    }
    return ew_pump_run_order(memory, into_tank ? EW_PUMP_PRIMING_INTO_TANK : EW_PUMP_PRIMING, steps);
}

static int32_t ew_pump_readiness(const ew_pump_memory *memory) {
    if (memory->values[EW_PUMP_MEMORY_PENDING] > 0) {
        return EW_PUMP_AWAITING;
    }
    if ((memory->values[EW_PUMP_MEMORY_FLAGS] & (EW_PUMP_PAUSED | EW_PUMP_FAILED)) != 0) {
        return ew_pump_stopped(memory);
    }
    return ((memory->values[EW_PUMP_MEMORY_FLAGS] & EW_PUMP_RESERVOIR_EMPTY) != 0) ? EW_PUMP_EMPTY : EW_PUMP_DONE;
}

static int32_t ew_pump_stopped(const ew_pump_memory *memory) {
    return ((memory->values[EW_PUMP_MEMORY_FLAGS] & EW_PUMP_FAILED) != 0) ? EW_PUMP_STOPPED_BY_FAILURE
            : EW_PUMP_STOPPED;
}

int32_t ew_pump_dosed(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t run, int64_t steps,
        int64_t local, int64_t uptime) {
    if (settings == 0 || memory == 0) {
        return EW_NULL_POINTER;
    }
    if (run < 1 || !ew_pump_can_count(memory, steps, local, uptime)) {
        return EW_PUMP_BAD_INPUT;
    }
    if (memory->values[EW_PUMP_MEMORY_PENDING] == 0 || run != memory->values[EW_PUMP_MEMORY_RUN]) {
        return EW_PUMP_OTHER_RUN;
    }
    ew_pump_clock_advance(settings, memory, local, uptime);
    if (memory->values[EW_PUMP_MEMORY_PENDING] > 0) {
        memory->values[EW_PUMP_MEMORY_FLAGS] = memory->values[EW_PUMP_MEMORY_FLAGS] | ((steps
                > memory->values[EW_PUMP_MEMORY_PENDING]) ? EW_PUMP_OVERRUN : 0);
        ew_pump_run_settle(settings, memory, ew_pump_run_believed(settings, memory, steps));
    }
    return EW_PUMP_DONE;
}

/* Room is left for a run that may be under way besides. */
static ew_bool ew_pump_can_count(const ew_pump_memory *memory, int64_t steps, int64_t local, int64_t uptime) {
    return ew_pump_clock_is_usable(memory, local, uptime)
            && ew_pump_settings_in(steps, 0, ew_div(EW_PUMP_MEMORY_LARGEST_RUN,
            memory->values[EW_PUMP_MEMORY_STEP]))
            && memory->values[EW_PUMP_MEMORY_FILLED] <= (EW_PUMP_MEMORY_LARGEST_TOTAL
            - (2 * EW_PUMP_MEMORY_LARGEST_RUN));
}

int32_t ew_pump_failed(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t run, int64_t local,
        int64_t uptime) {
    if (settings == 0 || memory == 0) {
        return EW_NULL_POINTER;
    }
    if (run < 1 || !ew_pump_clock_is_usable(memory, local, uptime)) {
        return EW_PUMP_BAD_INPUT;
    }
    if (run != memory->values[EW_PUMP_MEMORY_RUN]) {
        return EW_PUMP_OTHER_RUN;
    }
    ew_pump_clock_advance(settings, memory, local, uptime);
    ew_pump_run_settle(settings, memory, memory->values[EW_PUMP_MEMORY_PENDING]);
    memory->values[EW_PUMP_MEMORY_FLAGS] = memory->values[EW_PUMP_MEMORY_FLAGS] | EW_PUMP_FAILED;
    return EW_PUMP_DONE;
}

int32_t ew_pump_water_added(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t microlitres) {
    if (settings == 0 || memory == 0) {
        return EW_NULL_POINTER;
    }
    if (!ew_pump_settings_in(microlitres, 1, EW_PUMP_MOST_WATER) || !ew_pump_was_started(memory)) {
        return EW_PUMP_BAD_INPUT;
    }
    int64_t per_litre = settings->values[EW_PUMP_SETTINGS_PER_LITRE];
    int64_t litres = microlitres / EW_PUMP_MICROLITRES_PER_LITRE;
    int64_t part = ew_add(ew_mul(ew_sub(microlitres, ew_mul(litres, EW_PUMP_MICROLITRES_PER_LITRE)), per_litre),
            memory->values[EW_PUMP_MEMORY_WATER_REST]);
    int64_t owed = ew_add(ew_add(memory->values[EW_PUMP_MEMORY_OWED], ew_mul(litres, per_litre)),
            part / EW_PUMP_MICROLITRES_PER_LITRE);
    if (owed > settings->values[EW_PUMP_SETTINGS_CAP]) {
        return EW_PUMP_TOO_MUCH;
    }
    memory->values[EW_PUMP_MEMORY_SEQUENCE] = ew_add(memory->values[EW_PUMP_MEMORY_SEQUENCE], 1);
    memory->values[EW_PUMP_MEMORY_OWED] = owed;
    memory->values[EW_PUMP_MEMORY_WATER_REST] = part % EW_PUMP_MICROLITRES_PER_LITRE;
    return EW_PUMP_DONE;
}

int32_t ew_pump_refilled(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t level) {
    if (settings == 0 || memory == 0) {
        return EW_NULL_POINTER;
    }
    if (!ew_pump_settings_in(level, 0, settings->values[EW_PUMP_SETTINGS_RESERVOIR]) || !ew_pump_was_started(memory)
            || memory->values[EW_PUMP_MEMORY_FILLED] > (EW_PUMP_MEMORY_LARGEST_TOTAL - EW_PUMP_MEMORY_LARGEST_RUN)) {
        return EW_PUMP_BAD_INPUT;
    }
    if (memory->values[EW_PUMP_MEMORY_PENDING] > 0) {
        return EW_PUMP_AWAITING;
    }
    memory->values[EW_PUMP_MEMORY_SEQUENCE] = ew_add(memory->values[EW_PUMP_MEMORY_SEQUENCE], 1);
    memory->values[EW_PUMP_MEMORY_FILLED] = ew_add(memory->values[EW_PUMP_MEMORY_FILLED], ew_sub(level,
            memory->values[EW_PUMP_MEMORY_LEVEL]));
    memory->values[EW_PUMP_MEMORY_LEVEL] = level;
    memory->values[EW_PUMP_MEMORY_FLAGS] = memory->values[EW_PUMP_MEMORY_FLAGS] & ~EW_PUMP_RESERVOIR_EMPTY;
    return EW_PUMP_DONE;
}

int32_t ew_pump_calibrated(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t picolitres_per_step) {
    if (settings == 0 || memory == 0) {
        return EW_NULL_POINTER;
    }
    if (!ew_pump_settings_in(picolitres_per_step, 1, EW_PUMP_MEMORY_LARGEST_STEP) || !ew_pump_was_started(memory)) {
        return EW_PUMP_BAD_INPUT;
    }
    if (memory->values[EW_PUMP_MEMORY_PENDING] > 0) {
        return EW_PUMP_AWAITING;
    }
    memory->values[EW_PUMP_MEMORY_SEQUENCE] = ew_add(memory->values[EW_PUMP_MEMORY_SEQUENCE], 1);
    ew_pump_calibrate(settings, memory, picolitres_per_step);
    return EW_PUMP_DONE;
}

static void ew_pump_calibrate(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t picolitres_per_step) {
    if (ew_mul(ew_abs(ew_sub(picolitres_per_step, memory->values[EW_PUMP_MEMORY_STEP])), 1000)
            > ew_mul(settings->values[EW_PUMP_SETTINGS_DRIFT_PER_MILLE], memory->values[EW_PUMP_MEMORY_STEP])) {
        memory->values[EW_PUMP_MEMORY_FLAGS] = memory->values[EW_PUMP_MEMORY_FLAGS] | EW_PUMP_CALIBRATION_DRIFTED;
    }
    memory->values[EW_PUMP_MEMORY_STEP] = picolitres_per_step;
}

static ew_bool ew_pump_was_started(const ew_pump_memory *memory) {
    return memory->values[EW_PUMP_MEMORY_STEP] >= 1;
}

static void ew_in_pump_tube_seen_full(ew_pump_memory *memory) {
    memory->values[EW_PUMP_MEMORY_SEQUENCE] = ew_add(memory->values[EW_PUMP_MEMORY_SEQUENCE], 1);
    memory->values[EW_PUMP_MEMORY_FLAGS] = memory->values[EW_PUMP_MEMORY_FLAGS] & ~EW_PUMP_PRIMING_NEEDED;
}

int32_t ew_pump_tube_seen_full(ew_pump_memory *memory) {
    if (memory == 0) {
        return EW_NULL_POINTER;
    }
    ew_in_pump_tube_seen_full(memory);
    return EW_OK;
}

static void ew_in_pump_tube_drained(ew_pump_memory *memory) {
    memory->values[EW_PUMP_MEMORY_SEQUENCE] = ew_add(memory->values[EW_PUMP_MEMORY_SEQUENCE], 1);
    memory->values[EW_PUMP_MEMORY_FLAGS] = memory->values[EW_PUMP_MEMORY_FLAGS] | EW_PUMP_PRIMING_NEEDED;
    memory->values[EW_PUMP_MEMORY_PRIMED_SINCE] = 0;
}

int32_t ew_pump_tube_drained(ew_pump_memory *memory) {
    if (memory == 0) {
        return EW_NULL_POINTER;
    }
    ew_in_pump_tube_drained(memory);
    return EW_OK;
}

static void ew_in_pump_paused(ew_pump_memory *memory) {
    memory->values[EW_PUMP_MEMORY_SEQUENCE] = ew_add(memory->values[EW_PUMP_MEMORY_SEQUENCE], 1);
    memory->values[EW_PUMP_MEMORY_FLAGS] = memory->values[EW_PUMP_MEMORY_FLAGS] | EW_PUMP_PAUSED;
    memory->values[EW_PUMP_MEMORY_DEBT] = 0;
    memory->values[EW_PUMP_MEMORY_DUE] = 0;
}

int32_t ew_pump_paused(ew_pump_memory *memory) {
    if (memory == 0) {
        return EW_NULL_POINTER;
    }
    ew_in_pump_paused(memory);
    return EW_OK;
}

int32_t ew_pump_resumed(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t local, int64_t uptime) {
    if (settings == 0 || memory == 0) {
        return EW_NULL_POINTER;
    }
    if (!ew_pump_clock_is_usable(memory, local, uptime)) {
        return EW_PUMP_BAD_INPUT;
    }
    ew_pump_clock_advance(settings, memory, local, uptime);
    if ((memory->values[EW_PUMP_MEMORY_FLAGS] & (EW_PUMP_PAUSED | EW_PUMP_FAILED)) != 0) {
        ew_pump_schedule_let_go(settings, memory);
    }
    memory->values[EW_PUMP_MEMORY_FLAGS] = memory->values[EW_PUMP_MEMORY_FLAGS] & ~(EW_PUMP_PAUSED | EW_PUMP_FAILED);
    return EW_PUMP_DONE;
}

int32_t ew_pump_dosed_unordered(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t steps, int64_t local,
        int64_t uptime) {
    if (settings == 0 || memory == 0) {
        return EW_NULL_POINTER;
    }
    if (!ew_pump_can_count(memory, steps, local, uptime)) {
        return EW_PUMP_BAD_INPUT;
    }
    ew_pump_clock_advance(settings, memory, local, uptime);
    memory->values[EW_PUMP_MEMORY_FLAGS] = memory->values[EW_PUMP_MEMORY_FLAGS] | EW_PUMP_OVERRUN;
    ew_pump_run_dose(memory, ew_mul(steps, memory->values[EW_PUMP_MEMORY_STEP]));
    return EW_PUMP_DONE;
}

static void ew_in_pump_acknowledged(ew_pump_memory *memory, int64_t flags) {
    memory->values[EW_PUMP_MEMORY_SEQUENCE] = ew_add(memory->values[EW_PUMP_MEMORY_SEQUENCE], 1);
    memory->values[EW_PUMP_MEMORY_FLAGS] = memory->values[EW_PUMP_MEMORY_FLAGS] & ~(flags & EW_PUMP_NEWS);
}

int32_t ew_pump_acknowledged(ew_pump_memory *memory, int64_t flags) {
    if (memory == 0) {
        return EW_NULL_POINTER;
    }
    ew_in_pump_acknowledged(memory, flags);
    return EW_OK;
}

int32_t ew_pump_settings_changed(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t picolitres_per_step,
        int64_t local, int64_t uptime) {
    if (settings == 0 || memory == 0) {
        return EW_NULL_POINTER;
    }
    int64_t pending = ew_mul(memory->values[EW_PUMP_MEMORY_PENDING], memory->values[EW_PUMP_MEMORY_STEP]);
    if (!ew_in_pump_settings_are_usable(settings)
            || !ew_pump_settings_in(picolitres_per_step, 1, EW_PUMP_MEMORY_LARGEST_STEP)
            || !ew_pump_clock_is_usable(memory, local, uptime)
            || ew_sub(memory->values[EW_PUMP_MEMORY_LEVEL], pending) > settings->values[EW_PUMP_SETTINGS_RESERVOIR]) {
        return EW_PUMP_BAD_INPUT;
    }
    ew_pump_clock_advance(settings, memory, local, uptime);
    if (memory->values[EW_PUMP_MEMORY_PENDING] > 0) {
        memory->values[EW_PUMP_MEMORY_FLAGS] = memory->values[EW_PUMP_MEMORY_FLAGS] | EW_PUMP_UNCONFIRMED;
        ew_pump_run_settle(settings, memory, memory->values[EW_PUMP_MEMORY_PENDING]);
    }
    ew_pump_calibrate(settings, memory, picolitres_per_step);
    ew_pump_schedule_let_go(settings, memory);
    memory->values[EW_PUMP_MEMORY_DEBT] = 0;
    memory->values[EW_PUMP_MEMORY_OWED] = ew_min(memory->values[EW_PUMP_MEMORY_OWED],
            settings->values[EW_PUMP_SETTINGS_CAP]);
    return EW_PUMP_DONE;
}

static int64_t ew_in_pump_allowed(const ew_pump_settings *settings, const ew_pump_memory *memory) {
    return ew_pump_run_allowed(settings, memory);
}

int32_t ew_pump_allowed(const ew_pump_settings *settings, const ew_pump_memory *memory, int64_t *result) {
    if (settings == 0 || memory == 0) {
        return EW_NULL_POINTER;
    }
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    *result = ew_in_pump_allowed(settings, memory);
    return EW_OK;
}

static int64_t ew_in_pump_usable(const ew_pump_settings *settings, const ew_pump_memory *memory) {
    return ew_max(0, ew_sub(memory->values[EW_PUMP_MEMORY_LEVEL], settings->values[EW_PUMP_SETTINGS_UNUSABLE]));
}

int32_t ew_pump_usable(const ew_pump_settings *settings, const ew_pump_memory *memory, int64_t *result) {
    if (settings == 0 || memory == 0) {
        return EW_NULL_POINTER;
    }
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    *result = ew_in_pump_usable(settings, memory);
    return EW_OK;
}

static int64_t ew_in_pump_daily_use(const ew_pump_settings *settings, const ew_pump_memory *memory) {
    return ew_max(settings->values[EW_PUMP_SETTINGS_DAILY], ew_min(memory->values[EW_PUMP_MEMORY_WINDOW_SUM],
            EW_PUMP_MEMORY_LARGEST_RUN));
}

int32_t ew_pump_daily_use(const ew_pump_settings *settings, const ew_pump_memory *memory, int64_t *result) {
    if (settings == 0 || memory == 0) {
        return EW_NULL_POINTER;
    }
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    *result = ew_in_pump_daily_use(settings, memory);
    return EW_OK;
}

static ew_bool ew_in_pump_is_low(const ew_pump_settings *settings, const ew_pump_memory *memory) {
    return ew_in_pump_usable(settings, memory) < ew_mul(settings->values[EW_PUMP_SETTINGS_LOW_DAYS],
            ew_in_pump_daily_use(settings, memory));
}

int32_t ew_pump_is_low(const ew_pump_settings *settings, const ew_pump_memory *memory, ew_bool *result) {
    if (settings == 0 || memory == 0) {
        return EW_NULL_POINTER;
    }
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    *result = ew_in_pump_is_low(settings, memory);
    return EW_OK;
}

/* Tells whether an event with these clocks can be taken. */
static ew_bool ew_pump_clock_is_usable(const ew_pump_memory *memory, int64_t local, int64_t uptime) {
    return memory->values[EW_PUMP_MEMORY_STEP] >= 1 && local >= 0 && local <= EW_PUMP_MEMORY_LATEST && uptime >= 0
            && uptime <= EW_PUMP_MEMORY_LATEST
            && memory->values[EW_PUMP_MEMORY_ACCRUED] <= (EW_PUMP_MEMORY_LARGEST_TOTAL - (2 * EW_PUMP_MEMORY_LATEST));
}

/* Takes usable clocks forward; an uptime that fell is a restart that nobody declared. */
static void ew_pump_clock_advance(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t local,
        int64_t uptime) {
    if (uptime < ew_sub(memory->values[EW_PUMP_MEMORY_UPTIME], 1)) {
        ew_pump_clock_restart(settings, memory, local, uptime, 0);
        return;
    }
    int64_t elapsed = ew_max(0, ew_sub(uptime, memory->values[EW_PUMP_MEMORY_UPTIME]));
    int64_t jump = ew_sub(ew_sub(local, memory->values[EW_PUMP_MEMORY_LOCAL]), elapsed);
    if (jump > EW_PUMP_CLOCK_TOLERANCE || jump < (-EW_PUMP_CLOCK_TOLERANCE)) {
        memory->values[EW_PUMP_MEMORY_FLAGS] = memory->values[EW_PUMP_MEMORY_FLAGS] | EW_PUMP_CLOCK_CHANGED;
        memory->values[EW_PUMP_MEMORY_JUMPED] = (jump > 0) ? 1 : memory->values[EW_PUMP_MEMORY_JUMPED];
    }
    memory->values[EW_PUMP_MEMORY_UPTIME] = ew_max(memory->values[EW_PUMP_MEMORY_UPTIME], uptime);
    ew_pump_clock_take(memory, local, elapsed);
}

static void ew_pump_clock_restart(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t local,
        int64_t uptime, int64_t seconds_off) {
    if (local < memory->values[EW_PUMP_MEMORY_LOCAL]) {
        memory->values[EW_PUMP_MEMORY_FLAGS] = memory->values[EW_PUMP_MEMORY_FLAGS] | EW_PUMP_CLOCK_CHANGED;
    }
    /* the fraction of a second before it must not be credited */
    memory->values[EW_PUMP_MEMORY_UPTIME] = ew_add(uptime, 1);
    memory->values[EW_PUMP_MEMORY_JUMPED] = 0;
    ew_pump_clock_take(memory, local, seconds_off);
    if (memory->values[EW_PUMP_MEMORY_PENDING] > 0) {
        memory->values[EW_PUMP_MEMORY_FLAGS] = memory->values[EW_PUMP_MEMORY_FLAGS] | EW_PUMP_UNCONFIRMED;
        ew_pump_run_settle(settings, memory, memory->values[EW_PUMP_MEMORY_PENDING]);
    }
}

static void ew_pump_clock_take(ew_pump_memory *memory, int64_t local, int64_t elapsed) {
    memory->values[EW_PUMP_MEMORY_SEQUENCE] = ew_add(memory->values[EW_PUMP_MEMORY_SEQUENCE], 1);
    memory->values[EW_PUMP_MEMORY_ACCRUED] = ew_add(memory->values[EW_PUMP_MEMORY_ACCRUED], elapsed);
    memory->values[EW_PUMP_MEMORY_LOCAL] = local;
    int64_t day = local / EW_PUMP_SETTINGS_DAY;
    if (day > memory->values[EW_PUMP_MEMORY_DAY]) {
        /* not when it falls: a day that comes again must not give its doses again */
        memory->values[EW_PUMP_MEMORY_GIVEN_TODAY] = 0;
    }
    memory->values[EW_PUMP_MEMORY_DAY] = day;
    ew_pump_window_expire(memory);
}

static int64_t ew_pump_run_allowed(const ew_pump_settings *settings, const ew_pump_memory *memory) {
    int64_t pending = (memory->values[EW_PUMP_MEMORY_PURPOSE] == EW_PUMP_PRIMING) ? 0
            : ew_mul(memory->values[EW_PUMP_MEMORY_PENDING], memory->values[EW_PUMP_MEMORY_STEP]);
    return ew_max(0, ew_sub(ew_sub(settings->values[EW_PUMP_SETTINGS_CAP],
            ew_max(memory->values[EW_PUMP_MEMORY_WINDOW_SUM], memory->values[EW_PUMP_MEMORY_GIVEN_TODAY])), pending));
}

/* Whole steps above the intake. */
static int64_t ew_pump_run_reachable(const ew_pump_settings *settings, const ew_pump_memory *memory) {
    return ew_div(ew_in_pump_usable(settings, memory), memory->values[EW_PUMP_MEMORY_STEP]);
}

static ew_bool ew_pump_run_fits(const ew_pump_settings *settings, const ew_pump_memory *memory, int64_t steps) {
    return steps <= ew_pump_run_reachable(settings, memory);
}

static int32_t ew_pump_run_order(ew_pump_memory *memory, int32_t purpose, int64_t steps) {
    memory->values[EW_PUMP_MEMORY_RUN] = ew_add(memory->values[EW_PUMP_MEMORY_RUN], 1);
    memory->values[EW_PUMP_MEMORY_PENDING] = steps;
    memory->values[EW_PUMP_MEMORY_PURPOSE] = purpose;
    memory->values[EW_PUMP_MEMORY_PENDING_SINCE] = memory->values[EW_PUMP_MEMORY_ACCRUED];
    return EW_PUMP_RUN;
}

/* Takes what a run will give off what is wanted; what is less than a step waits for the next run. */
static void ew_pump_run_take(ew_pump_memory *memory, int64_t wanted, int64_t volume) {
    int64_t rest = ew_sub(wanted, volume);
    if (rest < memory->values[EW_PUMP_MEMORY_STEP]) {
        memory->values[EW_PUMP_MEMORY_CARRY] = rest;
        memory->values[EW_PUMP_MEMORY_OWED] = 0;
        memory->values[EW_PUMP_MEMORY_DUE] = 0;
        return;
    }
    /* cap or reservoir held the rest back */
    int64_t left = volume;
    left = ew_sub(left, ew_pump_run_take_from(memory, EW_PUMP_MEMORY_CARRY, left));
    left = ew_sub(left, ew_pump_run_take_from(memory, EW_PUMP_MEMORY_OWED, left));
    (void) ew_pump_run_take_from(memory, EW_PUMP_MEMORY_DUE, left);
}

static int64_t ew_pump_run_take_from(ew_pump_memory *memory, int32_t place, int64_t most) {
    int64_t taken = ew_min(memory->values[ew_at(place, EW_PUMP_MEMORY_LENGTH)], most);
    memory->values[ew_at(place, EW_PUMP_MEMORY_LENGTH)] = ew_sub(memory->values[ew_at(place, EW_PUMP_MEMORY_LENGTH)],
            taken);
    return taken;
}

/*
 * The steps that count of a run that is reported with so many: all that were ordered, if more than the
 * cap would be believed to be short on this day of accrued time, so that reports that lie cannot go on
 * for ever.
 */
static int64_t ew_pump_run_believed(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t steps) {
    int64_t shortfall = ew_mul(ew_sub(memory->values[EW_PUMP_MEMORY_PENDING], steps),
            memory->values[EW_PUMP_MEMORY_STEP]);
    if (shortfall <= 0 || memory->values[EW_PUMP_MEMORY_PURPOSE] == EW_PUMP_PRIMING) {
        return steps;
    }
    int64_t day = memory->values[EW_PUMP_MEMORY_ACCRUED] / EW_PUMP_SETTINGS_DAY;
    if (day != memory->values[EW_PUMP_MEMORY_SHORT_DAY]) {
        memory->values[EW_PUMP_MEMORY_SHORT_DAY] = day;
        memory->values[EW_PUMP_MEMORY_SHORT] = 0;
    }
    if (shortfall > ew_sub(settings->values[EW_PUMP_SETTINGS_CAP], memory->values[EW_PUMP_MEMORY_SHORT])) {
        memory->values[EW_PUMP_MEMORY_FLAGS] = memory->values[EW_PUMP_MEMORY_FLAGS] | EW_PUMP_SHORT_RUNS;
        return memory->values[EW_PUMP_MEMORY_PENDING];
    }
    memory->values[EW_PUMP_MEMORY_SHORT] = ew_add(memory->values[EW_PUMP_MEMORY_SHORT], shortfall);
    return steps;
}

/* Counts a run as having made so many steps, and ends it. */
static void ew_pump_run_settle(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t steps) {
    int64_t volume = ew_mul(steps, memory->values[EW_PUMP_MEMORY_STEP]);
    int64_t shortfall = ew_mul(ew_sub(memory->values[EW_PUMP_MEMORY_PENDING], steps),
            memory->values[EW_PUMP_MEMORY_STEP]);
    int64_t purpose = memory->values[EW_PUMP_MEMORY_PURPOSE];
    memory->values[EW_PUMP_MEMORY_PENDING] = 0;
    memory->values[EW_PUMP_MEMORY_PURPOSE] = EW_PUMP_NO_RUN;
    if (shortfall > 0 && purpose == EW_PUMP_DOSE) {
        memory->values[EW_PUMP_MEMORY_DUE_SINCE] = (memory->values[EW_PUMP_MEMORY_DUE] == 0)
                ? memory->values[EW_PUMP_MEMORY_ACCRUED] : memory->values[EW_PUMP_MEMORY_DUE_SINCE];
        memory->values[EW_PUMP_MEMORY_DUE] = ew_add(memory->values[EW_PUMP_MEMORY_DUE], shortfall);
    }
    if (purpose == EW_PUMP_PRIMING) {
        ew_pump_run_draw(memory, volume);
        memory->values[EW_PUMP_MEMORY_PRIMED] = ew_add(memory->values[EW_PUMP_MEMORY_PRIMED], volume);
    } else {
        ew_pump_run_dose(memory, volume);
    }
    if (purpose >= EW_PUMP_PRIMING) {
        ew_pump_run_prime(settings, memory, volume);
    }
}

static void ew_pump_run_dose(ew_pump_memory *memory, int64_t volume) {
    ew_pump_run_draw(memory, volume);
    memory->values[EW_PUMP_MEMORY_DOSED] = ew_add(memory->values[EW_PUMP_MEMORY_DOSED], volume);
    ew_pump_run_count(memory, volume);
}

static void ew_pump_run_draw(ew_pump_memory *memory, int64_t volume) {
    memory->values[EW_PUMP_MEMORY_LEVEL] = ew_sub(memory->values[EW_PUMP_MEMORY_LEVEL], volume);
    if (memory->values[EW_PUMP_MEMORY_LEVEL] < 0) {
        /* more was in it than anybody said */
        memory->values[EW_PUMP_MEMORY_FILLED] = ew_sub(memory->values[EW_PUMP_MEMORY_FILLED],
                memory->values[EW_PUMP_MEMORY_LEVEL]);
        memory->values[EW_PUMP_MEMORY_LEVEL] = 0;
    }
}

/* Counts against the cap. */
static void ew_pump_run_count(ew_pump_memory *memory, int64_t volume) {
    if (volume > 0) {
        memory->values[EW_PUMP_MEMORY_GIVEN_TODAY] = ew_add(memory->values[EW_PUMP_MEMORY_GIVEN_TODAY], volume);
        ew_pump_window_add(memory, volume);
    }
}

static void ew_pump_run_prime(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t volume) {
    memory->values[EW_PUMP_MEMORY_PRIMED_SINCE] = ew_add(memory->values[EW_PUMP_MEMORY_PRIMED_SINCE], volume);
    if (memory->values[EW_PUMP_MEMORY_PRIMED_SINCE] > ew_sub(settings->values[EW_PUMP_SETTINGS_TUBE],
            memory->values[EW_PUMP_MEMORY_STEP])) {
        /* full but for less than a step */
        memory->values[EW_PUMP_MEMORY_FLAGS] = memory->values[EW_PUMP_MEMORY_FLAGS] & ~EW_PUMP_PRIMING_NEEDED;
    }
}

static void ew_pump_schedule_look(const ew_pump_settings *settings, ew_pump_memory *memory) {
    ew_bool jumped = memory->values[EW_PUMP_MEMORY_JUMPED] != 0;
    memory->values[EW_PUMP_MEMORY_JUMPED] = 0;
    if (settings->values[EW_PUMP_SETTINGS_PORTIONS] > 0 && !ew_pump_schedule_is_between_portions(memory)) {
        ew_pump_schedule_pass(settings, memory, jumped);
    }
    if (memory->values[EW_PUMP_MEMORY_DUE] > 0
            && ew_sub(memory->values[EW_PUMP_MEMORY_ACCRUED], memory->values[EW_PUMP_MEMORY_DUE_SINCE])
            > settings->values[EW_PUMP_SETTINGS_GRACE]) {
        ew_pump_schedule_miss_what_is_due(settings, memory);
    }
}

/* Lets go what is due and all portions up to now; the next one counts. */
static void ew_pump_schedule_let_go(const ew_pump_settings *settings, ew_pump_memory *memory) {
    memory->values[EW_PUMP_MEMORY_DUE] = 0;
    memory->values[EW_PUMP_MEMORY_JUMPED] = 0;
    ew_pump_schedule_stand(settings, memory, ew_pump_schedule_passed(settings, memory));
}

/* On the day before the next portion; earlier than that the clock was set back, perhaps too far. */
static ew_bool ew_pump_schedule_is_between_portions(const ew_pump_memory *memory) {
    return memory->values[EW_PUMP_MEMORY_LOCAL] < memory->values[EW_PUMP_MEMORY_NEXT]
            && memory->values[EW_PUMP_MEMORY_LOCAL] >= ew_sub(memory->values[EW_PUMP_MEMORY_NEXT],
            EW_PUMP_SETTINGS_DAY);
}

static void ew_pump_schedule_stand(const ew_pump_settings *settings, ew_pump_memory *memory, int32_t passed) {
    int64_t n = settings->values[EW_PUMP_SETTINGS_PORTIONS];
    memory->values[EW_PUMP_MEMORY_SLOT] = ew_sub(ew_add(ew_mul(memory->values[EW_PUMP_MEMORY_DAY], n), passed), 1);
    if (n > 0) {
        memory->values[EW_PUMP_MEMORY_NEXT] = (passed < n)
                ? ew_add(ew_mul(memory->values[EW_PUMP_MEMORY_DAY], EW_PUMP_SETTINGS_DAY),
                settings->values[ew_at(ew_add_int(EW_PUMP_SETTINGS_TIMES, passed), EW_PUMP_SETTINGS_LENGTH)])
                : ew_add(ew_mul(ew_add(memory->values[EW_PUMP_MEMORY_DAY], 1), EW_PUMP_SETTINGS_DAY),
                settings->values[EW_PUMP_SETTINGS_TIMES]);
    } else {
        memory->values[EW_PUMP_MEMORY_NEXT] = 0;
    }
}

/* How many portions of this day are past. */
static int32_t ew_pump_schedule_passed(const ew_pump_settings *settings, const ew_pump_memory *memory) {
    int64_t second = ew_sub(memory->values[EW_PUMP_MEMORY_LOCAL], ew_mul(memory->values[EW_PUMP_MEMORY_DAY],
            EW_PUMP_SETTINGS_DAY));
    int32_t passed = 0;
    while (passed < settings->values[EW_PUMP_SETTINGS_PORTIONS]
            && settings->values[ew_at(ew_add_int(EW_PUMP_SETTINGS_TIMES, passed), EW_PUMP_SETTINGS_LENGTH)] <= second) {
        passed = ew_add_int(passed, 1);
    }
    return passed;
}

static void ew_pump_schedule_pass(const ew_pump_settings *settings, ew_pump_memory *memory, ew_bool jumped) {
    int64_t n = settings->values[EW_PUMP_SETTINGS_PORTIONS];
    int32_t passed = ew_pump_schedule_passed(settings, memory);
    int64_t slot = ew_sub(ew_add(ew_mul(memory->values[EW_PUMP_MEMORY_DAY], n), passed), 1);
    int64_t before = memory->values[EW_PUMP_MEMORY_SLOT];
    ew_bool set_back_far = ew_sub(before, slot) > n;
    if (slot <= before && !set_back_far) {
        return;
    }
    ew_pump_schedule_stand(settings, memory, passed);
    if (set_back_far) {
        return;
    }
    if (memory->values[EW_PUMP_MEMORY_DUE] > 0) {
        ew_pump_schedule_miss_what_is_due(settings, memory);
    }
    int32_t last = (passed > 0) ? ew_sub_int(passed, 1) : ew_sub_int(ew_to_int(n), 1);
    int64_t second = ew_sub(memory->values[EW_PUMP_MEMORY_LOCAL], ew_mul(memory->values[EW_PUMP_MEMORY_DAY],
            EW_PUMP_SETTINGS_DAY));
    int64_t lateness = ew_add(ew_sub(second, settings->values[ew_at(ew_add_int(EW_PUMP_SETTINGS_TIMES, last),
            EW_PUMP_SETTINGS_LENGTH)]), (passed > 0) ? 0 : EW_PUMP_SETTINGS_DAY);
    ew_bool in_time = lateness <= settings->values[EW_PUMP_SETTINGS_GRACE];
    if (!jumped) {
        ew_pump_schedule_miss(settings, memory, ew_sub(ew_sub(slot, before), in_time ? 1 : 0));
    }
    if (in_time) {
        int64_t portion = ew_pump_settings_portion(settings, last);
        int64_t extra = ew_min(memory->values[EW_PUMP_MEMORY_DEBT], portion);
        memory->values[EW_PUMP_MEMORY_DEBT] = ew_sub(memory->values[EW_PUMP_MEMORY_DEBT], extra);
        memory->values[EW_PUMP_MEMORY_DUE] = ew_add(portion, extra);
        memory->values[EW_PUMP_MEMORY_DUE_SINCE] = ew_sub(memory->values[EW_PUMP_MEMORY_ACCRUED], lateness);
    }
}

static void ew_pump_schedule_miss_what_is_due(const ew_pump_settings *settings, ew_pump_memory *memory) {
    ew_pump_schedule_note(memory, 1);
    ew_pump_schedule_owe(settings, memory, memory->values[EW_PUMP_MEMORY_DUE]);
    memory->values[EW_PUMP_MEMORY_DUE] = 0;
}

static void ew_pump_schedule_miss(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t portions) {
    if (portions > 0 && settings->values[EW_PUMP_SETTINGS_DAILY] > 0) {
        ew_pump_schedule_note(memory, portions);
        ew_pump_schedule_owe(settings, memory, ew_mul(ew_min(portions, settings->values[EW_PUMP_SETTINGS_CATCH_UP]),
                ew_pump_schedule_usual_portion(settings)));
    }
}

static void ew_pump_schedule_note(ew_pump_memory *memory, int64_t portions) {
    memory->values[EW_PUMP_MEMORY_MISSED] = ew_min(ew_add(memory->values[EW_PUMP_MEMORY_MISSED], portions),
            EW_PUMP_MEMORY_LARGEST_TOTAL);
    memory->values[EW_PUMP_MEMORY_FLAGS] = memory->values[EW_PUMP_MEMORY_FLAGS] | EW_PUMP_PORTIONS_MISSED;
}

static void ew_pump_schedule_owe(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t volume) {
    memory->values[EW_PUMP_MEMORY_DEBT] = ew_min(ew_add(memory->values[EW_PUMP_MEMORY_DEBT], volume),
            ew_mul(settings->values[EW_PUMP_SETTINGS_CATCH_UP], ew_pump_schedule_usual_portion(settings)));
}

static int64_t ew_pump_schedule_usual_portion(const ew_pump_settings *settings) {
    return (settings->values[EW_PUMP_SETTINGS_PORTIONS] == 0) ? 0
            : ew_div(settings->values[EW_PUMP_SETTINGS_DAILY], settings->values[EW_PUMP_SETTINGS_PORTIONS]);
}

static void ew_pump_window_add(ew_pump_memory *memory, int64_t volume) {
    int64_t now = memory->values[EW_PUMP_MEMORY_ACCRUED];
    int32_t count = ew_to_int(memory->values[EW_PUMP_MEMORY_WINDOW_COUNT]);
    int32_t newest = ew_pump_window_place(memory, ew_sub_int(count, 1));
    if (count == 0 || ((memory->values[ew_at(ew_add_int(EW_PUMP_MEMORY_WINDOW_TIMES, newest),
            EW_PUMP_MEMORY_LENGTH)] / EW_PUMP_WINDOW_CELL) != (now / EW_PUMP_WINDOW_CELL)
            && count < EW_PUMP_MEMORY_WINDOW_SIZE)) {
        newest = ew_pump_window_place(memory, count);
        memory->values[EW_PUMP_MEMORY_WINDOW_COUNT] = ew_add(memory->values[EW_PUMP_MEMORY_WINDOW_COUNT], 1);
        memory->values[ew_at(ew_add_int(EW_PUMP_MEMORY_WINDOW_VOLUMES, newest), EW_PUMP_MEMORY_LENGTH)] = 0;
    }
    memory->values[ew_at(ew_add_int(EW_PUMP_MEMORY_WINDOW_TIMES, newest), EW_PUMP_MEMORY_LENGTH)] = now;
    memory->values[ew_at(ew_add_int(EW_PUMP_MEMORY_WINDOW_VOLUMES, newest),
            EW_PUMP_MEMORY_LENGTH)] = ew_add(memory->values[ew_at(ew_add_int(EW_PUMP_MEMORY_WINDOW_VOLUMES, newest),
            EW_PUMP_MEMORY_LENGTH)], volume);
    memory->values[EW_PUMP_MEMORY_WINDOW_SUM] = ew_add(memory->values[EW_PUMP_MEMORY_WINDOW_SUM], volume);
}

static void ew_pump_window_expire(ew_pump_memory *memory) {
    while (memory->values[EW_PUMP_MEMORY_WINDOW_COUNT] > 0
            && ew_sub(memory->values[EW_PUMP_MEMORY_ACCRUED],
            memory->values[ew_at(ew_add_int(EW_PUMP_MEMORY_WINDOW_TIMES,
            ew_to_int(memory->values[EW_PUMP_MEMORY_WINDOW_HEAD])), EW_PUMP_MEMORY_LENGTH)]) > EW_PUMP_WINDOW_LENGTH) {
        int32_t head = ew_to_int(memory->values[EW_PUMP_MEMORY_WINDOW_HEAD]);
        memory->values[EW_PUMP_MEMORY_WINDOW_SUM] = ew_sub(memory->values[EW_PUMP_MEMORY_WINDOW_SUM],
                memory->values[ew_at(ew_add_int(EW_PUMP_MEMORY_WINDOW_VOLUMES, head), EW_PUMP_MEMORY_LENGTH)]);
        memory->values[EW_PUMP_MEMORY_WINDOW_HEAD] = (head == (EW_PUMP_MEMORY_WINDOW_SIZE - 1)) ? 0
                : ew_add(head, INT64_C(1));
        memory->values[EW_PUMP_MEMORY_WINDOW_COUNT] = ew_sub(memory->values[EW_PUMP_MEMORY_WINDOW_COUNT], 1);
    }
}

static int32_t ew_pump_window_place(const ew_pump_memory *memory, int32_t index) {
    int32_t place = ew_add_int(ew_to_int(memory->values[EW_PUMP_MEMORY_WINDOW_HEAD]), index);
    return (place >= EW_PUMP_MEMORY_WINDOW_SIZE) ? ew_sub_int(place, EW_PUMP_MEMORY_WINDOW_SIZE)
            : ew_to_int(ew_max(place, 0));
}

static ew_bool ew_pump_window_is_usable(const ew_pump_memory *memory) {
    if (memory->values[EW_PUMP_MEMORY_WINDOW_HEAD] < 0
            || memory->values[EW_PUMP_MEMORY_WINDOW_HEAD] >= EW_PUMP_MEMORY_WINDOW_SIZE
            || memory->values[EW_PUMP_MEMORY_WINDOW_COUNT] < 0
            || memory->values[EW_PUMP_MEMORY_WINDOW_COUNT] > EW_PUMP_MEMORY_WINDOW_SIZE) {
        return 0;
    }
    int64_t sum = 0;
    int64_t before = 0;
    for (int32_t i = 0; i < memory->values[EW_PUMP_MEMORY_WINDOW_COUNT]; i++) {
        int64_t time = memory->values[ew_at(ew_add_int(EW_PUMP_MEMORY_WINDOW_TIMES, ew_pump_window_place(memory, i)),
                EW_PUMP_MEMORY_LENGTH)];
        int64_t volume = memory->values[ew_at(ew_add_int(EW_PUMP_MEMORY_WINDOW_VOLUMES, ew_pump_window_place(memory,
                i)), EW_PUMP_MEMORY_LENGTH)];
        if (time < before || time > memory->values[EW_PUMP_MEMORY_ACCRUED] || volume < 0
                || volume > ew_sub(EW_PUMP_MEMORY_LARGEST_TOTAL, sum)) {
            return 0;
        }
        before = time;
        sum = ew_add(sum, volume);
    }
    return sum == memory->values[EW_PUMP_MEMORY_WINDOW_SUM];
}

