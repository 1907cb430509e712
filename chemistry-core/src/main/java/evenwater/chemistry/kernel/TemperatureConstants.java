package evenwater.chemistry.kernel;

/**
 * All that the solver needs to know of a temperature. Immutable; 25 °C and the last other one are kept, since waters come in series
 * of one temperature, and meters and laboratories ask for 25 °C in between.
 */
final class TemperatureConstants {

    static final TemperatureConstants AT_25_CELSIUS = new TemperatureConstants(298.15);

    @SuppressWarnings("MutableStaticField") // a memory of one immutable value: whoever reads an old one makes its own
    private static volatile TemperatureConstants last = AT_25_CELSIUS;

    final double kelvin;
    /** Debye–Hückel slopes: A for natural logarithms in (kg/mol)^½, B in (kg/mol)^½ per Å. */
    final double debyeHueckelA;

    final double debyeHueckelB;
    /** Constants by place: their logarithms, and the numbers themselves. */
    final double[] ln = new double[EquilibriumConstant.values().length];

    final double[] value = new double[ln.length];

    private TemperatureConstants(double kelvin) {
        this.kelvin = kelvin;
        debyeHueckelA = SolventWater.debyeHueckelA(kelvin);
        debyeHueckelB = SolventWater.debyeHueckelB(kelvin);
        EquilibriumConstant.fill(kelvin, ln);
        for (int i = 0; i < ln.length; i++) {
            value[i] = Math.exp(ln[i]);
        }
    }

    static TemperatureConstants at(double kelvin) {
        if (kelvin == AT_25_CELSIUS.kelvin) {
            return AT_25_CELSIUS;
        }
        TemperatureConstants known = last;
        if (known.kelvin != kelvin) {
            known = new TemperatureConstants(kelvin);
            last = known;
        }
        return known;
    }
}
