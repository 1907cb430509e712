/*
 * Calls functions of ew_double and ew_fixed with arguments from the standard input and writes status and answer to the standard
 * output: numbers of 64 bits in the machine's order, doubles as their bits. A call is a code and six arguments. What a function
 * leaves unwritten shows as -1234567.
 */
#include <stdio.h>

#include "../../../c/ew_double.h"
#include "../../../c/ew_fixed.h"

typedef union {
    int64_t whole;
    double real;
} slot;

static int32_t in_double(int64_t code, const slot *a, double *r) {
    int32_t i = (int32_t) a[0].whole;
    int32_t k = (int32_t) a[1].whole;
    switch (code) {
        case 0: return ew_hardness(i, k, a[2].real, r);
        case 1: return ew_alkalinity(i, k, a[2].real, r);
        case 2: return ew_conductivity(i, k, a[2].real, r);
        case 3: return ew_flow(i, k, a[2].real, r);
        case 4: return ew_temperature(i, k, a[2].real, r);
        case 5: return ew_softened_hardness(a[0].real, a[1].real, r);
        case 6: return ew_bypass_share(a[0].real, a[1].real, a[2].real, r);
        case 7: return ew_blended_hardness(a[0].real, a[1].real, a[2].real, r);
        case 8: return ew_sodium_added(i, a[1].real, r);
        case 9: return ew_linear_to_25(a[0].real, a[1].real, a[2].real, r);
        case 10: return ew_natural_to_25(a[0].real, a[1].real, r);
        case 11: return ew_compensated_hardness(a[0].real, a[1].real, a[2].real, a[3].real, a[4].real, r);
        case 12: return ew_membrane_concentrate(a[0].real, a[1].real, a[2].real, r);
        default: return -100;
    }
}

static int32_t in_fixed(int64_t code, const slot *slots, int32_t *r) {
    int32_t a[6];
    for (int i = 0; i < 6; i++) {
        a[i] = (int32_t) slots[i].whole;
    }
    switch (code) {
        case 100: return ew_fixed_hardness(a[0], a[1], a[2], r);
        case 101: return ew_fixed_alkalinity(a[0], a[1], a[2], r);
        case 102: return ew_fixed_conductivity(a[0], a[1], a[2], r);
        case 103: return ew_fixed_flow(a[0], a[1], a[2], r);
        case 104: return ew_fixed_sodium_added(a[0], a[1], r);
        case 105: return ew_fixed_bypass_share(a[0], a[1], a[2], r);
        case 106: return ew_fixed_blended_hardness(a[0], a[1], a[2], r);
        case 107: return ew_fixed_linear_to_25(a[0], a[1], a[2], r);
        case 108: return ew_fixed_natural_to_25(a[0], a[1], r);
        case 109: return ew_fixed_compensated_hardness(a[0], a[1], a[2], a[3], a[4], r);
        case 110: return ew_fixed_membrane_concentrate(a[0], a[1], a[2], r);
        case 111: return ew_fixed_temperature(a[0], a[1], a[2], r);
        default: return -100;
    }
}

int main(void) {
    slot call[7];
    while (fread(call, sizeof call, 1, stdin) == 1) {
        slot answer[2];
        if (call[0].whole < 100) {
            answer[1].real = -1234567;
            answer[0].whole = in_double(call[0].whole, call + 1, &answer[1].real);
        } else {
            int32_t result = -1234567;
            answer[0].whole = in_fixed(call[0].whole, call + 1, &result);
            answer[1].whole = result;
        }
        fwrite(answer, sizeof answer, 1, stdout);
    }
    return 0;
}
