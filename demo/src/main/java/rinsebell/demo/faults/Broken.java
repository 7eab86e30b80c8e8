package rinsebell.demo.faults;

/** A rule did not hold. */
final class Broken extends AssertionError {
    private static final long serialVersionUID = 1L;

    private final Rule rule;

    Broken(Rule rule, String what) {
        super(rule + ": " + what);
        this.rule = rule;
    }

    Rule rule() {
        return rule;
    }

    /** @throws Broken when it does not hold */
    static void unless(boolean holds, Rule rule, java.util.function.Supplier<String> what) {
        if (!holds) {
            throw new Broken(rule, what.get());
        }
    }
}
