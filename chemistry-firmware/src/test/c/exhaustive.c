/*
 * Every one of the 2^32 values of a conversion in fixed point beside the exact quotient, which goes forward by whole numbers.
 * KIND, FROM and TO say which function and which units; they are known to the compiler, so that it need not divide. Arguments:
 * numerator and denominator of the exact factor. Prints the largest error as a fraction of whole numbers: numerator,
 * denominator, and how many answers saturated.
 */
#include <stdio.h>

#include "../../../c/ew_fixed.c"

/* The exact factor may have numbers of more than 64 bits; this is for tests alone, so that gcc's wide type may be used. */
__extension__ typedef unsigned __int128 wide;

static wide read_wide(const char *text) {
    wide number = 0;
    for (; *text; text++) {
        number = number * 10 + (wide) (*text - '0');
    }
    return number;
}

static void print_wide(wide number) {
    char digits[50];
    int i = 49;
    digits[i] = 0;
    do {
        digits[--i] = (char) ('0' + (int) (number % 10));
        number /= 10;
    } while (number > 0);
    printf("%s ", digits + i);
}

static int32_t call(int32_t value, int32_t *result) {
#if KIND == 0
    return ew_fixed_hardness(FROM, TO, value, result);
#elif KIND == 1
    return ew_fixed_alkalinity(FROM, TO, value, result);
#elif KIND == 2
    return ew_fixed_conductivity(FROM, TO, value, result);
#elif KIND == 3
    return ew_fixed_flow(FROM, TO, value, result);
#else
    return ew_fixed_sodium_added(FROM, value, result);
#endif
}

int main(int count, char **arguments) {
    if (count != 3) {
        return 2;
    }
    wide num = read_wide(arguments[1]);
    wide den = read_wide(arguments[2]);
    int64_t step = (int64_t) (num / den);
    wide step_rest = num % den;
    int64_t quotient = 0;
    wide rest = 0;
    wide worst = 0;
    int64_t saturated = 0;
    for (int64_t value = 0; value <= INT64_C(2147483648); value++) {
        for (int sign = value <= INT32_MAX ? 1 : -1; sign >= -1; sign -= 2) {
            if (sign < 0 && (KIND == 4 || value == 0)) {
                continue;
            }
            int32_t result = 0;
            int32_t status = call((int32_t) (sign * value), &result);
            if (status == EW_SATURATED) {
                saturated++;
                /* the exact answer must lie at the limit or beyond, but for the error that is allowed */
                if (quotient < INT32_MAX || result != (sign > 0 ? INT32_MAX : INT32_MIN)) {
                    return 3;
                }
                continue;
            }
            if (status != EW_OK) {
                return 4;
            }
            int64_t over = sign * (int64_t) result - quotient;
            if (over < 0 || over > 1) {
                return 5;
            }
            wide error = over == 0 ? rest : den - rest;
            worst = error > worst ? error : worst;
        }
        quotient += step;
        rest += step_rest;
        if (rest >= den) {
            rest -= den;
            quotient++;
        }
    }
    print_wide(worst);
    print_wide(den);
    printf("%lld\n", (long long) saturated);
    return 0;
}
