/** Constants and functions of the core as C99 for controllers. */
module evenwater.firmware {
    requires transitive evenwater.chemistry;
    requires static org.jspecify; // annotations only
}
