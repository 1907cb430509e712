package evenwater.pictures;

/**
 * A point of a chart, in the units of its axes.
 *
 * @param x along the first axis
 * @param y along the second
 */
record Point(double x, double y) {}
