/** Problem sheets with worked answers, for teachers. */
module evenwater.lessons {
    requires transitive evenwater.chemistry;
    requires static org.jspecify; // annotations only

    exports evenwater.lessons;
}
