/*
 * Evenwater for firmware: scales, sodium and compensation in double.
 *
 * Generated from the library's core; do not edit. See README.md. Apache License 2.0.
 *
 * Every function returns EW_OK and writes its answer, or a status below 0 and writes nothing: EW_NULL_POINTER, EW_OUT_OF_RANGE
 * for a number that is not in the range stated, NaN, infinite, or so large that the answer or a step to it would be infinite,
 * EW_NO_ANSWER. Answers are the library's to 1e-12 of their size, temperatures to 1e-12 of what they are in kelvin.
 */
#ifndef EW_DOUBLE_H
#define EW_DOUBLE_H

#include "ew_units.h"

#ifdef __cplusplus
extern "C" {
#endif

/*
 * Converts a hardness.
 *
 * from, to: one of EW_HARDNESS_...
 * value: finite, in the unit from
 * result: in the unit to
 */
int32_t ew_hardness(int32_t from, int32_t to, double value, double *result);

/*
 * Converts an alkalinity.
 *
 * from, to: one of EW_ALKALINITY_...
 * value: finite, in the unit from
 * result: in the unit to
 */
int32_t ew_alkalinity(int32_t from, int32_t to, double value, double *result);

/*
 * Converts a conductivity.
 *
 * from, to: one of EW_CONDUCTIVITY_...
 * value: finite, in the unit from
 * result: in the unit to
 */
int32_t ew_conductivity(int32_t from, int32_t to, double value, double *result);

/*
 * Converts a flow.
 *
 * from, to: one of EW_FLOW_...
 * value: finite, in the unit from
 * result: in the unit to
 */
int32_t ew_flow(int32_t from, int32_t to, double value, double *result);

/*
 * Converts a temperature.
 *
 * from, to: one of EW_TEMPERATURE_...
 * value: finite, in the unit from
 * result: in the unit to
 */
int32_t ew_temperature(int32_t from, int32_t to, double value, double *result);

/*
 * Returns what a softener leaves of the hardness: the least of the two. A water softer than the leakage passes unchanged.
 *
 * raw, leakage: hardness before the softener, and what the resin lets through; same unit, 0 or more
 * result: hardness behind the resin, same unit
 */
int32_t ew_softened_hardness(double raw, double leakage, double *result);

/*
 * Returns the share of raw water that must go past a softener to reach a hardness: (target - soft) / (raw - soft).
 *
 * raw, soft: hardness before and behind the resin, same unit; 0 or more
 * target: wanted, same unit
 * result: share, 0 to 1
 * returns: EW_NO_ANSWER if target is not between soft and raw, or these are equal
 */
int32_t ew_bypass_share(double raw, double soft, double target, double *result);

/*
 * Returns the hardness of softened water with raw water blended in: soft + share * (raw - soft).
 *
 * raw, soft: hardness before and behind the resin, same unit; 0 or more
 * share: of raw water in the blend; 0 to 1
 * result: hardness of the blend, same unit
 */
int32_t ew_blended_hardness(double raw, double soft, double share, double *result);

/*
 * Returns the sodium that an exchange adds: charge for charge, two sodium for each calcium or magnesium.
 *
 * unit: of the hardness, one of EW_HARDNESS_...
 * removed: hardness that the resin took away, raw less blend; 0 or more
 * result: sodium in mg/L that is added to what the raw water had
 */
int32_t ew_sodium_added(int32_t unit, double removed, double *result);

/*
 * Takes a conductivity to 25 degrees Celsius by the linear law of meters: kappa / (1 + coefficient * (t - 25)).
 *
 * conductivity: at the temperature of the water, any unit; 0 or more
 * celsius: temperature of the water; 0 to 100
 * per_kelvin: temperature coefficient; 0 to 0.1, 0.019 to 0.022 is usual
 * result: conductivity at 25 degrees, same unit
 * returns: EW_NO_ANSWER where the law has lost its meaning, 1 + coefficient * (t - 25) being 0 or less; within rounding of 0 it may
 *     answer, with a number that means nothing either
 */
int32_t ew_linear_to_25(double conductivity, double celsius, double per_kelvin, double *result);

/*
 * Takes a conductivity of a natural water to 25 degrees Celsius by the factors of ISO 7888.
 *
 * conductivity: at the temperature of the water, any unit; 0 or more
 * celsius: temperature of the water; 0 to 35.9
 * result: conductivity at 25 degrees, same unit
 */
int32_t ew_natural_to_25(double conductivity, double celsius, double *result);

/*
 * Returns the hardness by which the trade sizes a softener, with its surcharge for iron and manganese. It makes up for fouling,
 * not for charge: never reckon sodium from it.
 *
 * grains: hardness in grains per US gallon; 0 or more
 * iron, manganese: dissolved, in mg/L; 0 or more
 * per_iron, per_manganese: surcharge in grains per US gallon for each mg/L; 0 or more; 3 to 5, and 2, are common practice
 * result: in grains per US gallon
 */
int32_t ew_compensated_hardness(double grains, double iron, double manganese, double per_iron, double per_manganese,
        double *result);

/*
 * Returns the concentration on the reject side of a membrane: (feed - recovery * permeate) / (1 - recovery).
 *
 * feed, permeate: concentrations, same unit; 0 or more
 * recovery: permeate over feed volume; 0 or more and below 1
 * result: same unit
 */
int32_t ew_membrane_concentrate(double feed, double permeate, double recovery, double *result);

#ifdef __cplusplus
}
#endif

#endif
