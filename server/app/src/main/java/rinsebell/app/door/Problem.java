package rinsebell.app.door;

import java.util.List;

/**
 * A request that is answered with no.
 *
 * @param code which kind
 * @param fields what is wrong with which field; empty when it is not about fields
 */
public record Problem(ProblemCode code, List<FieldProblem> fields) {
    public Problem {
        fields = List.copyOf(fields);
    }

    /** A problem that is not about fields. */
    public static Problem of(ProblemCode code) {
        return new Problem(code, List.of());
    }

    /** As an exception, for handlers deep in a request. */
    public ProblemException thrown() {
        return new ProblemException(this);
    }
}
