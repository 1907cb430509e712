package evenwater.page;

/** Thrown where the core refuses what a control says. */
final class RefusedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Problem problem;

    RefusedException(Problem problem, Throwable cause) {
        super(problem.message(), cause);
        this.problem = problem;
    }

    Problem problem() {
        return problem;
    }
}
