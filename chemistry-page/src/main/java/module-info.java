/** A page for teachers: what is asked, what the core answers, and the HTML around it. */
module evenwater.page {
    requires transitive evenwater.chemistry;
    requires static org.jspecify; // annotations only

    exports evenwater.page;
}
