/*
 * Evenwater for firmware: scales, sodium and compensation in double.
 *
 * Generated from the library's core; do not edit. See README.md. Apache License 2.0.
 */
#include "ew_double.h"

#if defined(__FAST_MATH__)
#error "compile without -ffast-math: with it NaN passes for a number"
#endif

/* Sizes in the first unit. */
static const double ew_hardness_sizes[EW_HARDNESS_UNITS] = {
    /* millimole per litre, 1.0 */ 0x1.0p0,
    /* mole per cubic metre, 1.0 */ 0x1.0p0,
    /* milliequivalent per litre, 0.5 */ 0x1.0p-1,
    /* milligram per litre calcium carbonate, 0.009991407389644906 */ 0x1.4765fffd617cfp-7,
    /* milligram per litre calcium oxide, 0.017832623000517148 */ 0x1.242b7125b41e4p-6,
    /* german degree, 0.17832623000517145 */ 0x1.6d364d6f2125cp-3,
    /* french degree, 0.09991407389644906 */ 0x1.993f7ffcb9dc3p-4,
    /* english degree, 0.1424151981625826 */ 0x1.23aa94547e433p-3,
    /* grain per us gallon, 0.17103352162411273 */ 0x1.5e46d2af2984ep-3,
};

/* Sizes in the first unit. */
static const double ew_alkalinity_sizes[EW_ALKALINITY_UNITS] = {
    /* milliequivalent per litre, 1.0 */ 0x1.0p0,
    /* millimole per litre, 1.0 */ 0x1.0p0,
    /* milligram per litre calcium carbonate, 0.01998281477928981 */ 0x1.4765fffd617cfp-6,
    /* milligram per litre bicarbonate, 0.016389143831126263 */ 0x1.0c850d30e776dp-6,
    /* degree of carbonate hardness, 0.3566524600103429 */ 0x1.6d364d6f2125cp-2,
    /* french degree, 0.19982814779289812 */ 0x1.993f7ffcb9dc3p-3,
    /* english degree, 0.2848303963251652 */ 0x1.23aa94547e433p-2,
    /* grain per us gallon, 0.34206704324822546 */ 0x1.5e46d2af2984ep-2,
};

/* Sizes in the first unit. */
static const double ew_conductivity_sizes[EW_CONDUCTIVITY_UNITS] = {
    /* microsiemens per centimetre, 1.0 */ 0x1.0p0,
    /* millisiemens per centimetre, 1000.0 */ 0x1.f4p9,
    /* millisiemens per metre, 10.0 */ 0x1.4p3,
    /* siemens per metre, 10000.0 */ 0x1.388p13,
};

/* Sizes in the first unit. */
static const double ew_flow_sizes[EW_FLOW_UNITS] = {
    /* litre per minute, 1.0 */ 0x1.0p0,
    /* litre per hour, 0.016666666666666666 */ 0x1.1111111111111p-6,
    /* cubic metre per hour, 16.666666666666668 */ 0x1.0aaaaaaaaaaabp4,
    /* us gallon per minute, 3.785411784 */ 0x1.e4885f9316256p1,
    /* imperial gallon per minute, 4.54609 */ 0x1.22f32378ab0c9p2,
    /* us gallon per day, 0.0026287581833333335 */ 0x1.588e7cda5f649p-9,
    /* litre per day, 6.944444444444445E-4 */ 0x1.6c16c16c16c17p-11,
};

/* kelvin = (value + offset) * size */
static const double ew_temperature_offsets[EW_TEMPERATURE_UNITS] = {
    /* kelvin, 0.0 */ 0x0.0p0,
    /* celsius, 273.15 */ 0x1.1126666666666p8,
    /* fahrenheit, 459.67 */ 0x1.cbab851eb851fp8,
};

static const double ew_temperature_sizes[EW_TEMPERATURE_UNITS] = {
    /* kelvin, 1.0 */ 0x1.0p0,
    /* celsius, 1.0 */ 0x1.0p0,
    /* fahrenheit, 0.5555555555555556 */ 0x1.1c71c71c71c72p-1,
};

/* Sodium in mg/L for one unit of hardness. */
static const double ew_sodium_for_hardness[EW_HARDNESS_UNITS] = {
    /* millimole per litre, 45.98 */ 0x1.6fd70a3d70a3dp5,
    /* mole per cubic metre, 45.98 */ 0x1.6fd70a3d70a3dp5,
    /* milliequivalent per litre, 22.99 */ 0x1.6fd70a3d70a3dp4,
    /* milligram per litre calcium carbonate, 0.4594049117758727 */ 0x1.d66e3dbecbebp-2,
    /* milligram per litre calcium oxide, 0.8199440055637783 */ 0x1.a3cfb360e535p-1,
    /* german degree, 8.199440055637783 */ 0x1.0661d01c8f412p3,
    /* french degree, 4.594049117758727 */ 0x1.2604e6973f72ep2,
    /* english degree, 6.548250811515548 */ 0x1.a3168a925dbe5p2,
    /* grain per us gallon, 7.864121324276703 */ 0x1.f74dc386e2db9p2,
};

/*
 * Returns the share of raw water that must pass by the softener to reach a hardness.
 *
 * s = (target - soft) / (raw - soft), from s*raw + (1 - s)*soft = target.
 */
static double ew_in_softening_bypass_share(double raw, double soft, double target) {
    return (target - soft) / (raw - soft);
}

/*
 * Returns the concentration on the reject side from a mass balance: (feed - recovery * permeate) / (1
 * - recovery).
 */
static double ew_in_membrane_concentrate(double feed, double permeate, double recovery) {
    return (feed - (recovery * permeate)) / (1.0 - recovery);
}

/*
 * Returns conductivity at a temperature over that at 25 deg C by the linear law of meters.
 *
 * kappa(t) / kappa(25) = 1 + alpha (t - 25). Exactly 1 at 25 deg C.
 */
static double ew_in_temperature_linear_ratio(double celsius, double per_kelvin) {
    return 1.0 + (per_kelvin * (celsius - 25.0));
}

/* Not infinite and not NaN, without a library: those two give NaN. */
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

int32_t ew_hardness(int32_t from, int32_t to, double value, double *result) {
    return ew_convert(ew_hardness_sizes, EW_HARDNESS_UNITS, from, to, value, result);
}

int32_t ew_alkalinity(int32_t from, int32_t to, double value, double *result) {
    return ew_convert(ew_alkalinity_sizes, EW_ALKALINITY_UNITS, from, to, value, result);
}

int32_t ew_conductivity(int32_t from, int32_t to, double value, double *result) {
    return ew_convert(ew_conductivity_sizes, EW_CONDUCTIVITY_UNITS, from, to, value, result);
}

int32_t ew_flow(int32_t from, int32_t to, double value, double *result) {
    return ew_convert(ew_flow_sizes, EW_FLOW_UNITS, from, to, value, result);
}

int32_t ew_temperature(int32_t from, int32_t to, double value, double *result) {
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
