package evenwater.chemistry.quantity;

/** The program whose start-up {@link StartUpTest} looks at. */
final class OneConversion {

    private OneConversion() {}

    public static void main(String[] args) {
        Hardness tap = Hardness.parse("22 gpg");
        System.out.println(tap + " is " + tap.in(Hardness.GERMAN_DEGREE) + " °dH");
    }
}
