/** How long a program takes to its first answer, and how little memory it needs: see {@code docs/small-machines.md}. */
@NullMarked
package evenwater.examples.startup;

import org.jspecify.annotations.NullMarked;
