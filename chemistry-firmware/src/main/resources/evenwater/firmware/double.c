/*
 * Evenwater for firmware: scales, sodium and compensation in double.
 *
 * Generated from the library's core; do not edit. See README.md. Apache License 2.0.
 */
#include "ew_double.h"

#if defined(__FAST_MATH__)
#error "compile without -ffast-math: with it NaN passes for a number"
#endif

@TABLES@
@KERNEL@/* Not infinite and not NaN, without a library: those two give NaN. */
static ew_bool ew_is_finite(double a) {
    return a - a == 0;
}

static ew_bool ew_is_amount(double a) {
    return a >= 0 && ew_is_finite(a);
}

static int32_t ew_answer(double answer, double *result) {
    if (!ew_is_finite(answer)) {
        return EW_OUT_OF_RANGE;
    }
    *result = answer;
    return EW_OK;
}

static int32_t ew_convert(const double *sizes, int32_t units, int32_t from, int32_t to, double value, double *result) {
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    if (from < 0 || from >= units || to < 0 || to >= units || !ew_is_finite(value)) {
        return EW_OUT_OF_RANGE;
    }
    return ew_answer(from == to ? value : value * sizes[from] / sizes[to], result);
}

@CONVERSIONS@int32_t ew_temperature(int32_t from, int32_t to, double value, double *result) {
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    if (from < 0 || from >= EW_TEMPERATURE_UNITS || to < 0 || to >= EW_TEMPERATURE_UNITS || !ew_is_finite(value)) {
        return EW_OUT_OF_RANGE;
    }
    if (from == to) {
        return ew_answer(value, result);
    }
    double kelvin = (value + ew_temperature_offsets[from]) * ew_temperature_sizes[from];
    return ew_answer(kelvin / ew_temperature_sizes[to] - ew_temperature_offsets[to], result);
}

int32_t ew_softened_hardness(double raw, double leakage, double *result) {
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    if (!ew_is_amount(raw) || !ew_is_amount(leakage)) {
        return EW_OUT_OF_RANGE;
    }
    return ew_answer(raw < leakage ? raw : leakage, result);
}

int32_t ew_bypass_share(double raw, double soft, double target, double *result) {
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    if (!ew_is_amount(raw) || !ew_is_amount(soft) || !ew_is_amount(target)) {
        return EW_OUT_OF_RANGE;
    }
    if (!(soft < raw && target >= soft && target <= raw)) {
        return EW_NO_ANSWER;
    }
    double share = ew_in_softening_bypass_share(raw, soft, target);
    return ew_answer(share > 1 ? 1 : share, result);
}

int32_t ew_blended_hardness(double raw, double soft, double share, double *result) {
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    if (!ew_is_amount(raw) || !ew_is_amount(soft) || !(share >= 0 && share <= 1)) {
        return EW_OUT_OF_RANGE;
    }
    return ew_answer(share * raw + (1 - share) * soft, result);
}

int32_t ew_sodium_added(int32_t unit, double removed, double *result) {
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    if (unit < 0 || unit >= EW_HARDNESS_UNITS || !ew_is_amount(removed)) {
        return EW_OUT_OF_RANGE;
    }
    return ew_answer(removed * ew_sodium_for_hardness[unit], result);
}

int32_t ew_linear_to_25(double conductivity, double celsius, double per_kelvin, double *result) {
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    if (!ew_is_amount(conductivity) || !(celsius >= 0 && celsius <= 100) || !(per_kelvin >= 0 && per_kelvin <= 0.1)) {
        return EW_OUT_OF_RANGE;
    }
    double ratio = ew_in_temperature_linear_ratio(celsius, per_kelvin);
    return ratio > 0 ? ew_answer(conductivity / ratio, result) : EW_NO_ANSWER;
}

int32_t ew_natural_to_25(double conductivity, double celsius, double *result) {
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    if (!ew_is_amount(conductivity) || !(celsius >= 0 && celsius <= 35.9)) {
        return EW_OUT_OF_RANGE;
    }
    int32_t tenths = (int32_t) (10 * celsius);
    double lower = ew_natural_water_factors[tenths] / 1000.0;
    double upper = ew_natural_water_factors[tenths + 1] / 1000.0;
    return ew_answer(conductivity * (lower + (10 * celsius - tenths) * (upper - lower)), result);
}

int32_t ew_compensated_hardness(double grains, double iron, double manganese, double per_iron, double per_manganese,
        double *result) {
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    if (!ew_is_amount(grains) || !ew_is_amount(iron) || !ew_is_amount(manganese) || !ew_is_amount(per_iron)
            || !ew_is_amount(per_manganese)) {
        return EW_OUT_OF_RANGE;
    }
    return ew_answer(grains + per_iron * iron + per_manganese * manganese, result);
}

int32_t ew_membrane_concentrate(double feed, double permeate, double recovery, double *result) {
    if (result == 0) {
        return EW_NULL_POINTER;
    }
    if (!ew_is_amount(feed) || !ew_is_amount(permeate) || !(recovery >= 0 && recovery < 1)) {
        return EW_OUT_OF_RANGE;
    }
    return ew_answer(ew_in_membrane_concentrate(feed, permeate, recovery), result);
}
