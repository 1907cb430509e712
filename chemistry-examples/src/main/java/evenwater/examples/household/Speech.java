package evenwater.examples.household;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import javax.measure.Unit;

/**
 * The units that the reader speaks.
 *
 * @param hardness unit of hardness
 * @param alkalinity unit of alkalinity
 */
record Speech(Unit<Hardness> hardness, Unit<Alkalinity> alkalinity) {}
