/**
 * The running of what a house and a tank have: states that take events and a clock and say what to do next.
 *
 * <p>Start with {@link evenwater.chemistry.control.SoftenerState} for the valve of a metered softener and with
 * {@link evenwater.chemistry.control.DosingPump} for a dosing pump.
 */
@NullMarked
package evenwater.chemistry.control;

import org.jspecify.annotations.NullMarked;
