/** Unit-aware water chemistry. */
module evenwater.chemistry {
    requires transitive java.measure; // Quantity and Unit are in our signatures
    requires tech.units.indriya; // how units are made; in no signature of ours
    requires static org.jspecify; // annotations only

    exports evenwater.chemistry.analysis;
    exports evenwater.chemistry.aquarium;
    exports evenwater.chemistry.control;
    exports evenwater.chemistry.equilibrium;
    exports evenwater.chemistry.exchange;
    exports evenwater.chemistry.instrument;
    exports evenwater.chemistry.kernel;
    exports evenwater.chemistry.planning;
    exports evenwater.chemistry.quantity;
    exports evenwater.chemistry.substance;
    exports evenwater.chemistry.treatment;
    exports evenwater.chemistry.uncertainty;
    exports evenwater.chemistry.verdict;
    exports evenwater.chemistry.water;
}
