package evenwater.chemistry.treatment;

import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;

/**
 * One line of a ledger.
 *
 * @param name what the treatment is
 * @param before the water in front of it
 * @param change what went in and out; its charges add up to zero
 * @param after the water behind it
 */
public record Stage(String name, Water before, Change change, Water after) {}
