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

@TABLES@
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

@CONVERSIONS@int32_t ew_fixed_temperature(int32_t from, int32_t to, int32_t value, int32_t *result) {
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
