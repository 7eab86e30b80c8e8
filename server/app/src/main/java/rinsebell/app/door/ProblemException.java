package rinsebell.app.door;

/** Ends a request with a problem. It carries no stack: it is an answer, not a bug. */
public final class ProblemException extends RuntimeException {

    private final transient Problem problem;

    ProblemException(Problem problem) {
        super(problem.code().code(), null, false, false);
        this.problem = problem;
    }

    Problem problem() {
        return problem;
    }
}
