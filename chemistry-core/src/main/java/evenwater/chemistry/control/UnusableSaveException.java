package evenwater.chemistry.control;

/** Thrown when a saved state cannot be used: torn, damaged, of another version, or made under other settings. */
public final class UnusableSaveException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /**
     * Creates the exception.
     *
     * @param problem what is wrong with the save, without a final dot
     */
    public UnusableSaveException(String problem) {
        super(problem);
    }
}
