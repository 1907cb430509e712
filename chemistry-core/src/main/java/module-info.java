/** Unit-aware water chemistry. */
@SuppressWarnings("requires-automatic") // Hipparchus has no module descriptor: its modules are named after its files
module evenwater.chemistry {
    requires transitive java.measure; // Quantity and Unit are in our signatures
    requires tech.units.indriya; // how units are made; in no signature of ours
    requires hipparchus.core; // exceptions of the solver; in no signature of ours
    requires hipparchus.optim; // linear programmes of recipes; in no signature of ours
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
    exports evenwater.chemistry.recipe;
    exports evenwater.chemistry.substance;
    exports evenwater.chemistry.treatment;
    exports evenwater.chemistry.uncertainty;
    exports evenwater.chemistry.verdict;
    exports evenwater.chemistry.water;
    exports evenwater.chemistry.worked;
}
