/*
 * Evenwater for firmware: the states of a softener's valve and of a dosing pump.
 *
 * Generated from the Java of the library's kernel; do not edit. See README.md. Apache License 2.0.
 *
 * Every function answers with a status: the codes that its part states, 0 or more, or one of ew_common.h, below 0.
 * Nothing is allocated, nothing is kept between calls but what the structs hold.
 *
 * Initialise a valve's settings and state by their _init before anything else: a struct of zeros is no new one. Give a pump only
 * settings and a memory that ew_pump_start, ..._are_usable or ..._is_usable have accepted. With others no behaviour is undefined,
 * since all integers wrap around as in Java and all places stay inside their arrays; but answers mean nothing, and a call may
 * take very long.
 *
 * What these functions decide are wishes. They replace no safety of an appliance: no overflow protection, no end stop, no
 * limit on a pump that must not run.
 */
#ifndef EW_CONTROL_H
#define EW_CONTROL_H

#include "ew_common.h"

#ifdef __cplusplus
extern "C" {
#endif

/*
 * A block of whole numbers with a version before it and a checksum behind it, so that a save that was
 * cut off or mixed is seen.
 *
 * Layout: version, fingerprint of what the numbers belong to, the numbers, checksum: a 64-bit cyclic
 * redundancy check. A change of one number alone is always seen; a mixture of two saves is missed once
 * in 2^64. It is no proof against forgers. Keep two places and write them in turn: then one of them is
 * whole at any time.
 */

/* The block is whole and of the version and fingerprint asked for. */
#define EW_SAVE_WHOLE 0
/* The block has another length than the numbers need. */
#define EW_SAVE_WRONG_LENGTH 1
/* The block is of another version or kind. */
#define EW_SAVE_OTHER_VERSION 2
/* The checksum does not fit: the block is torn, mixed or damaged. */
#define EW_SAVE_TORN 3
/* The block is whole, but belongs to something with another fingerprint. */
#define EW_SAVE_OTHER_FINGERPRINT 4
/* Numbers that a block has besides its contents. */
#define EW_SAVE_OVERHEAD 3

/*
 * Returns the checksum of the first numbers of an array.
 *
 * numbers: any
 * count: how many of them; 0 to the length; less counts as 0
 * result: 64 bits
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_save_checksum(const int64_t *numbers, int32_t count, int64_t *result);

/*
 * Writes a block.
 *
 * version: of the layout, different for each kind of contents
 * fingerprint: of what the numbers belong to, such as a checksum of settings
 * numbers: contents
 * block: receives the block; as long as the contents and EW_SAVE_OVERHEAD more
 * returns: EW_SAVE_WHOLE or EW_SAVE_WRONG_LENGTH
 */
int32_t ew_save_write(int64_t version, int64_t fingerprint, const int64_t *numbers, int32_t numbers_length,
        int64_t *block, int32_t block_length);

/*
 * Reads a block.
 *
 * version: expected
 * fingerprint: expected
 * block: what was saved
 * numbers: receives the contents if the block is whole, also with another fingerprint; otherwise left
 * as they are
 * returns: EW_SAVE_WHOLE, or why not
 */
int32_t ew_save_read(int64_t version, int64_t fingerprint, const int64_t *block, int32_t block_length,
        int64_t *numbers, int32_t numbers_length);

/*
 * What the owner of a metered softener decides, as whole numbers: nanolitres (nL), seconds, counts.
 *
 * In nanolitres a tenth of a litre, a US gallon (3 785 411 784 nL), an imperial gallon and a cubic
 * foot are all whole. The limits are such that no sum of ew_valve can leave the range of a long.
 */

/* Volume of one pulse of the meter: 1 nL to 1000 L. */
#define EW_VALVE_SETTING_PULSE_NANOLITRES 0
/* Width of the meter's cumulative counter, which rolls over at 2 to this power: 8 to 32. */
#define EW_VALVE_SETTING_COUNTER_BITS 1
/* Largest flow that the meter can see, per second: 1 nL to 10 L. */
#define EW_VALVE_SETTING_LARGEST_FLOW_NANOLITRES_PER_SECOND 2
/* How much older a reading may be than the clock that comes with it, in seconds: 0 to one day. */
#define EW_VALVE_SETTING_READING_DELAY_SECONDS 3
/*
 * Longest time between two readings while the controller runs, in seconds; beyond, the clock was
 * changed: one minute to 30 days.
 */
#define EW_VALVE_SETTING_LONGEST_GAP_SECONDS 4
/*
 * How many refused readings that agree with each other make it certain that the meter was exchanged: 2
 * to 1000.
 */
#define EW_VALVE_SETTING_AGREEING_READINGS 5
/*
 * Time without a pulse after which the meter is called silent, in seconds; 0 for never, else to 1000
 * days.
 */
#define EW_VALVE_SETTING_SILENCE_SECONDS 6
/* Volume that a full regeneration gives, at the beginning: 1 nL to 1000 m^3. */
#define EW_VALVE_SETTING_CAPACITY_NANOLITRES 7
/* Reserve of the first week of learning, and a use that is never an outlier: 0 to 1000 m^3. */
#define EW_VALVE_SETTING_FIRST_RESERVE_NANOLITRES 8
/*
 * Reserve that the learned one does not go below: 0 to 1000 m^3; -1 for a quarter of the first
 * reserve.
 */
#define EW_VALVE_SETTING_LEAST_RESERVE_NANOLITRES 9
/*
 * With so much left or less a regeneration is due at once: 0 to 1000 m^3; -1 for never at once. To be
 * kept well below every capacity, or one regeneration follows the other at the shortest interval.
 */
#define EW_VALVE_SETTING_AT_ONCE_NANOLITRES 10
/*
 * Time of day when the night's window opens and a day of learning ends, in seconds after midnight:
 * below one day.
 */
#define EW_VALVE_SETTING_NIGHT_BEGINS_SECONDS 11
/* Length of the night's window, in seconds: one minute to one day. */
#define EW_VALVE_SETTING_NIGHT_LASTS_SECONDS 12
/* Age of a regeneration that is not to be passed, in seconds; 0 for none, else one to 1000 days. */
#define EW_VALVE_SETTING_LONGEST_AGE_SECONDS 13
/* Shortest time from the end of a regeneration, good or failed, to the next, in seconds: 0 to 30 days. */
#define EW_VALVE_SETTING_SHORTEST_INTERVAL_SECONDS 14
/*
 * Longest time that a regeneration takes; one that does not report its end counts as interrupted, in
 * seconds: one minute to one day.
 */
#define EW_VALVE_SETTING_LONGEST_REGENERATION_SECONDS 15
/*
 * After how many failed regenerations in a row none starts by itself until a person has seen to it: 1
 * to 1000.
 */
#define EW_VALVE_SETTING_MOST_FAILURES 16
/* How many there are. */
#define EW_VALVE_SETTING_VALUES 17

/*
 * The settings of a metered softener: one whole number for each ew_valve_setting, always within its
 * limits.
 *
 * Made once; the functions of ew_valve only read them. Not thread-safe while they are put.
 */

#define EW_VALVE_SETTINGS_COUNT 17

typedef struct {
    int64_t values[EW_VALVE_SETTINGS_COUNT];
} ew_valve_settings;

/*
 * Creates settings with their usual values.
 *
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_valve_settings_init(ew_valve_settings *settings);

/*
 * Puts a value, or leaves the one before if it is out of range.
 *
 * setting: which
 * value: in its unit
 * returns: EW_VALVE_OK, or EW_VALVE_BAD_INPUT if it is out of range
 */
int32_t ew_valve_settings_put(ew_valve_settings *settings, int32_t setting, int64_t value);

/*
 * Returns a value.
 *
 * setting: which
 * result: in its unit
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_valve_settings_value(const ew_valve_settings *settings, int32_t setting, int64_t *result);

/*
 * Returns a number that differs for other settings, so that a save tells under which it was made.
 *
 * result: a checksum of all values
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_valve_settings_fingerprint(const ew_valve_settings *settings, int64_t *result);

/*
 * The whole numbers of a ew_valve_state: nanolitres (nL), seconds, pulses, days, and 1 or 0 for yes or
 * no.
 */

/* Local wall clock of the last step, in seconds since 1970-01-01T00:00. */
#define EW_VALVE_COUNT_CLOCK 0
/* Last reading of the meter's counter that was believed. */
#define EW_VALVE_COUNT_READING 1
/* Seconds since that reading, as far as they are known. */
#define EW_VALVE_COUNT_SINCE_READING 2
/* What the clock showed when that reading came. */
#define EW_VALVE_COUNT_READING_CLOCK 3
/* Last reading that was refused. */
#define EW_VALVE_COUNT_REFUSED_READING 4
/* How many refused readings in a row agree with each other. */
#define EW_VALVE_COUNT_REFUSED_READINGS 5
/* Seconds since the last pulse. */
#define EW_VALVE_COUNT_WITHOUT_PULSE 6
/* Pulses since the beginning. */
#define EW_VALVE_COUNT_PULSES 7
/* Whether a regeneration is under way, so that what is drawn passes hard. */
#define EW_VALVE_COUNT_REGENERATING 8
/* Seconds that the regeneration under way has taken. */
#define EW_VALVE_COUNT_REGENERATING_FOR 9
/* Whether the salt is reported missing: 1, or 2 if it has been since the regeneration under way began. */
#define EW_VALVE_COUNT_SALT_MISSING 10
/* Whether the last regeneration failed or was interrupted. */
#define EW_VALVE_COUNT_FAILED 11
/* Seconds since the last good regeneration ended. */
#define EW_VALVE_COUNT_AGE 12
/* Seconds since the last regeneration ended, good or failed. */
#define EW_VALVE_COUNT_SINCE_END 13
/* Volume that the last good regeneration gave. */
#define EW_VALVE_COUNT_CAPACITY 14
/* What is left of it. */
#define EW_VALVE_COUNT_LEFT 15
/* Hard water drawn since it was exhausted. */
#define EW_VALVE_COUNT_OVERDRAWN 16
/* Softened on the day under way. */
#define EW_VALVE_COUNT_TODAY_SOFTENED 17
/* Passed hard during a regeneration on the day under way. */
#define EW_VALVE_COUNT_TODAY_BYPASSED 18
/* Passed hard through the exhausted resin on the day under way. */
#define EW_VALVE_COUNT_TODAY_EXHAUSTED 19
/* Softened since the beginning. */
#define EW_VALVE_COUNT_TOTAL_SOFTENED 20
/* Passed hard during regenerations since the beginning. */
#define EW_VALVE_COUNT_TOTAL_BYPASSED 21
/* Passed hard through the exhausted resin since the beginning. */
#define EW_VALVE_COUNT_TOTAL_EXHAUSTED 22
/* Whether the day under way has been seen from its start without a trouble of clock, power or meter. */
#define EW_VALVE_COUNT_WHOLE_DAY 23
/* Whether a holiday is declared. */
#define EW_VALVE_COUNT_HOLIDAY 24
/* Days that were learned from. */
#define EW_VALVE_COUNT_DAYS 25
/* Days of little use in a row. */
#define EW_VALVE_COUNT_LOW_DAYS 26
/* Failed regenerations in a row; see EW_VALVE_SETTING_MOST_FAILURES. */
#define EW_VALVE_COUNT_FAILURES 27
/*
 * Whether the last regeneration was taken as interrupted because it did not report its end, so that
 * its end may still come.
 */
#define EW_VALVE_COUNT_TIMED_OUT 28
/* Steps and events since the beginning: of two whole saves the newer one has more. */
#define EW_VALVE_COUNT_SEQUENCE 29
/* How many there are. */
#define EW_VALVE_COUNT_VALUES 30

/*
 * What a metered softener remembers: whole numbers for all that is counted, two doubles for the use
 * that was learned.
 *
 * Made once by the caller and changed in place by ew_valve, which allocates nothing. Not thread-safe.
 */

#define EW_VALVE_STATE_COUNT 30
#define EW_VALVE_STATE_LEARNED 2

typedef struct {
    int64_t counts[EW_VALVE_STATE_COUNT];
    double learned[EW_VALVE_STATE_LEARNED];
} ew_valve_state;

/*
 * Creates a state that knows nothing; ew_valve_begin comes next.
 *
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_valve_state_init(ew_valve_state *state);

/*
 * Tells whether another state has the same numbers, bit for bit.
 *
 * other: state
 * result: whether the two go on alike
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_valve_state_is_same_as(const ew_valve_state *state, const ew_valve_state *other, ew_bool *result);

/*
 * Returns one of the whole numbers.
 *
 * count: which
 * result: in its unit
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_valve_state_count(const ew_valve_state *state, int32_t count, int64_t *result);

/*
 * Returns the learned mean of a day's use, m of ew_valve_use.
 *
 * result: nL a day; 0 before the first day was learned
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_valve_state_mean_nanolitres_per_day(const ew_valve_state *state, double *result);

/*
 * Returns the learned mean deviation of a day's use, d of ew_valve_use.
 *
 * result: nL a day; 0 before the first day was learned
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_valve_state_deviation_nanolitres_per_day(const ew_valve_state *state, double *result);

/*
 * The state of a metered softener, step by step: the meter's reading and the clock go in, what was
 * used and what is left come out.
 *
 * Every function answers with bits: EW_VALVE_OK or what was noticed; never an exception, and never a
 * silent NaN. With one of EW_VALVE_BAD_INPUT, EW_VALVE_NOT_BEGUN and EW_VALVE_DOES_NOT_FIT the state
 * is as it was. Nothing is allocated. All that is counted is a whole number, so that ten million
 * pulses of 0.1 L are a million litres; only what is learned is double. Events of the valve are in
 * ew_valve, the decision in ew_valve_rule, saving in ew_valve_save.
 *
 * Clock. The caller gives local wall time in seconds since 1970-01-01T00:00. A difference from 0 to
 * the longest gap is time that has passed. Any other means that the clock was changed: the step
 * credits no time, and the day is not learned from. Its water counts if it can have flown in the time
 * that the clock shows: readings may have been missing. A ew_valve_restart credits a gap to 1000 days.
 * Daylight saving looks like one hour more in spring, and like a changed clock in autumn. A clock that
 * is put forward by less than the longest gap cannot be told from time that passed.
 *
 * Day. Days of learning run from the regeneration hour to the next, since that is what the reserve
 * must cover. Water belongs to the day in which its reading came. A day teaches if it began and ended
 * by steps over one regeneration hour each, with nothing wrong between.
 *
 * Left out: twin tanks, water that the valve itself uses behind the meter, resin that ages. A decision
 * is a wish: it replaces no safety of the appliance.
 */

/* Nothing to notice. */
#define EW_VALVE_OK 0
/* An argument was out of its range. */
#define EW_VALVE_BAD_INPUT 1
/* The state has not been begun. */
#define EW_VALVE_NOT_BEGUN 2
/* An event that cannot follow the state, such as the end of a regeneration that never started. */
#define EW_VALVE_DOES_NOT_FIT 4
/* The clock was changed: no time was credited. */
#define EW_VALVE_CLOCK_CHANGED 8
/*
 * More pulses than the largest flow lets pass, a small step back, or the same refused reading again:
 * not counted.
 */
#define EW_VALVE_READING_REFUSED 16
/*
 * Refused readings agree with each other: no reading counts until an exchange of the meter is
 * declared.
 */
#define EW_VALVE_METER_UNCLEAR 32
/* The counter may have rolled over once more than counted: the least volume was taken. */
#define EW_VALVE_ROLLOVER_AMBIGUOUS 64
/*
 * The regeneration never reported its end: taken as interrupted after the brine was drawn, with
 * nothing left.
 */
#define EW_VALVE_INTERRUPTED 128
/* A regeneration was reported finished while the salt was missing: taken as failed. */
#define EW_VALVE_WITHOUT_SALT 256
/* A day ended and was learned from. */
#define EW_VALVE_DAY_LEARNED 512
/* A day ended with no use or little. */
#define EW_VALVE_LOW_DAY 1024
/* A day ended with so much use that it was cut for learning. */
#define EW_VALVE_OUTLIER_DAY 2048
/* No pulse for too long: the meter is stuck, or nobody is there. Never during a declared holiday. */
#define EW_VALVE_METER_SILENT 4096
/* A total, of water or of pulses, has reached its limit and stands still; all else goes on. */
#define EW_VALVE_TOTALS_FULL 8192
/*
 * A regeneration that had been taken as interrupted reported its end after all: the capacity is
 * restored.
 */
#define EW_VALVE_FINISHED_LATE 16384
/*
 * The last believed reading again with the same time: a message that came twice, or a clock that
 * stands.
 */
#define EW_VALVE_REPEATED 32768
/*
 * More time than the longest gap since the step before: readings are missing, or the clock was put
 * forward.
 */
#define EW_VALVE_LONG_GAP 65536
/* Where totals stand still: 3e18 nL, three million cubic metres. */
#define EW_VALVE_FULL_NANOLITRES INT64_C(3000000000000000000)
/* Largest capacity of a regeneration: 1000 m^3 in nL. */
#define EW_VALVE_LARGEST_CAPACITY INT64_C(1000000000000000)
/* End of the year 9999 in seconds since 1970. */
#define EW_VALVE_LAST_CLOCK INT64_C(253402300799)

/*
 * Begins with a new state, in service.
 *
 * settings: of the softener
 * state: to be filled; what it was before is forgotten
 * reading: of the meter's counter; 0 to 2 to the power of its bits, less 1
 * clock: in seconds, see above; 0 to EW_VALVE_LAST_CLOCK
 * left_nanolitres: of the capacity of the settings; that capacity after a regeneration, 0 if nobody
 * knows
 * returns: EW_VALVE_OK or EW_VALVE_BAD_INPUT
 */
int32_t ew_valve_begin(const ew_valve_settings *settings, ew_valve_state *state, int64_t reading, int64_t clock,
        int64_t left_nanolitres);

/*
 * Takes a reading. Lost readings do no harm, since the counter is cumulative; a repeated one only
 * moves the clock and the count of steps.
 *
 * settings: of the softener
 * state: changed in place
 * reading: of the meter's counter; 0 to 2 to the power of its bits, less 1
 * clock: in seconds, see above; 0 to EW_VALVE_LAST_CLOCK
 * returns: what was noticed, as bits
 */
int32_t ew_valve_step(const ew_valve_settings *settings, ew_valve_state *state, int64_t reading, int64_t clock);

/*
 * Takes the first reading after the controller was without power.
 *
 * settings: of the softener
 * state: as restored; changed in place
 * reading: of the meter's counter; 0 to 2 to the power of its bits, less 1
 * clock: in seconds, see above; 0 to EW_VALVE_LAST_CLOCK
 * returns: what was noticed, as bits
 */
int32_t ew_valve_restart(const ew_valve_settings *settings, ew_valve_state *state, int64_t reading, int64_t clock);

/*
 * Reports that a regeneration has started: from now on water passes hard. While failures hold the
 * automatic start back, somebody started it by hand, and their row begins anew.
 *
 * settings: of the softener
 * state: changed in place
 * returns: OK, or DOES_NOT_FIT if one is under way
 */
int32_t ew_valve_started(const ew_valve_settings *settings, ew_valve_state *state);

/*
 * Reports that a regeneration went to its end. If the salt was missing when it started, and nobody
 * filled it in since, it counts as failed, and what was left stays; a run that uses up the last of the
 * salt is a good one. The end of a run that was taken as interrupted is believed too, once, while no
 * other has started: the valve says that it finished, and what was drawn before that was counted as
 * hard, as it passed.
 *
 * settings: of the softener
 * state: changed in place
 * capacity_nanolitres: that it gave, by the dose of salt; 1 to EW_VALVE_LARGEST_CAPACITY, and more
 * than what is left for a regeneration at once, or the next would follow at once
 * returns: OK, FINISHED_LATE, WITHOUT_SALT, BAD_INPUT, or DOES_NOT_FIT if none was under way
 */
int32_t ew_valve_finished(const ew_valve_settings *settings, ew_valve_state *state, int64_t capacity_nanolitres);

/*
 * Reports that a regeneration failed or was interrupted.
 *
 * state: changed in place
 * brine_drawn: whether brine had reached the resin, so that nobody knows what is left: nothing is
 * taken to be
 * returns: OK, or DOES_NOT_FIT if none was under way
 */
int32_t ew_valve_failed(ew_valve_state *state, ew_bool brine_drawn);

/*
 * Reports that a person has seen to the failed regenerations: their row begins anew, and the next may
 * start by itself.
 *
 * state: changed in place
 * returns: OK or NOT_BEGUN
 */
int32_t ew_valve_failures_acknowledged(ew_valve_state *state);

/*
 * Reports that the salt is missing, or was filled in.
 *
 * state: changed in place
 * missing: whether it is
 * returns: OK or NOT_BEGUN
 */
int32_t ew_valve_salt(ew_valve_state *state, ew_bool missing);

/*
 * Declares a holiday, or its end: its days, the first and the last included, teach nothing, and a
 * meter without pulses is no trouble. What is so already changes nothing.
 *
 * state: changed in place
 * away: whether nobody is there
 * returns: OK or NOT_BEGUN
 */
int32_t ew_valve_holiday(ew_valve_state *state, ew_bool away);

/*
 * Declares that the meter was exchanged or set back: its counter goes on from here, and the day is not
 * learned from. Water between the last believed reading and this one is lost to all counts: nobody
 * knows how much it was. So totals are too low, and what is left is too high by as much; where that
 * may matter, regenerate.
 *
 * settings: of the softener
 * state: changed in place
 * reading: of the new counter now
 * returns: OK, NOT_BEGUN or BAD_INPUT
 */
int32_t ew_valve_meter_exchanged(const ew_valve_settings *settings, ew_valve_state *state, int64_t reading);

/*
 * When a metered softener is to regenerate: not, at night, or at once; why, and what holds it back.
 *
 * Own rule, from what is common practice (no source):
 * - at once if no more than the settings' volume is left, where they allow it;
 * - at night if nothing is left, or less than the reserve;
 * - at night by the calendar if the last regeneration would pass the longest age before the night
 *   after: age at the opening of this window, or of the next one outside of it, + 1 day > longest age;
 * - held back while the salt is missing, or as many regenerations in a row have failed as the settings
 *   allow and nobody has acknowledged it or started one by hand (a run that fails each time would use
 *   salt and water every night), or the shortest interval since the last regeneration has not passed,
 *   or, of one that is due at night, until the window is open.
 *
 * Functions read a state and change nothing. While a regeneration is under way, no other is due.
 */

/* No regeneration is due. */
#define EW_VALVE_RULE_NOT_DUE 0
/* One is due in the night's window. */
#define EW_VALVE_RULE_AT_NIGHT 1
/* One is due at any time of day. */
#define EW_VALVE_RULE_AT_ONCE 2
/* The reason where none is due, and the hold where nothing holds. */
#define EW_VALVE_RULE_NONE 0
/* Nothing of the capacity is left. */
#define EW_VALVE_RULE_EXHAUSTED 1
/* No more than the settings' volume for a regeneration at once is left. */
#define EW_VALVE_RULE_NEARLY_EXHAUSTED 2
/* What is left does not cover the reserve. */
#define EW_VALVE_RULE_RESERVE 3
/* The last regeneration is too long ago. */
#define EW_VALVE_RULE_CALENDAR 4
/* Held back: no salt. */
#define EW_VALVE_RULE_HELD_BY_SALT 1
/* Held back: the last regeneration, good or failed, ended too short a time ago. */
#define EW_VALVE_RULE_HELD_BY_INTERVAL 2
/* Held back: the night's window is not open. */
#define EW_VALVE_RULE_HELD_FOR_NIGHT 3
/* Held back: too many regenerations in a row failed. */
#define EW_VALVE_RULE_HELD_BY_FAILURES 4

/*
 * Returns when a regeneration is due.
 *
 * settings: of the softener
 * state: after the last step
 * result: EW_VALVE_RULE_NOT_DUE, EW_VALVE_RULE_AT_NIGHT or EW_VALVE_RULE_AT_ONCE; NOT_DUE for a state
 * that has not begun
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_valve_rule_due(const ew_valve_settings *settings, const ew_valve_state *state, int32_t *result);

/*
 * Returns why a regeneration is due.
 *
 * settings: of the softener
 * state: after the last step
 * result: EW_VALVE_RULE_NONE, EW_VALVE_RULE_EXHAUSTED, EW_VALVE_RULE_NEARLY_EXHAUSTED,
 * EW_VALVE_RULE_RESERVE or EW_VALVE_RULE_CALENDAR: the first that is true
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_valve_rule_reason(const ew_valve_settings *settings, const ew_valve_state *state, int32_t *result);

/*
 * Returns what holds a regeneration back that is due.
 *
 * settings: of the softener
 * state: after the last step
 * result: EW_VALVE_RULE_NONE, EW_VALVE_RULE_HELD_BY_SALT, EW_VALVE_RULE_HELD_BY_FAILURES,
 * EW_VALVE_RULE_HELD_BY_INTERVAL or EW_VALVE_RULE_HELD_FOR_NIGHT: the first that is true
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_valve_rule_hold(const ew_valve_settings *settings, const ew_valve_state *state, int32_t *result);

/*
 * Tells whether the valve is to start now.
 *
 * settings: of the softener
 * state: after the last step
 * result: whether a regeneration is due and nothing holds it back
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_valve_rule_is_to_start(const ew_valve_settings *settings, const ew_valve_state *state, ew_bool *result);

/*
 * A ew_valve_state as plain whole numbers that survive a power cut, and back.
 *
 * A block of ew_save: version, fingerprint of the settings, the counts, the bits of the learned
 * doubles, checksum. Keep two places and write them in turn: then one of them is whole at any time,
 * and EW_VALVE_COUNT_SEQUENCE tells which is newer.
 */

/* The save was read. */
#define EW_VALVE_SAVE_OK 0
/* Too few or too many numbers. */
#define EW_VALVE_SAVE_WRONG_LENGTH 1
/* Made by another version, or no save of a softener at all. */
#define EW_VALVE_SAVE_OTHER_VERSION 2
/* The check does not fit: the save is torn or damaged. */
#define EW_VALVE_SAVE_TORN 3
/* Made under other settings. */
#define EW_VALVE_SAVE_OTHER_SETTINGS 4
/* A number is out of its range, although the check fits. */
#define EW_VALVE_SAVE_OUT_OF_RANGE 5
/* Kind ("vlve" in ASCII) and version of the layout and of the meaning of its numbers. */
#define EW_VALVE_SAVE_VERSION INT64_C(8533325570124021761)
/* How many numbers a save has. */
#define EW_VALVE_SAVE_LENGTH 35

/*
 * Writes a state.
 *
 * settings: under which it runs
 * state: to be saved; has begun
 * save: receives EW_VALVE_SAVE_LENGTH numbers
 * returns: EW_VALVE_SAVE_OK; EW_VALVE_SAVE_WRONG_LENGTH if it does not have room for exactly these;
 * EW_VALVE_SAVE_OUT_OF_RANGE if the state has not begun; then nothing is written
 */
int32_t ew_valve_save_write(const ew_valve_settings *settings, const ew_valve_state *state, int64_t *save,
        int32_t save_length);

/*
 * Reads a state that was saved under the same settings.
 *
 * settings: under which it goes on
 * state: receives the numbers; as it was if the save cannot be used
 * save: as written
 * returns: EW_VALVE_SAVE_OK or why it cannot be used
 */
int32_t ew_valve_save_read(const ew_valve_settings *settings, ew_valve_state *state, const int64_t *save,
        int32_t save_length);

/*
 * Reads a state under settings that were changed on purpose. Volumes stay as they are; the day under
 * way is not learned from, and the pulses of before keep the volume that they had.
 *
 * settings: under which it goes on
 * state: receives the numbers; as it was if the save cannot be used
 * save: as written under any settings
 * returns: EW_VALVE_SAVE_OK or why it cannot be used; EW_VALVE_SAVE_OUT_OF_RANGE also if the reading
 * is too large for the counter of these settings
 */
int32_t ew_valve_save_read_under_new_settings(const ew_valve_settings *settings, ew_valve_state *state,
        const int64_t *save, int32_t save_length);

/*
 * How a softener learns what a household uses in a day, and what it keeps in reserve for the next one.
 *
 * Own rule. With m the mean and d the mean absolute deviation so far, u the use of the n-th day that
 * teaches, and F the first reserve, which the owner states:
 * - a day without any use teaches nothing: nobody was there, or the meter is stuck;
 * - first day: m = u, d = u / 4;
 * - after seven days, a day of little use, u < 0.2 m, teaches nothing either, unless 14 such days in a
 *   row came before it (days without any use are left out of the row): then it teaches slowly, since a
 *   dripping tap of an empty house looks like a household that has shrunk;
 * - after seven days, an outlier is cut: u' = min(u, max(F, m + 3 max(d, 0.1 m))), before that u' = u;
 *   up to F no use is an outlier, so that a mean that fell too low recovers within days;
 * - a = 1/32 for a low day that teaches, else a = max(1/8, 1/n); then m' = m + a (u' - m) and d' = d +
 *   a (|u' - m| - d).
 *
 * The reserve for the next day is
 * - max(F, m + 2 d) until seven days were learned, as the first of them may be anything;
 * - max(floor, m + 2 d) from then on, the floor being the least reserve, or F / 4 if none was stated.
 *
 * The first week is a plain mean, whatever its first day was like. Of a normally distributed use,
 * whose mean absolute deviation is 0.8 standard deviations, m + 2 d covers some 94 days of 100. With F
 * no larger than m, a use of d = 0.08 m that trebles for good is covered after 9 days, one that grows
 * tenfold after 16; a week of a burst pipe at 200 m raises the mean by half, not a hundredfold. A
 * household that shrinks to an eighth for good needs 14 days, 20 slow ones and some weeks at the usual
 * pace.
 */

/*
 * Returns what is to be left at the regeneration hour so that the next day is covered.
 *
 * settings: first and least reserve
 * state: what was learned
 * result: nL; see above, rounded up; never above the capacity
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_valve_use_reserve_nanolitres(const ew_valve_settings *settings, const ew_valve_state *state,
        int64_t *result);

/*
 * Places of the settings of a dosing pump in an array of whole numbers; volumes in picolitres (10^-12
 * L), times in seconds.
 *
 * Picolitres, since a fine pump moves some hundred nanolitres with a step, and a step that is rounded
 * to nanolitres would be some 0.3 % off; a long holds 9 million litres of them.
 */

/*
 * Most stock that may get into the tank in any 24 hours and on any calendar day; 1 to
 * EW_PUMP_SETTINGS_LARGEST_CAP.
 */
#define EW_PUMP_SETTINGS_CAP 0
/* Stock that the schedule gives a day; 0 to the cap. */
#define EW_PUMP_SETTINGS_DAILY 1
/* Portions a day; 0 without a schedule, to EW_PUMP_SETTINGS_MOST_PORTIONS. */
#define EW_PUMP_SETTINGS_PORTIONS 2
/* Stock for each litre of water that is added; 0 to EW_PUMP_SETTINGS_LARGEST_PER_LITRE. */
#define EW_PUMP_SETTINGS_PER_LITRE 3
/* How many missed portions are made up at most; 0 to skip all, to EW_PUMP_SETTINGS_MOST_PORTIONS. */
#define EW_PUMP_SETTINGS_CATCH_UP 4
/* How late a portion may be before it counts as missed; 60 to 86 400. */
#define EW_PUMP_SETTINGS_GRACE 5
/* What a full reservoir holds; 1 to EW_PUMP_SETTINGS_LARGEST_RESERVOIR. */
#define EW_PUMP_SETTINGS_RESERVOIR 6
/* What stays in the reservoir below the intake; 0 to less than the reservoir. */
#define EW_PUMP_SETTINGS_UNUSABLE 7
/* What fills the tube, and the most that one priming may move; 0 to EW_PUMP_SETTINGS_LARGEST_CAP. */
#define EW_PUMP_SETTINGS_TUBE 8
/* Days of use below which the reservoir is low; 0 to 366. */
#define EW_PUMP_SETTINGS_LOW_DAYS 9
/* Thousandths by which a new calibration may differ before it is noted; 1 to 1000. */
#define EW_PUMP_SETTINGS_DRIFT_PER_MILLE 10
/* How long the end of a run may be awaited, besides the run itself; 1 to 86 400. */
#define EW_PUMP_SETTINGS_CONFIRM_WITHIN 11
/* Milliseconds that a step takes, 0 if unknown; to 1000. */
#define EW_PUMP_SETTINGS_MILLISECONDS_PER_STEP 12
/* First of the times of day of the portions, rising, each 0 to 86 399; the rest 0. */
#define EW_PUMP_SETTINGS_TIMES 13
/* Portions a day at most. */
#define EW_PUMP_SETTINGS_MOST_PORTIONS 24
/* Numbers of the settings. */
#define EW_PUMP_SETTINGS_LENGTH 37
/* 100 L. */
#define EW_PUMP_SETTINGS_LARGEST_CAP INT64_C(100000000000000)
/* 1000 L. */
#define EW_PUMP_SETTINGS_LARGEST_RESERVOIR INT64_C(1000000000000000)
/* 100 mL of stock for each litre. */
#define EW_PUMP_SETTINGS_LARGEST_PER_LITRE INT64_C(100000000000)

typedef struct {
    int64_t values[EW_PUMP_SETTINGS_LENGTH];
} ew_pump_settings;

/*
 * Tells whether settings are in the ranges that the places state.
 *
 * settings: settings
 * result: true if ew_pump can work with them
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_pump_settings_are_usable(const ew_pump_settings *settings, ew_bool *result);

/*
 * Places of what a dosing pump remembers in an array of whole numbers; volumes in picolitres (10^-12
 * L), times in seconds.
 *
 * ew_pump_start fills it, events of the ew_pump change it in place. To keep it over a loss of power,
 * write it with ew_save and check with ew_pump_memory_is_usable what was read.
 */

/* Version of this layout for ew_save. */
#define EW_PUMP_MEMORY_VERSION INT64_C(8103503432326840322)
/* What one step moves; 1 to EW_PUMP_MEMORY_LARGEST_STEP. */
#define EW_PUMP_MEMORY_STEP 0
/* Wall clock at the last event, since 1970-01-01T00:00 local time. */
#define EW_PUMP_MEMORY_LOCAL 1
/* Uptime up to which time was credited. */
#define EW_PUMP_MEMORY_UPTIME 2
/* Time that has certainly passed since the start; never more than the true one. */
#define EW_PUMP_MEMORY_ACCRUED 3
/* Calendar day, days since 1970-01-01. */
#define EW_PUMP_MEMORY_DAY 4
/* Stock into the tank on this calendar day. */
#define EW_PUMP_MEMORY_GIVEN_TODAY 5
/*
 * The last portion of the schedule that was looked at or let go, as day * portions + place; -1 before
 * the first of all.
 */
#define EW_PUMP_MEMORY_SLOT 6
/* What the schedule wants and did not get yet. */
#define EW_PUMP_MEMORY_DUE 7
/* Accrued time at which it was due; may be negative. */
#define EW_PUMP_MEMORY_DUE_SINCE 8
/* What added water wants and did not get yet. */
#define EW_PUMP_MEMORY_OWED 9
/* What was wanted and is less than a step, carried to the next run. */
#define EW_PUMP_MEMORY_CARRY 10
/* Missed stock that later portions shall make up. */
#define EW_PUMP_MEMORY_DEBT 11
/* Rest of the last multiplication for added water, in 10^-6 pL. */
#define EW_PUMP_MEMORY_WATER_REST 12
/* Steps of the run under way; 0 if none is. */
#define EW_PUMP_MEMORY_PENDING 13
/* What the run under way is for: one of the purposes of ew_pump. */
#define EW_PUMP_MEMORY_PURPOSE 14
/* Accrued time at which it was ordered. */
#define EW_PUMP_MEMORY_PENDING_SINCE 15
/* Sum of ew_pump's flags. */
#define EW_PUMP_MEMORY_FLAGS 16
/* What is in the reservoir. */
#define EW_PUMP_MEMORY_LEVEL 17
/* All that was ever in it: level + dosed + primed. */
#define EW_PUMP_MEMORY_FILLED 18
/* All that went into the tank. */
#define EW_PUMP_MEMORY_DOSED 19
/* All that priming moved to elsewhere. */
#define EW_PUMP_MEMORY_PRIMED 20
/* What priming moved since it became necessary. */
#define EW_PUMP_MEMORY_PRIMED_SINCE 21
/* Portions that were missed, in whole or in part. */
#define EW_PUMP_MEMORY_MISSED 22
/* 1 if the clock was set forward since the schedule was last looked at. */
#define EW_PUMP_MEMORY_JUMPED 23
/* Sum of the window of 24 hours. */
#define EW_PUMP_MEMORY_WINDOW_SUM 24
/*
 * Number of the run ordered last, which is the one under way if any is; 0 before the first, and
 * growing with each.
 */
#define EW_PUMP_MEMORY_RUN 25
/*
 * What runs into the tank were reported short of their order, and believed, on the day
 * EW_PUMP_MEMORY_SHORT_DAY.
 */
#define EW_PUMP_MEMORY_SHORT 26
/* Day of accrued time. */
#define EW_PUMP_MEMORY_SHORT_DAY 27
/* Number of the last event that was taken; grows, so that of two whole saves the newer is told by it. */
#define EW_PUMP_MEMORY_SEQUENCE 28
/* Numbers of the memory. */
#define EW_PUMP_MEMORY_LENGTH 132
/* 10 mL. */
#define EW_PUMP_MEMORY_LARGEST_STEP INT64_C(10000000000)
/* Last second of the year 9999; also the longest uptime. */
#define EW_PUMP_MEMORY_LATEST INT64_C(253402300799)

typedef struct {
    int64_t values[EW_PUMP_MEMORY_LENGTH];
} ew_pump_memory;

/*
 * Tells whether a memory is one that events can have made, as far as its numbers show.
 *
 * memory: memory, for example as read from a save
 * result: true if ew_pump can work with it
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_pump_memory_is_usable(const ew_pump_memory *memory, ew_bool *result);

/*
 * Runs of a dosing pump: what to do at a tick of the clock, and what becomes of a run.
 *
 * Settings s lie in the places of ew_pump_settings, memory m in those of ew_pump_memory; it changes in
 * place. A run is ordered by EW_PUMP_RUN: save the memory, then let the pump make m[PENDING] steps,
 * then report by ew_pump_dosed with the number of the run, m[RUN]. A run whose end nobody reports
 * counts as made in full.
 *
 * Clocks. local is the wall clock in seconds since 1970-01-01T00:00 local time; it may be set at will.
 * uptime is a count of whole seconds that only rises while the processor runs (no wall clock). Both 0
 * to EW_PUMP_MEMORY_LATEST.
 *
 * The cap. Within any 24 hours of true time, ordered runs move no more than the cap into the tank,
 * whatever the wall clock says, if:
 * - the uptime, and the time certainly off that ew_pump_restarted is told, never run ahead of the true
 *   time;
 * - a run moves no more than its steps, a step no more than its calibration, and the pump has stopped
 *   when the end of the run is reported, when it counts as made in full for want of a report, and when
 *   settings change or the processor starts again;
 * - fewer steps than ordered are reported only if no more were made;
 * - the memory is saved before each run and not lost, and ew_pump_start is told what went into the
 *   tank in the 24 hours before;
 * - the cap of the settings was the same for those 24 hours.
 *
 * If reports of fewer steps are false, no more than three times the cap flows: of what runs were
 * reported short, no more than one cap is believed on a day of accrued time, and beyond it they count
 * as made in full; own rule. What flows without an order counts, but nothing can hold it back. On a
 * calendar day the cap holds under the same conditions, as long as the wall clock is not set.
 *
 * Functions never throw on arrays of the right length whose contents ew_pump_start made or
 * ew_pump_memory_is_usable accepted, and allocate nothing. EW_PUMP_BAD_INPUT leaves the memory as it
 * was; a memory that was never started, all zeros, is answered with it.
 */

/* The event was taken. */
#define EW_PUMP_DONE 0
/* Nothing is due. */
#define EW_PUMP_NOTHING_DUE 1
/* Make m[PENDING] steps now. */
#define EW_PUMP_RUN 2
/* A run is under way; its end was not reported yet. */
#define EW_PUMP_AWAITING 3
/* Stopped by a person. */
#define EW_PUMP_STOPPED 4
/* Stopped since a run failed. */
#define EW_PUMP_STOPPED_BY_FAILURE 5
/* The cap leaves less than a step, or less than was asked for by hand. */
#define EW_PUMP_HELD_BY_CAP 6
/* There may be air in the tube. */
#define EW_PUMP_UNPRIMED 7
/* The reservoir holds less than a step above the intake, or less than was asked for by hand. */
#define EW_PUMP_EMPTY 8
/* Less than a step was asked for. */
#define EW_PUMP_TOO_SMALL 9
/* More was asked for than one event may bring. */
#define EW_PUMP_TOO_MUCH 10
/* A number is out of range; nothing has changed. */
#define EW_PUMP_BAD_INPUT 11
/* A report is of another run than the one under way; nothing has changed. */
#define EW_PUMP_OTHER_RUN 12
/* Flag: a run whose end nobody reported was counted in full. */
#define EW_PUMP_UNCONFIRMED INT64_C(1)
/* Flag: a run failed; nothing runs until ew_pump_resumed. */
#define EW_PUMP_FAILED INT64_C(2)
/* Flag: a person stopped the pump. */
#define EW_PUMP_PAUSED INT64_C(4)
/* Flag: there may be air in the tube. */
#define EW_PUMP_PRIMING_NEEDED INT64_C(8)
/* Flag: the reservoir is empty until it is declared refilled. */
#define EW_PUMP_RESERVOIR_EMPTY INT64_C(16)
/* Flag: the wall clock was set, or ran away by more than two minutes. */
#define EW_PUMP_CLOCK_CHANGED INT64_C(32)
/* Flag: the pump moved more than was ordered, or something that nobody ordered. */
#define EW_PUMP_OVERRUN INT64_C(64)
/* Flag: a calibration differs from the one before by more than the settings allow. */
#define EW_PUMP_CALIBRATION_DRIFTED INT64_C(128)
/* Flag: portions were missed. */
#define EW_PUMP_PORTIONS_MISSED INT64_C(256)
/*
 * Flag: runs were reported short by more than the cap in a day, so the last of them count as made in
 * full.
 */
#define EW_PUMP_SHORT_RUNS INT64_C(512)
/* Flags that are news, which ew_pump_acknowledged takes away; the others are conditions. */
#define EW_PUMP_NEWS INT64_C(993)
/* Purpose: there is no run. */
#define EW_PUMP_NO_RUN 0
/* Purpose: portions of the schedule and doses for added water. */
#define EW_PUMP_DOSE 1
/* Purpose: a dose asked for by a person. */
#define EW_PUMP_DOSE_BY_HAND 2
/* Purpose: filling the tube, its end outside the tank. */
#define EW_PUMP_PRIMING 3
/* Purpose: filling the tube, its end in the tank; counts as dose. */
#define EW_PUMP_PRIMING_INTO_TANK 4

/*
 * Fills a memory for a pump that begins: with air in its tube, and today's portions so far left out.
 *
 * settings: settings
 * memory: receives the memory
 * local: wall clock in s
 * uptime: in s
 * picolitres_per_step: calibration in pL; 1 to EW_PUMP_MEMORY_LARGEST_STEP
 * level: what the reservoir holds in pL; 0 to what it can
 * given_before: what may have got into the tank in the last 24 hours in pL, for a memory that was
 * lost; 0 to the cap
 * returns: EW_PUMP_DONE or EW_PUMP_BAD_INPUT
 */
int32_t ew_pump_start(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t local, int64_t uptime,
        int64_t picolitres_per_step, int64_t level, int64_t given_before);

/*
 * Tells a memory that the processor has started again. A run that was under way counts as made in
 * full.
 *
 * settings: settings
 * memory: memory
 * local: wall clock in s
 * uptime: in s, counted anew
 * seconds_off: for how long the power was certainly off in s; 0 if only the wall clock says so
 * returns: EW_PUMP_DONE or EW_PUMP_BAD_INPUT
 */
int32_t ew_pump_restarted(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t local, int64_t uptime,
        int64_t seconds_off);

/*
 * Decides what to do now. Call it every few seconds to minutes. A run that cap or reservoir do not
 * allow in full is cut to what they allow; the rest stays due. The reservoir is empty when less than a
 * step is left above the intake, and by an own rule the tube is to be primed then, since a level that
 * is counted may be a little off.
 *
 * settings: settings
 * memory: memory
 * local: wall clock in s
 * uptime: in s
 * returns: EW_PUMP_RUN, EW_PUMP_NOTHING_DUE, or why what is due waits
 */
int32_t ew_pump_tick(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t local, int64_t uptime);

/*
 * Orders a dose that a person asks for: all of it now, or nothing.
 *
 * settings: settings
 * memory: memory
 * volume: in pL; 1 to EW_PUMP_SETTINGS_LARGEST_CAP
 * local: wall clock in s
 * uptime: in s
 * returns: EW_PUMP_RUN or why not
 */
int32_t ew_pump_dose_by_hand(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t volume, int64_t local,
        int64_t uptime);

/*
 * Orders a run that fills the tube. What it moves comes from the reservoir.
 *
 * settings: settings
 * memory: memory
 * volume: in pL; 1 to what the tube holds by the settings
 * into_tank: whether the end of the tube is in the tank, so that it counts as dose, under the cap
 * local: wall clock in s
 * uptime: in s
 * returns: EW_PUMP_RUN or why not
 */
int32_t ew_pump_prime(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t volume, ew_bool into_tank,
        int64_t local, int64_t uptime);

/*
 * Takes the report that a run has ended. Fewer steps than ordered leave the rest of a portion due;
 * more are counted and flagged: what is in the tank is in the tank. A repeated report, and one that
 * comes when the run has been counted in full for want of it, are of another run and change nothing;
 * so is one with a number larger than any ordered, which shows that the memory is older than the pump:
 * start anew with the cap spent. A run that is found cut by a restart at this very event counts in
 * full.
 *
 * settings: settings
 * memory: memory
 * run: number of the run; 1 or more
 * steps: made; 0 or more, 1000 L at most
 * local: wall clock in s
 * uptime: in s
 * returns: EW_PUMP_DONE, EW_PUMP_OTHER_RUN, or EW_PUMP_BAD_INPUT, also if the totals are full after 4
 * million litres
 */
int32_t ew_pump_dosed(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t run, int64_t steps,
        int64_t local, int64_t uptime);

/*
 * Takes the report that a run failed. It counts as made in full, and nothing runs until a person
 * resumes. A failure of the run ordered last stops the pump also when its end was counted before; of
 * an older one it changes nothing.
 *
 * settings: settings
 * memory: memory
 * run: number of the run; 1 or more
 * local: wall clock in s
 * uptime: in s
 * returns: EW_PUMP_DONE, EW_PUMP_OTHER_RUN or EW_PUMP_BAD_INPUT
 */
int32_t ew_pump_failed(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t run, int64_t local,
        int64_t uptime);

/*
 * Tells that water was added, so that its share of stock is owed; what is less than a picolitre is
 * carried on.
 *
 * settings: settings
 * memory: memory
 * microlitres: of water; 1 to 10 m^3
 * returns: EW_PUMP_DONE, EW_PUMP_TOO_MUCH if more than the cap of a day would be owed (then nothing
 * is), or EW_PUMP_BAD_INPUT
 */
int32_t ew_pump_water_added(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t microlitres);

/*
 * Tells what the reservoir holds, after refilling or measuring it. Air that may be in the tube stays a
 * reason to prime.
 *
 * settings: settings
 * memory: memory
 * level: in pL; 0 to what the reservoir can hold
 * returns: EW_PUMP_DONE, EW_PUMP_AWAITING during a run, or EW_PUMP_BAD_INPUT
 */
int32_t ew_pump_refilled(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t level);

/*
 * Tells a new calibration. What was counted stays counted.
 *
 * settings: settings
 * memory: memory
 * picolitres_per_step: in pL; 1 to EW_PUMP_MEMORY_LARGEST_STEP
 * returns: EW_PUMP_DONE, EW_PUMP_AWAITING during a run, or EW_PUMP_BAD_INPUT
 */
int32_t ew_pump_calibrated(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t picolitres_per_step);

/*
 * Tells that the tube is full of liquid to its end, as seen by a person.
 *
 * memory: memory
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_pump_tube_seen_full(ew_pump_memory *memory);

/*
 * Tells that there may be air in the tube.
 *
 * memory: memory
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_pump_tube_drained(ew_pump_memory *memory);

/*
 * Stops the pump: portions that pass are let go and not made up. What added water is owed stays.
 *
 * memory: memory
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_pump_paused(ew_pump_memory *memory);

/*
 * Lets the pump go on after a pause or a failure, with the first portion after now.
 *
 * settings: settings
 * memory: memory
 * local: wall clock in s
 * uptime: in s
 * returns: EW_PUMP_DONE or EW_PUMP_BAD_INPUT
 */
int32_t ew_pump_resumed(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t local, int64_t uptime);

/*
 * Counts steps that nobody ordered, such as by a button on the pump, as a dose and flags them. A run
 * under way stays so.
 *
 * settings: settings
 * memory: memory
 * steps: made; 0 or more, 1000 L at most
 * local: wall clock in s
 * uptime: in s
 * returns: EW_PUMP_DONE or EW_PUMP_BAD_INPUT, also if the totals are full after 4 million litres
 */
int32_t ew_pump_dosed_unordered(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t steps, int64_t local,
        int64_t uptime);

/*
 * Takes news away that a person has read.
 *
 * memory: memory
 * flags: sum of flags; those that are conditions stay
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_pump_acknowledged(ew_pump_memory *memory, int64_t flags);

/*
 * Takes other settings over, and the calibration that belongs to them: a run under way counts as made
 * in full by the old one, now, so the pump must have stopped; what is due or missed by the old
 * schedule is dropped, what was counted stays. The new schedule holds from now on.
 *
 * settings: new settings
 * memory: memory
 * picolitres_per_step: in pL; 1 to EW_PUMP_MEMORY_LARGEST_STEP
 * local: wall clock in s
 * uptime: in s
 * returns: EW_PUMP_DONE, or EW_PUMP_BAD_INPUT if settings, calibration or clocks are unusable, or the
 * reservoir of the new ones could not hold what is in it
 */
int32_t ew_pump_settings_changed(const ew_pump_settings *settings, ew_pump_memory *memory, int64_t picolitres_per_step,
        int64_t local, int64_t uptime);

/*
 * Returns what may still get into the tank now.
 *
 * settings: settings
 * memory: memory, as of its last event with clocks
 * result: volume in pL; 0 or more
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_pump_allowed(const ew_pump_settings *settings, const ew_pump_memory *memory, int64_t *result);

/*
 * Returns what the intake can still reach.
 *
 * settings: settings
 * memory: memory
 * result: volume in pL; 0 or more
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_pump_usable(const ew_pump_settings *settings, const ew_pump_memory *memory, int64_t *result);

/*
 * Returns the use of a day: the dose of the schedule, or what the last 24 hours took if that is more.
 *
 * settings: settings
 * memory: memory
 * result: volume in pL; 0 if nothing is used
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_pump_daily_use(const ew_pump_settings *settings, const ew_pump_memory *memory, int64_t *result);

/*
 * Tells whether the reservoir lasts for fewer days than the settings want to be warned of.
 *
 * settings: settings
 * memory: memory
 * result: true if it is low
 * returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written
 */
int32_t ew_pump_is_low(const ew_pump_settings *settings, const ew_pump_memory *memory, ew_bool *result);

#ifdef __cplusplus
}
#endif

#endif
