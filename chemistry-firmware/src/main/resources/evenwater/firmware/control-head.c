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

