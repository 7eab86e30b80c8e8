package rinsebell.demo.rules;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.temporal.Temporal;
import java.util.Date;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Time is handed in, and no test waits for it to pass. */
class TimeTest {
    private static final Set<String> SYSTEM_CLOCKS = Set.of("currentTimeMillis", "nanoTime");
    private static final Set<String> SLEEPS = Set.of("sleep", "parkNanos", "parkUntil", "delayedExecutor");

    /** What JMH makes of a benchmark is not ours, and has to look at a clock. */
    private static final String BENCHMARKS = "..jmh_generated..";

    /** Ways to let a check rest. */
    private static final Pattern RESTING = Pattern.compile("@(Disabled|Ignore)\\b|\\bassum(e|ing)(True|False|That)\\b");

    @Test
    void onlyTheOneClockReadsClocks() {
        noClasses()
                .that()
                .resideOutsideOfPackages("rinsebell.app.time..", BENCHMARKS)
                .should()
                .accessTargetWhere(readsAClock())
                .check(House.PROGRAM);
    }

    @Test
    void nothingSleeps() {
        noClasses().should().accessTargetWhere(sleeps()).check(House.PROGRAM);
        noClasses().should().accessTargetWhere(sleeps()).check(House.TESTS);
    }

    /** How long something took may be counted. */
    @Test
    void noTestReadsTheWallClock() {
        noClasses()
                .should()
                .accessTargetWhere(readsAClock().and(DescribedPredicate.not(counts())))
                .check(House.TESTS);
    }

    @Test
    void noTestRests() throws IOException {
        try (var files = Files.walk(House.TOP)) {
            assertThat(files.filter(path -> path.toString().endsWith(".java"))
                            .filter(path -> path.toString().contains("src/test"))
                            .filter(path -> !path.endsWith("TimeTest.java")))
                    .noneMatch(TimeTest::rests);
        }
    }

    private static boolean rests(Path source) {
        try {
            return RESTING.matcher(Files.readString(source)).find();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static DescribedPredicate<JavaAccess<?>> readsAClock() {
        return DescribedPredicate.describe("it reads a clock", access -> isAClock(access.getTarget()));
    }

    private static DescribedPredicate<JavaAccess<?>> counts() {
        return DescribedPredicate.describe(
                "counts", access -> access.getTarget().getName().equals("nanoTime"));
    }

    private static boolean isAClock(AccessTarget target) {
        var owner = target.getOwner();
        return (owner.isEquivalentTo(System.class) && SYSTEM_CLOCKS.contains(target.getName()))
                || (owner.isAssignableTo(Temporal.class) && target.getName().equals("now"))
                || (owner.isEquivalentTo(Clock.class) && isASource(target.getName()))
                || (owner.isEquivalentTo(Date.class) && isWithoutArguments(target));
    }

    private static boolean isASource(String method) {
        return method.startsWith("system") || method.startsWith("tick");
    }

    private static boolean isWithoutArguments(AccessTarget target) {
        return target instanceof AccessTarget.ConstructorCallTarget made
                && made.getRawParameterTypes().isEmpty();
    }

    private static DescribedPredicate<JavaAccess<?>> sleeps() {
        return DescribedPredicate.describe(
                "it sleeps",
                access -> SLEEPS.contains(access.getTarget().getName())
                        && isWaiting(access.getTarget().getOwner()));
    }

    private static boolean isWaiting(JavaClass owner) {
        return owner.isAssignableTo(Thread.class)
                || owner.isEquivalentTo(TimeUnit.class)
                || owner.isEquivalentTo(LockSupport.class)
                || owner.isEquivalentTo(java.util.concurrent.CompletableFuture.class);
    }
}
