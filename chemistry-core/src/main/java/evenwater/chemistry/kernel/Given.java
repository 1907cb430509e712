package evenwater.chemistry.kernel;

/** Which two figures of the carbonate system are known; the solver finds the others. */
public enum Given {
    /** pH, and alkalinity in mol/kg. */
    PH_AND_ALKALINITY(true, false, true, false),
    /** pH, and inorganic carbon in mol/kg. */
    PH_AND_CARBON(true, false, false, true),
    /** pH, and the activity of CO₂ in mol/kg. */
    PH_AND_CARBON_DIOXIDE(true, true, false, false),
    /** Alkalinity and inorganic carbon, both in mol/kg: what a water conserves. */
    ALKALINITY_AND_CARBON(false, false, true, true),
    /** Alkalinity in mol/kg, and the activity of CO₂ in mol/kg. */
    ALKALINITY_AND_CARBON_DIOXIDE(false, true, true, false),
    /** Inorganic carbon in mol/kg, and the activity of CO₂ in mol/kg. */
    CARBON_AND_CARBON_DIOXIDE(false, true, false, true);

    final boolean acid;
    final boolean carbonDioxide;
    final boolean alkalinity;
    final boolean carbon;

    Given(boolean acid, boolean carbonDioxide, boolean alkalinity, boolean carbon) {
        this.acid = acid;
        this.carbonDioxide = carbonDioxide;
        this.alkalinity = alkalinity;
        this.carbon = carbon;
    }

    /** The alkalinity among the two figures, where it is one. */
    double alkalinity(double first, double second) {
        return acid ? second : first;
    }

    /** The inorganic carbon among the two figures, where it is one. */
    double carbon(double first, double second) {
        return carbonDioxide ? first : second;
    }

    /** Tells whether there is carbon at all; without any, nothing is solved for. */
    boolean hasCarbon(double second) {
        return this == PH_AND_ALKALINITY || second != 0;
    }
}
