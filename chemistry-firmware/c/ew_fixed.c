/*
 * Evenwater for firmware: scales, sodium and compensation in fixed point.
 *
 * Generated from the library's core; do not edit. See README.md. Apache License 2.0.
 */
#include "ew_fixed.h"

/* A fraction near the exact factor; both numbers are whole and above 0. */
typedef struct {
    int32_t numerator;
    int32_t denominator;
} ew_fraction;

/* From the unit of the row to that of the column. */
static const ew_fraction ew_fixed_hardness_factors[EW_HARDNESS_UNITS * EW_HARDNESS_UNITS] = {
    /* millimole per litre */
    {1, 1}, {1, 1}, {2, 1},
    {50043, 500}, {56077, 1000}, {56077, 10000},
    {50043, 5000}, {1334259710, 190018861}, {2032309466, 347593045},
    /* mole per cubic metre */
    {1, 1}, {1, 1}, {2, 1},
    {50043, 500}, {56077, 1000}, {56077, 10000},
    {50043, 5000}, {1334259710, 190018861}, {2032309466, 347593045},
    /* milliequivalent per litre */
    {1, 2}, {1, 2}, {1, 1},
    {50043, 1000}, {56077, 2000}, {56077, 20000},
    {50043, 10000}, {667129855, 190018861}, {1016154733, 347593045},
    /* milligram per litre calcium carbonate */
    {500, 50043}, {500, 50043}, {1000, 50043},
    {1, 1}, {8011, 14298}, {8011, 142980},
    {1, 10}, {454609, 6479891}, {43016043, 736351250},
    /* milligram per litre calcium oxide */
    {1000, 56077}, {1000, 56077}, {2000, 56077},
    {14298, 8011}, {1, 1}, {1, 10},
    {7149, 40055}, {102344257, 817343452}, {73239604, 702444469},
    /* german degree */
    {10000, 56077}, {10000, 56077}, {20000, 56077},
    {142980, 8011}, {10, 1}, {1, 1},
    {14298, 8011}, {1842522101, 1471478145}, {1640278098, 1573198399},
    /* french degree */
    {5000, 50043}, {5000, 50043}, {10000, 50043},
    {10, 1}, {40055, 7149}, {8011, 14298},
    {1, 1}, {4546090, 6479891}, {43016043, 73635125},
    /* english degree */
    {190018861, 1334259710}, {190018861, 1334259710}, {190018861, 667129855},
    {6479891, 454609}, {817343452, 102344257}, {1471478145, 1842522101},
    {6479891, 4546090}, {1, 1}, {473176473, 568261250},
    /* grain per us gallon */
    {347593045, 2032309466}, {347593045, 2032309466}, {347593045, 1016154733},
    {736351250, 43016043}, {702444469, 73239604}, {1573198399, 1640278098},
    {73635125, 43016043}, {568261250, 473176473}, {1, 1},
};

/* From the unit of the row to that of the column. */
static const ew_fraction ew_fixed_alkalinity_factors[EW_ALKALINITY_UNITS * EW_ALKALINITY_UNITS] = {
    /* milliequivalent per litre */
    {1, 1}, {1, 1}, {50043, 1000},
    {7627, 125}, {56077, 20000}, {50043, 10000},
    {667129855, 190018861}, {1016154733, 347593045},
    /* millimole per litre */
    {1, 1}, {1, 1}, {50043, 1000},
    {7627, 125}, {56077, 20000}, {50043, 10000},
    {667129855, 190018861}, {1016154733, 347593045},
    /* milligram per litre calcium carbonate */
    {1000, 50043}, {1000, 50043}, {1, 1},
    {61016, 50043}, {8011, 142980}, {1, 10},
    {454609, 6479891}, {43016043, 736351250},
    /* milligram per litre bicarbonate */
    {125, 7627}, {125, 7627}, {50043, 61016},
    {1, 1}, {56077, 1220320}, {50043, 610160},
    {31663795, 550291789}, {27521688, 574420637},
    /* degree of carbonate hardness */
    {20000, 56077}, {20000, 56077}, {142980, 8011},
    {1220320, 56077}, {1, 1}, {14298, 8011},
    {1842522101, 1471478145}, {1640278098, 1573198399},
    /* french degree */
    {10000, 50043}, {10000, 50043}, {10, 1},
    {610160, 50043}, {8011, 14298}, {1, 1},
    {4546090, 6479891}, {43016043, 73635125},
    /* english degree */
    {190018861, 667129855}, {190018861, 667129855}, {6479891, 454609},
    {550291789, 31663795}, {1471478145, 1842522101}, {6479891, 4546090},
    {1, 1}, {473176473, 568261250},
    /* grain per us gallon */
    {347593045, 1016154733}, {347593045, 1016154733}, {736351250, 43016043},
    {574420637, 27521688}, {1573198399, 1640278098}, {73635125, 43016043},
    {568261250, 473176473}, {1, 1},
};

/* From the unit of the row to that of the column. */
static const ew_fraction ew_fixed_conductivity_factors[EW_CONDUCTIVITY_UNITS * EW_CONDUCTIVITY_UNITS] = {
    /* microsiemens per centimetre */
    {1, 1}, {1, 1000}, {1, 10},
    {1, 10000},
    /* millisiemens per centimetre */
    {1000, 1}, {1, 1}, {100, 1},
    {1, 10},
    /* millisiemens per metre */
    {10, 1}, {1, 100}, {1, 1},
    {1, 1000},
    /* siemens per metre */
    {10000, 1}, {10, 1}, {1000, 1},
    {1, 1},
};

/* From the unit of the row to that of the column. */
static const ew_fraction ew_fixed_flow_factors[EW_FLOW_UNITS * EW_FLOW_UNITS] = {
    /* litre per minute */
    {1, 1}, {60, 1}, {3, 50},
    {125000000, 473176473}, {100000, 454609}, {1089073167, 2862910},
    {1440, 1},
    /* litre per hour */
    {1, 60}, {1, 1}, {1, 1000},
    {6250000, 1419529419}, {5000, 1363827}, {1000000000, 157725491},
    {24, 1},
    /* cubic metre per hour */
    {50, 3}, {1000, 1}, {1, 1},
    {613772358, 139402867}, {5000000, 1363827}, {1815121945, 286291},
    {24000, 1},
    /* us gallon per minute */
    {473176473, 125000000}, {1419529419, 6250000}, {139402867, 613772358},
    {1, 1}, {473176473, 568261250}, {1440, 1},
    {263593667, 48357},
    /* imperial gallon per minute */
    {454609, 100000}, {1363827, 5000}, {1363827, 5000000},
    {568261250, 473176473}, {1, 1}, {1784292617, 1031760},
    {4091481, 625},
    /* us gallon per day */
    {2862910, 1089073167}, {157725491, 1000000000}, {286291, 1815121945},
    {1, 1440}, {1031760, 1784292617}, {1, 1},
    {473176473, 125000000},
    /* litre per day */
    {1, 1440}, {1, 24}, {1, 24000},
    {48357, 263593667}, {625, 4091481}, {125000000, 473176473},
    {1, 1},
};

/* kelvin = (value + offset) * size; offsets in thousandths */
static const int32_t ew_fixed_temperature_offsets[EW_TEMPERATURE_UNITS] = {
    0, 273150, 459670,
};

static const ew_fraction ew_fixed_temperature_sizes[EW_TEMPERATURE_UNITS] = {
    {1, 1}, {1, 1}, {5, 9},
};

/* Sodium in mg/L for one unit of hardness. */
static const ew_fraction ew_fixed_sodium_for_hardness[EW_HARDNESS_UNITS] = {
    {2299, 50}, {2299, 50}, {2299, 100},
    {22990, 50043}, {45980, 56077}, {459800, 56077},
    {229900, 50043}, {882044185, 134699206}, {1320853571, 167959460},
};

/* The quotient rounded to nearest, halves away from zero; the denominator is above 0 and below 2^62. */
static int32_t ew_fixed_quotient(int64_t numerator, int64_t denominator, int32_t *result) {
    uint64_t size = numerator < 0 ? 0 - (uint64_t) numerator : (uint64_t) numerator;
    uint64_t quotient = (size + (uint64_t) denominator / 2) / (uint64_t) denominator;
    if (numerator < 0) {
        if (quotient > (uint64_t) INT32_MAX + 1) {
            *result = INT32_MIN;
            return EW_SATURATED;
        }
        *result = (int32_t) -(int64_t) quotient;
        return EW_OK;
    }
    if (quotient > (uint64_t) INT32_MAX) {
        *result = INT32_MAX;
        return EW_SATURATED;
    }
    *result = (int32_t) quotient;
    return EW_OK;
}

static int32_t ew_fixed_convert(const ew_fraction *factors, int32_t units, int32_t from, int32_t to, int32_t value,
        int32_t *result) {
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    if (from < 0 || from >= units || to < 0 || to >= units) {
        return EW_OUT_OF_RANGE;
    }
    ew_fraction factor = factors[from * units + to];
    return ew_fixed_quotient((int64_t) value * factor.numerator, factor.denominator, result);
}

int32_t ew_fixed_hardness(int32_t from, int32_t to, int32_t value, int32_t *result) {
    return ew_fixed_convert(ew_fixed_hardness_factors, EW_HARDNESS_UNITS, from, to, value, result);
}

int32_t ew_fixed_alkalinity(int32_t from, int32_t to, int32_t value, int32_t *result) {
    return ew_fixed_convert(ew_fixed_alkalinity_factors, EW_ALKALINITY_UNITS, from, to, value, result);
}

int32_t ew_fixed_conductivity(int32_t from, int32_t to, int32_t value, int32_t *result) {
    return ew_fixed_convert(ew_fixed_conductivity_factors, EW_CONDUCTIVITY_UNITS, from, to, value, result);
}

int32_t ew_fixed_flow(int32_t from, int32_t to, int32_t value, int32_t *result) {
    return ew_fixed_convert(ew_fixed_flow_factors, EW_FLOW_UNITS, from, to, value, result);
}

int32_t ew_fixed_temperature(int32_t from, int32_t to, int32_t value, int32_t *result) {
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    if (from < 0 || from >= EW_TEMPERATURE_UNITS || to < 0 || to >= EW_TEMPERATURE_UNITS) {
        return EW_OUT_OF_RANGE;
    }
    ew_fraction up = ew_fixed_temperature_sizes[from];
    ew_fraction down = ew_fixed_temperature_sizes[to];
    int64_t denominator = (int64_t) up.denominator * down.numerator;
    int64_t kelvin = ((int64_t) value + ew_fixed_temperature_offsets[from]) * up.numerator * down.denominator;
    return ew_fixed_quotient(kelvin - ew_fixed_temperature_offsets[to] * denominator, denominator, result);
}

int32_t ew_fixed_bypass_share(int32_t raw, int32_t soft, int32_t target, int32_t *result) {
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    if (raw < 0 || soft < 0 || target < 0) {
        return EW_OUT_OF_RANGE;
    }
    if (!(soft < raw && target >= soft && target <= raw)) {
        return EW_NO_ANSWER;
    }
    return ew_fixed_quotient(((int64_t) target - soft) * 1000000, (int64_t) raw - soft, result);
}

int32_t ew_fixed_blended_hardness(int32_t raw, int32_t soft, int32_t share, int32_t *result) {
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    if (raw < 0 || soft < 0 || share < 0 || share > 1000000) {
        return EW_OUT_OF_RANGE;
    }
    return ew_fixed_quotient((int64_t) soft * 1000000 + ((int64_t) raw - soft) * share, 1000000, result);
}

int32_t ew_fixed_sodium_added(int32_t unit, int32_t removed, int32_t *result) {
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    if (unit < 0 || unit >= EW_HARDNESS_UNITS || removed < 0) {
        return EW_OUT_OF_RANGE;
    }
    ew_fraction factor = ew_fixed_sodium_for_hardness[unit];
    return ew_fixed_quotient((int64_t) removed * factor.numerator, factor.denominator, result);
}

int32_t ew_fixed_linear_to_25(int32_t conductivity, int32_t celsius, int32_t per_kelvin, int32_t *result) {
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    if (conductivity < 0 || celsius < 0 || celsius > 100000 || per_kelvin < 0 || per_kelvin > 100000) {
        return EW_OUT_OF_RANGE;
    }
    int64_t ratio = 1000000000 + (int64_t) per_kelvin * (celsius - 25000);
    return ratio > 0 ? ew_fixed_quotient((int64_t) conductivity * 1000000000, ratio, result) : EW_NO_ANSWER;
}

int32_t ew_fixed_natural_to_25(int32_t conductivity, int32_t celsius, int32_t *result) {
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    if (conductivity < 0 || celsius < 0 || celsius > 35900) {
        return EW_OUT_OF_RANGE;
    }
    int32_t tenths = celsius / 100;
    int64_t lower = ew_natural_water_factors[tenths];
    int64_t upper = ew_natural_water_factors[tenths + 1];
    int64_t factor = lower * 100 + (upper - lower) * (celsius % 100);
    return ew_fixed_quotient(conductivity * factor, 100000, result);
}

int32_t ew_fixed_compensated_hardness(int32_t grains, int32_t iron, int32_t manganese, int32_t per_iron,
        int32_t per_manganese, int32_t *result) {
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    if (grains < 0 || iron < 0 || manganese < 0 || per_iron < 0 || per_iron > 100000 || per_manganese < 0
            || per_manganese > 100000) {
        return EW_OUT_OF_RANGE;
    }
    int64_t surcharge = (int64_t) per_iron * iron + (int64_t) per_manganese * manganese;
    return ew_fixed_quotient((int64_t) grains * 1000 + surcharge, 1000, result);
}

int32_t ew_fixed_membrane_concentrate(int32_t feed, int32_t permeate, int32_t recovery, int32_t *result) {
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    if (feed < 0 || permeate < 0 || recovery < 0 || recovery > 999999) {
        return EW_OUT_OF_RANGE;
    }
    int64_t rejected = (int64_t) feed * 1000000 - (int64_t) recovery * permeate;
    return ew_fixed_quotient(rejected, 1000000 - recovery, result);
}
