package rinsebell.db;

import java.sql.SQLException;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

/** Looks through an exception to what it comes from. */
final class Causes {

    private Causes() {}

    static Stream<Throwable> of(Throwable thrown) {
        return Stream.iterate(thrown, Objects::nonNull, Throwable::getCause);
    }

    static Throwable innermost(Throwable thrown) {
        return of(thrown).reduce(thrown, (outer, inner) -> inner);
    }

    /** Whether the database answered with one of these codes. */
    static boolean haveCode(Throwable thrown, Set<Integer> codes) {
        return of(thrown).anyMatch(cause -> cause instanceof SQLException sql && codes.contains(sql.getErrorCode()));
    }

    /** What it was, in a word and a number: a message may quote what somebody typed. */
    static String told(Throwable thrown) {
        return of(thrown)
                .filter(SQLException.class::isInstance)
                .map(cause -> "database error " + ((SQLException) cause).getErrorCode())
                .findFirst()
                .orElseGet(() -> innermost(thrown).getClass().getSimpleName());
    }
}
