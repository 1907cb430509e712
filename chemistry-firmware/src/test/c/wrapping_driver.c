/* Asks the functions that stand for Java's operators: an operation and two numbers in, one number out. */
#include <stdio.h>

#include "../../../c/ew_control.c"

static int64_t answer(int64_t operation, int64_t a, int64_t b) {
    switch (operation) {
        case 0: return ew_add(a, b);
        case 1: return ew_sub(a, b);
        case 2: return ew_mul(a, b);
        case 3: return ew_div(a, b);
        case 4: return ew_shl(a, b);
        case 5: return ew_sar(a, b);
        case 6: return ew_min(a, b);
        case 7: return ew_max(a, b);
        case 8: return ew_abs(a);
        case 9: return ew_to_int(a);
        case 10: return ew_add_int((int32_t) a, (int32_t) b);
        case 11: return ew_sub_int((int32_t) a, (int32_t) b);
        case 12: return ew_to_long(ew_double(a));
        case 13: return ew_to_long(ew_ceil_double(ew_double(a)));
        case 14: return ew_bits(ew_abs_double(ew_double(a)));
        case 15: return ew_at(a, 7);
        default: return 0;
    }
}

int main(void) {
    int64_t call[3];
    while (fread(call, sizeof call, 1, stdin) == 1) {
        int64_t result = answer(call[0], call[1], call[2]);
        fwrite(&result, sizeof result, 1, stdout);
    }
    return 0;
}
