/*
 * Evenwater for firmware: the states of a softener's valve and of a dosing pump.
 *
 * Generated from the Java of the library's kernel; do not edit. See README.md. Apache License 2.0.
 *
 * Every function answers with a status: the codes that its part states, 0 or more, or one of ew_common.h, below 0.
 * Nothing is allocated, nothing is kept between calls but what the structs hold.
 *
 * Initialise a valve's settings and state by their _init before anything else: a struct of zeros is no new one. Give a pump only
 * settings and a memory that ew_pump_start, ..._are_usable or ..._is_usable have accepted. With others no behaviour is undefined,
 * since all integers wrap around as in Java and all places stay inside their arrays; but answers mean nothing, and a call may
 * take very long.
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

