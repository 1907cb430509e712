package evenwater.chemistry.treatment;

import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;

/**
 * The two streams of a membrane.
 *
 * @param permeate what passes
 * @param concentrate what goes to the drain; with the permeate it holds all of the feed
 * @param adjusted the ion whose passage was adjusted until the permeate was neutral; HCO₃⁻ stands for alkalinity
 */
public record MembraneStreams(Water permeate, Water concentrate, Ion adjusted) {}
