/*
 * Evenwater for firmware: tables that double and fixed point share.
 *
 * Generated from the library's core; do not edit. See README.md. Apache License 2.0.
 */
#include "ew_units.h"

const uint16_t ew_natural_water_factors[EW_NATURAL_WATER_FACTORS] = {
@FACTORS@};
