package rinsebell.demo.rules;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every part of others in what is shipped stands in its lists: the one for people, and the one for machines (CycloneDX). */
class PartsIT {
    /** A part, and its licence below it. */
    private static final Pattern LISTED = Pattern.compile("(?m)^([\\w.-]+:[\\w.-]+ [\\w.-]+).*\\R {4}\\S");

    private static final Pattern NAMED = Pattern.compile("META-INF/maven/[^/]+/[^/]+/pom.properties");

    /** What lies inside another part, which has taken it in under its own name. */
    private static final Pattern TAKEN_IN = Pattern.compile("org\\.antlr:antlr4-runtime .*");

    @ParameterizedTest
    @CsvSource({
        "server/app/main/target, -server.jar, THIRD-PARTY.txt",
        "demo/main/target, -demo.jar, THIRD-PARTY-demo.txt"
    })
    void whatLiesInTheProgramIsListedWithItsLicence(String folder, String ending, String list) throws IOException {
        try (var jar = new ZipFile(jar(folder, ending).toFile())) {
            var text = text(jar, "META-INF/" + list);
            assertThat(listed(text)).hasSizeGreaterThan(60).containsAll(inside(jar));
            assertThat(jar.stream().map(Object::toString).filter(name -> name.endsWith(".woff2")))
                    .hasSize(4)
                    .allMatch(name -> name.contains("/b612-"));
            assertThat(text).contains("B612 and B612 Mono");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "server/app/main/target, -server.jar, THIRD-PARTY.txt, server.cdx.json",
        "demo/main/target, -demo.jar, THIRD-PARTY-demo.txt, demo.cdx.json"
    })
    @DisabledIfSystemProperty(
            named = "rinsebell.maven",
            matches = "offline: true",
            disabledReason = "what writes it for machines is left out by offline Maven")
    void theListForMachinesNamesTheSameParts(String folder, String ending, String list, String machines)
            throws IOException {
        try (var jar = new ZipFile(jar(folder, ending).toFile())) {
            var bom = new ObjectMapper().readTree(text(jar, "META-INF/sbom/" + machines));
            assertThat(bom.path("bomFormat").asText()).isEqualTo("CycloneDX");
            Set<String> named = new TreeSet<>();
            bom.path("components").forEach(part -> {
                assertThat(part.path("licenses")).as(part.path("name").asText()).isNotEmpty();
                named.add(part.path("group").asText() + ":" + part.path("name").asText());
            });
            named.removeIf(part -> part.startsWith("rinsebell:"));
            Set<String> people = new TreeSet<>();
            listed(text(jar, "META-INF/" + list)).stream()
                    .filter(part -> !TAKEN_IN.matcher(part).matches())
                    .forEach(part -> people.add(part.substring(0, part.indexOf(' '))));
            assertThat(named).isEqualTo(people);
        }
    }

    @Test
    void theProgramSaysSoByItself() throws Exception {
        var jar = jar("server/app/main/target", "-server.jar");
        var java = ProcessHandle.current().info().command().orElseThrow();
        var told = new ProcessBuilder(java, "-jar", jar.toString(), "licences").start();
        var said = new String(told.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(told.waitFor()).isZero();
        try (var zip = new ZipFile(jar.toFile())) {
            assertThat(said).isEqualTo(text(zip, "META-INF/THIRD-PARTY.txt"));
        }
    }

    private static Set<String> inside(ZipFile jar) throws IOException {
        Set<String> parts = new TreeSet<>();
        for (var entry : jar.stream()
                .filter(one -> NAMED.matcher(one.getName()).matches())
                .toList()) {
            var named = new Properties();
            named.load(jar.getInputStream(entry));
            var group = named.getProperty("groupId");
            if (!group.equals("rinsebell")) {
                parts.add(group + ":" + named.getProperty("artifactId") + " " + named.getProperty("version"));
            }
        }
        return parts;
    }

    private static Set<String> listed(String text) {
        Set<String> parts = new TreeSet<>();
        LISTED.matcher(text).results().forEach(found -> parts.add(found.group(1)));
        return parts;
    }

    private static String text(ZipFile jar, String name) throws IOException {
        var entry = Objects.requireNonNull(jar.getEntry(name), name);
        return new String(jar.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
    }

    private static Path jar(String folder, String ending) throws IOException {
        try (var files = Files.list(House.TOP.resolve(folder))) {
            return files.filter(file -> file.toString().endsWith(ending))
                    .findFirst()
                    .orElseThrow();
        }
    }
}
