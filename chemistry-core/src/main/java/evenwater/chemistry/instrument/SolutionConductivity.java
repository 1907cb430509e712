package evenwater.chemistry.instrument;

/** The conductivity of a reference solution as a function of its concentration; continuous and rising. */
@FunctionalInterface
interface SolutionConductivity {

    /** Returns µS/cm at 25 °C of a solution with so many mg/L of the dissolved salts. */
    double microsiemensPerCentimetre(double milligramsPerLitre);
}
