/*
 * Evenwater for firmware: scales, sodium and compensation in fixed point.
 *
 * Generated from the library's core; do not edit. See README.md. Apache License 2.0.
 *
 * A value is a 32-bit whole number of thousandths of the unit that is stated: 21.1 degrees are 21100. So it is read and printed
 * as it stands, goes to 2 147 483.647, and a last place is below what any meter or drop shows. Intermediates have 64 bits.
 *
 * Every function rounds to the nearest last place, halves away from zero, and returns EW_OK; or writes the limit INT32_MAX or
 * INT32_MIN and returns EW_SATURATED where the answer lies beyond it; or writes nothing and returns a status below 0:
 * EW_NULL_POINTER, EW_OUT_OF_RANGE, EW_NO_ANSWER. "Worst error" is the largest distance of an answer that is not saturated from
 * the exact one, in last places; one half is what rounding costs.
 */
#ifndef EW_FIXED_H
#define EW_FIXED_H

#include "ew_units.h"

#ifdef __cplusplus
extern "C" {
#endif

/*
 * Converts a hardness.
 *
 * from, to: one of EW_HARDNESS_...
 * value: thousandths of the unit from, any; below 0 too
 * result: thousandths of the unit to
 * Worst error: 0.500000003808
 */
int32_t ew_fixed_hardness(int32_t from, int32_t to, int32_t value, int32_t *result);

/*
 * Converts an alkalinity.
 *
 * from, to: one of EW_ALKALINITY_...
 * value: thousandths of the unit from, any; below 0 too
 * result: thousandths of the unit to
 * Worst error: 0.500000006623
 */
int32_t ew_fixed_alkalinity(int32_t from, int32_t to, int32_t value, int32_t *result);

/*
 * Converts a conductivity.
 *
 * from, to: one of EW_CONDUCTIVITY_...
 * value: thousandths of the unit from, any; below 0 too
 * result: thousandths of the unit to
 * Worst error: 0.5
 */
int32_t ew_fixed_conductivity(int32_t from, int32_t to, int32_t value, int32_t *result);

/*
 * Converts a flow.
 *
 * from, to: one of EW_FLOW_...
 * value: thousandths of the unit from, any; below 0 too
 * result: thousandths of the unit to
 * Worst error: 0.500010428093
 */
int32_t ew_fixed_flow(int32_t from, int32_t to, int32_t value, int32_t *result);

/*
 * Converts a temperature.
 *
 * from, to: one of EW_TEMPERATURE_...
 * value: thousandths of the unit from, any; what lies below absolute zero is not refused
 * result: thousandths of the unit to
 * Worst error: 0.5
 */
int32_t ew_fixed_temperature(int32_t from, int32_t to, int32_t value, int32_t *result);

/*
 * Returns the share of raw water that must go past a softener to reach a hardness: (target - soft) / (raw - soft).
 *
 * raw, soft: hardness before and behind the resin, thousandths of any one unit; 0 or more
 * target: wanted, same unit; 0 or more
 * result: share in millionths, 0 to 1000000
 * returns: EW_NO_ANSWER if target is not between soft and raw, or these are equal
 * Worst error: 0.5
 */
int32_t ew_fixed_bypass_share(int32_t raw, int32_t soft, int32_t target, int32_t *result);

/*
 * Returns the hardness of softened water with raw water blended in: soft + share * (raw - soft).
 *
 * raw, soft: hardness before and behind the resin, thousandths of any one unit; 0 or more
 * share: of raw water in the blend, in millionths; 0 to 1000000
 * result: hardness of the blend, thousandths of the same unit
 * Worst error: 0.5
 */
int32_t ew_fixed_blended_hardness(int32_t raw, int32_t soft, int32_t share, int32_t *result);

/*
 * Returns the sodium that an exchange adds: charge for charge, two sodium for each calcium or magnesium.
 *
 * unit: of the hardness, one of EW_HARDNESS_...
 * removed: hardness that the resin took away, raw less blend, in thousandths of the unit; 0 or more
 * result: sodium in ug/L, thousandths of a mg/L, that is added to what the raw water had
 * Worst error: 0.500000005887
 */
int32_t ew_fixed_sodium_added(int32_t unit, int32_t removed, int32_t *result);

/*
 * Takes a conductivity to 25 degrees Celsius by the linear law of meters: kappa / (1 + coefficient * (t - 25)).
 *
 * conductivity: at the temperature of the water, thousandths of any unit; 0 or more
 * celsius: temperature of the water, thousandths of a degree; 0 to 100000
 * per_kelvin: temperature coefficient in millionths for a kelvin; 0 to 100000; 2 % are 20000
 * result: conductivity at 25 degrees, thousandths of the same unit
 * returns: EW_NO_ANSWER where the law has lost its meaning, 1 + coefficient * (t - 25) being 0 or less
 * Worst error: 0.5
 */
int32_t ew_fixed_linear_to_25(int32_t conductivity, int32_t celsius, int32_t per_kelvin, int32_t *result);

/*
 * Takes a conductivity of a natural water to 25 degrees Celsius by the factors of ISO 7888, interpolated between tenths of a
 * degree.
 *
 * conductivity: at the temperature of the water, thousandths of any unit; 0 or more
 * celsius: temperature of the water, thousandths of a degree; 0 to 35900
 * result: conductivity at 25 degrees, thousandths of the same unit
 * Worst error: 0.5
 */
int32_t ew_fixed_natural_to_25(int32_t conductivity, int32_t celsius, int32_t *result);

/*
 * Returns the hardness by which the trade sizes a softener, with its surcharge for iron and manganese. It makes up for fouling,
 * not for charge: never reckon sodium from it.
 *
 * grains: hardness in thousandths of a grain per US gallon; 0 or more
 * iron, manganese: dissolved, in ug/L; 0 or more
 * per_iron, per_manganese: surcharge in thousandths of a grain per US gallon for each mg/L; 0 to 100000; 3000 to 5000, and
 * 2000, are common practice
 * result: in thousandths of a grain per US gallon
 * Worst error: 0.5
 */
int32_t ew_fixed_compensated_hardness(int32_t grains, int32_t iron, int32_t manganese, int32_t per_iron,
        int32_t per_manganese, int32_t *result);

/*
 * Returns the concentration on the reject side of a membrane: (feed - recovery * permeate) / (1 - recovery).
 *
 * feed, permeate: concentrations, thousandths of any one unit; 0 or more
 * recovery: permeate over feed volume, in millionths; 0 to 999999
 * result: thousandths of the same unit; below 0 for a permeate that no such feed can give
 * Worst error: 0.5
 */
int32_t ew_fixed_membrane_concentrate(int32_t feed, int32_t permeate, int32_t recovery, int32_t *result);

#ifdef __cplusplus
}
#endif

#endif
