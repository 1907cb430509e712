package evenwater.examples.household;

import evenwater.chemistry.verdict.Evidence;
import evenwater.chemistry.verdict.Requirements;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * What is asked about the tank.
 *
 * @param kind what it asks of its water; empty for all kinds
 * @param readings adds what a kit showed
 */
record TankWish(Optional<Requirements> kind, UnaryOperator<Evidence> readings) {}
