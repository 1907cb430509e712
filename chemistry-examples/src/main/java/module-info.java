/** Small programs that use the chemistry core. */
module evenwater.examples {
    requires evenwater.chemistry;
    requires evenwater.lessons;
    requires evenwater.pictures;
    requires info.picocli;
    requires org.apache.commons.csv;
    requires static org.jspecify; // annotations only

    opens evenwater.examples.lessons to
            info.picocli;
    opens evenwater.examples.household to
            info.picocli; // fills the fields of the commands by reflection
}
