/* Two's complement of 64 bits: what Java's long is. Compilers make nothing of it. */
static int64_t ew_wrap(uint64_t bits) {
    return bits <= (uint64_t) INT64_MAX ? (int64_t) bits : -(int64_t) (UINT64_MAX - bits) - 1;
}

/* The low 32 bits, as Java's cast to int has them. */
static int32_t ew_to_int(int64_t a) {
    uint32_t bits = (uint32_t) ((uint64_t) a & UINT32_MAX);
    return bits <= (uint32_t) INT32_MAX ? (int32_t) bits : -(int32_t) (UINT32_MAX - bits) - 1;
}

static int64_t ew_add(int64_t a, int64_t b) {
    return ew_wrap((uint64_t) a + (uint64_t) b);
}

static int64_t ew_sub(int64_t a, int64_t b) {
    return ew_wrap((uint64_t) a - (uint64_t) b);
}

static int64_t ew_mul(int64_t a, int64_t b) {
    return ew_wrap((uint64_t) a * (uint64_t) b);
}

static int32_t ew_add_int(int32_t a, int32_t b) {
    return ew_to_int((int64_t) a + b);
}

static int32_t ew_sub_int(int32_t a, int32_t b) {
    return ew_to_int((int64_t) a - b);
}

/* 0 for a divisor of 0, which only settings or a memory that no function made can have. */
static int64_t ew_div(int64_t a, int64_t b) {
    return b == 0 ? 0 : b == -1 ? ew_sub(0, a) : a / b;
}

static int64_t ew_shl(int64_t a, int64_t places) {
    return ew_wrap((uint64_t) a << ((uint64_t) places & 63));
}

static int64_t ew_sar(int64_t a, int64_t places) {
    uint64_t count = (uint64_t) places & 63;
    return a < 0 ? ew_wrap(~(~(uint64_t) a >> count)) : (int64_t) ((uint64_t) a >> count);
}

static int64_t ew_min(int64_t a, int64_t b) {
    return a < b ? a : b;
}

static int64_t ew_max(int64_t a, int64_t b) {
    return a > b ? a : b;
}

static int64_t ew_abs(int64_t a) {
    return a < 0 ? ew_sub(0, a) : a;
}

/* A place inside an array of so many elements. */
static int32_t ew_at(int64_t place, int32_t length) {
    return place < 0 ? 0 : place >= length ? length - 1 : (int32_t) place;
}

static void ew_copy(const int64_t *from, int64_t *to, int32_t count) {
    for (int32_t i = 0; i < count; i++) {
        to[i] = from[i];
    }
}

static void ew_fill(int64_t *to, int32_t count, int64_t value) {
    for (int32_t i = 0; i < count; i++) {
        to[i] = value;
    }
}

typedef union {
    double number;
    int64_t bits;
} ew_number;

static int64_t ew_bits(double number) {
    ew_number both;
    both.number = number;
    return both.bits;
}

static double ew_double(int64_t bits) {
    ew_number both;
    both.bits = bits;
    return both.number;
}

/* Neither may be NaN; the kernel's are not. */
static double ew_min_double(double a, double b) {
    return a < b ? a : b;
}

/* Neither may be NaN; the kernel's are not. */
static double ew_max_double(double a, double b) {
    return a > b ? a : b;
}

static double ew_abs_double(double a) {
    return a <= 0 ? 0 - a : a;
}

/* The nearest whole number towards 0; limits beyond the range and 0 for NaN, as Java's cast has it. */
static int64_t ew_to_long(double a) {
    if (a != a) {
        return 0;
    }
    if (a >= 0x1p63) {
        return INT64_MAX;
    }
    return a < -0x1p63 ? INT64_MIN : (int64_t) a;
}

/* From 2^52 on every double is whole. */
static double ew_ceil_double(double a) {
    if (!(a > -0x1p52 && a < 0x1p52)) {
        return a;
    }
    double whole = (double) (int64_t) a;
    return whole < a ? whole + 1 : whole;
}
