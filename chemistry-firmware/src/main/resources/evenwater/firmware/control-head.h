/*
 * Evenwater for firmware: the states of a softener's valve and of a dosing pump.
 *
 * Generated from the Java of the library's kernel; do not edit. See README.md. Apache License 2.0.
 *
 * Every function answers with a status: the codes that its part states, 0 or more, or one of ew_common.h, below 0.
 * Nothing is allocated, nothing is kept between calls but what the structs hold. All integers wrap around as in Java and all
 * places in arrays of a struct are kept inside it, so that no input leads to undefined behaviour as long as pointers are valid
 * and arrays as long as stated.
 *
 * What these functions decide are wishes. They replace no safety of an appliance: no overflow protection, no end stop, no
 * limit on a pump that must not run.
 */
#ifndef EW_CONTROL_H
#define EW_CONTROL_H

#include "ew_common.h"

#ifdef __cplusplus
extern "C" {
#endif

