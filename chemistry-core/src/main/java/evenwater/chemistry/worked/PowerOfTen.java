package evenwater.chemistry.worked;

/** Ten to the power of a plain number, as pH and lg K are used. */
record PowerOfTen(double exponent) implements Expression {

    @Override
    public double value() {
        return Math.pow(10, exponent);
    }

    @Override
    public double size() {
        return value();
    }

    @Override
    public String text(int digits) {
        return "10^" + Numbers.rounded(exponent, inside(digits));
    }

    @Override
    public String formula(int digits) {
        return "10^{" + Numbers.rounded(exponent, inside(digits)) + "}";
    }

    /** A last digit of the exponent is worth more than two of the power. */
    private static int inside(int digits) {
        return Math.min(17, digits + 2);
    }
}
