package rinsebell.demo.rules;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Means that the server has no use for, and that whoever breaks in would look for (OWASP ASVS 5.0, V1, V11 and V13). */
class SafeMeansTest {
    private static final JavaClasses SERVER = House.PROGRAM.that(resideOutsideOfPackages("rinsebell.demo.."));

    private static final Set<String> RUNNING = Set.of("java.lang.ProcessBuilder", "java.lang.Process");

    /** Ways to reach another machine; the one that tells the network a name is a library's (mDNS). */
    private static final Set<String> CALLING = Set.of(
            "java.net.Socket",
            "java.net.DatagramSocket",
            "java.net.MulticastSocket",
            "java.net.URLConnection",
            "java.net.HttpURLConnection",
            "java.nio.channels.DatagramChannel",
            "javax.net.SocketFactory",
            "javax.net.ssl.SSLSocketFactory");

    private static final Set<String> READING_OBJECTS =
            Set.of("java.io.ObjectInputStream", "java.beans.XMLDecoder", "org.yaml.snakeyaml.constructor.Constructor");

    /** Anybody can tell from a few of their numbers which come next. */
    private static final Set<String> GUESSABLE =
            Set.of("java.util.Random", "java.util.concurrent.ThreadLocalRandom", "java.util.SplittableRandom");

    @Test
    void nothingIsRunThatIsNotTheProgram() {
        noClasses()
                .should()
                .dependOnClassesThat(isOneOf(RUNNING).or(resideInAnyPackage("javax.script..", "javax.tools..")))
                .orShould()
                .accessTargetWhere(calls("exec", "forName", "defineClass", "invoke"))
                .check(SERVER);
    }

    @Test
    void noOtherMachineIsCalled() {
        noClasses()
                .should()
                .dependOnClassesThat(isOneOf(CALLING).or(resideInAnyPackage("java.net.http..")))
                .orShould()
                .accessTargetWhere(calls("openStream", "openConnection"))
                .orShould()
                .accessTargetWhere(connects())
                .check(SERVER);
    }

    /** Whoever has called may be looked at by their channel; none is opened here. */
    private static DescribedPredicate<JavaAccess<?>> connects() {
        return DescribedPredicate.describe(
                "connects",
                access -> Set.of("open", "connect").contains(access.getTarget().getName())
                        && access.getTargetOwner().getName().matches("java\\.nio\\.channels\\..*SocketChannel")
                        && !access.getTargetOwner().getName().contains("Server"));
    }

    /** Only values of kinds that the reader names: JSON into trees, YAML by its safe constructor. */
    @Test
    void noObjectIsReadThatNamesItsOwnClass() {
        noClasses()
                .should()
                .dependOnClassesThat(isOneOf(READING_OBJECTS))
                .orShould()
                .accessTargetWhere(calls("activateDefaultTyping", "enableDefaultTyping", "readObject"))
                .orShould()
                .beAnnotatedWith("com.fasterxml.jackson.annotation.JsonTypeInfo")
                .check(SERVER);
    }

    @Test
    void thereIsNoXmlNoDirectoryAndNoMail() {
        noClasses()
                .should()
                .dependOnClassesThat(resideInAnyPackage(
                        "javax.xml..",
                        "org.xml..",
                        "org.w3c..",
                        "javax.naming..",
                        "javax.mail..",
                        "jakarta.mail..",
                        "java.rmi.."))
                .check(SERVER);
    }

    /** The solver's own numbers are always the same on purpose, and decide nothing but how long it looks. */
    @Test
    void nothingIsDrawnThatCouldBeGuessed() {
        noClasses()
                .that()
                .resideOutsideOfPackage("rinsebell.planner..")
                .should()
                .dependOnClassesThat(isOneOf(GUESSABLE))
                .orShould()
                .accessTargetWhere(calls("random"))
                .check(SERVER);
    }

    /** Memory is the JVM's to give and take. */
    @Test
    void noMemoryIsReachedPastTheJvm() {
        noClasses()
                .should()
                .dependOnClassesThat(resideInAnyPackage("sun.misc..", "jdk.internal..", "java.lang.foreign.."))
                .orShould()
                .accessTargetWhere(calls("loadLibrary", "allocateDirect"))
                .check(SERVER);
    }

    private static DescribedPredicate<JavaClass> isOneOf(Set<String> names) {
        return DescribedPredicate.describe("is one of " + names, type -> names.contains(type.getName()));
    }

    /** Methods of the JDK and of Jackson by their name; our own may be called so. */
    private static DescribedPredicate<JavaAccess<?>> calls(String... methods) {
        Set<String> names = Set.of(methods);
        return DescribedPredicate.describe(
                "calls " + names,
                access -> names.contains(access.getTarget().getName())
                        && access.getTargetOwner().getName().matches("(javax?|com\\.fasterxml)\\..*"));
    }
}
