/*
 * Evenwater for firmware: what all parts share.
 *
 * Generated; see README.md. Apache License 2.0.
 */
#ifndef EW_COMMON_H
#define EW_COMMON_H

#include <stdint.h>

#ifdef __cplusplus
typedef bool ew_bool;
#else
typedef _Bool ew_bool;
#endif

/* The answer was written. */
#define EW_OK 0
/* The exact answer lies beyond what the result can hold: the nearest limit was written. Fixed point only. */
#define EW_SATURATED 1
/* A pointer is null. Nothing was written. */
#define EW_NULL_POINTER (-1)
/* A number is out of the range that the function states, or is NaN or infinite. Nothing was written. */
#define EW_OUT_OF_RANGE (-2)
/* There is no answer, such as a share between two equal waters. Nothing was written. */
#define EW_NO_ANSWER (-3)

#endif
