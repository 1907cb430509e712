/** Constants and functions of the core as C99 for controllers. */
@SuppressWarnings("requires-automatic") // JavaParser has no module descriptor, but a name in its manifest
module evenwater.firmware {
    requires transitive evenwater.chemistry;
    requires com.github.javaparser.core; // reads the kernel's source; in no signature of ours
    requires static org.jspecify; // annotations only

    exports evenwater.firmware;
}
