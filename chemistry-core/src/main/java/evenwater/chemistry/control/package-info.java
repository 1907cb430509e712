/**
 * The running of what a house and a tank have: states that take events and a clock and say what to do next.
 *
 * <p>Start with {@link evenwater.chemistry.control.DosingPump}.
 */
@NullMarked
package evenwater.chemistry.control;

import org.jspecify.annotations.NullMarked;
