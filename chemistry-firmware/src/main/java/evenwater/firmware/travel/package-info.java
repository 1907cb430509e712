/** A program of the kernel alone, to be translated whole for machines without a JVM. */
@NullMarked
package evenwater.firmware.travel;

import org.jspecify.annotations.NullMarked;
