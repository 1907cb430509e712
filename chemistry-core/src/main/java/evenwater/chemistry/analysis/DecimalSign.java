package evenwater.chemistry.analysis;

/** What a comma in a number means. */
public enum DecimalSign {

    /** A point marks decimals and a comma groups thousands: {@code 1,250} is 1250, and {@code 3,2} is refused. */
    POINT,

    /** A comma marks decimals and a point groups thousands: {@code 1,250} is 1.25, and {@code 3.2} is refused. */
    COMMA,

    /** Nobody said: {@code 3,2} can only be 3.2 and is read so; {@code 1,250} may be two numbers and is refused. */
    UNSTATED
}
