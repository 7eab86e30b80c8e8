package rinsebell.app.api;

import static org.assertj.core.api.Assertions.assertThat;

import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.parser.OpenAPIV3Parser;
import io.swagger.v3.parser.core.models.ParseOptions;
import io.swagger.v3.parser.core.models.SwaggerParseResult;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bell.Audience;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.bell.Stage;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.client.ClientNote;
import rinsebell.floor.clock.Limit;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Kind;
import rinsebell.floor.product.Zone;
import rinsebell.floor.salon.Role;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.Ending;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.web.Codes;

/** The description, held against the standard and against the words of the code. */
class DescriptionTest {

    @Test
    void theParserHasNothingToSay() throws IOException {
        SwaggerParseResult result = parsed();
        assertThat(result.getMessages()).isEmpty();
        assertThat(result.getOpenAPI().getOpenapi()).isEqualTo("3.0.3");
    }

    static Stream<Arguments> choices() {
        return Stream.of(
                Arguments.of("Kind", Kind.class),
                Arguments.of("Zone", Zone.class),
                Arguments.of("Cover", Cover.class),
                Arguments.of("Heat", Heat.class),
                Arguments.of("Area", Area.class),
                Arguments.of("BowlReason", BowlReason.class),
                Arguments.of("ScalpFinding", ScalpCheck.Finding.class),
                Arguments.of("Grade", Complaint.Grade.class),
                Arguments.of("NoteKind", ClientNote.Kind.class),
                Arguments.of("Role", Role.class),
                Arguments.of("BellKind", BellKind.class),
                Arguments.of("Stage.step", Stage.Step.class),
                Arguments.of("Stage.priority", Priority.class),
                Arguments.of("Stage.audience", Audience.class),
                Arguments.of("Limit.why", Limit.Why.class),
                Arguments.of("StrandPress.tone", StrandFinding.Tone.class),
                Arguments.of("StrandPress.stretch", StrandFinding.Stretch.class),
                Arguments.of("StrandPress.dryness", StrandFinding.Dryness.class),
                Arguments.of("Ended.how", Ending.How.class));
    }

    /** A choice that the code has and the description has not, or the other way round, is found here. */
    @ParameterizedTest
    @MethodSource("choices")
    void choicesAreThoseOfTheCode(String schema, Class<? extends Enum<?>> choice) throws IOException {
        List<String> codes =
                Arrays.stream(choice.getEnumConstants()).map(Codes::of).toList();
        assertThat(values(schema)).containsExactlyInAnyOrderElementsOf(codes);
    }

    @Test
    void everyBasisIsDescribed() throws IOException {
        assertThat(values("Reason.basis"))
                .containsExactlyElementsOf(
                        Arrays.stream(ReasonCode.Basis.values()).map(Enum::name).toList());
    }

    private static List<String> values(String path) throws IOException {
        String[] parts = path.split("\\.");
        OpenAPI api = parsed().getOpenAPI();
        Schema<?> schema =
                Objects.requireNonNull(api.getComponents().getSchemas().get(parts[0]));
        Schema<?> one = parts.length == 1
                ? schema
                : Objects.requireNonNull((Schema<?>) schema.getProperties().get(parts[1]));
        return one.getEnum().stream().map(String::valueOf).toList();
    }

    private static SwaggerParseResult parsed() throws IOException {
        ParseOptions options = new ParseOptions();
        options.setResolve(true);
        return new OpenAPIV3Parser().readContents(yaml(), null, options);
    }

    private static String yaml() throws IOException {
        try (var in =
                Objects.requireNonNull(DescriptionTest.class.getResourceAsStream("/rinsebell/app/openapi.yaml"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
