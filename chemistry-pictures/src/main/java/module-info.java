/** Pictures of waters and what is done to them, as SVG. */
module evenwater.pictures {
    requires transitive evenwater.chemistry;
    requires static org.jspecify; // annotations only

    exports evenwater.pictures;
}
