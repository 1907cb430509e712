package evenwater.chemistry.analysis;

/** A range in one unit, such as eq/L; both ends belong to it. */
record KitRange(double least, double most) {

    double width() {
        return most - least;
    }

    KitRange widenedBy(double factorBelow, double factorAbove) {
        return new KitRange(least * factorBelow, most * factorAbove);
    }
}
