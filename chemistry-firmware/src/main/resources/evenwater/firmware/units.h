/*
 * Evenwater for firmware: the numbers of units, and constants.
 *
 * Generated from the library's core; do not edit. See README.md. Apache License 2.0.
 */
#ifndef EW_UNITS_H
#define EW_UNITS_H

#include "ew_common.h"

#ifdef __cplusplus
extern "C" {
#endif

@UNITS@
/* Units of temperature, for ew_temperature and ew_fixed_temperature. */
#define EW_TEMPERATURE_KELVIN 0
#define EW_TEMPERATURE_CELSIUS 1
#define EW_TEMPERATURE_FAHRENHEIT 2
/* How many there are. */
#define EW_TEMPERATURE_UNITS 3

/* Customary units by their legal definitions: whole numbers of the unit that the name states, exact. */
@EXACT_UNITS@
/* Standard atomic weights of 2021, abridged, in g/mol: the double that is nearest to the published decimal. */
@ATOMIC_WEIGHTS@
/*
 * The factor that takes the conductivity of a natural water to 25 degrees Celsius (ISO 7888), in thousandths as that standard
 * prints it, for each tenth of a degree from 0 to 35.9; one more, continued in a straight line, is never weighted.
 */
#define EW_NATURAL_WATER_FACTORS @FACTOR_COUNT@
extern const uint16_t ew_natural_water_factors[EW_NATURAL_WATER_FACTORS];

#ifdef __cplusplus
}
#endif

#endif
