package rinsebell.app.api;

import com.atlassian.oai.validator.OpenApiInteractionValidator;
import com.atlassian.oai.validator.model.Request;
import com.atlassian.oai.validator.model.SimpleResponse;
import com.atlassian.oai.validator.report.LevelResolver;
import com.atlassian.oai.validator.report.SimpleValidationReportFormat;
import com.atlassian.oai.validator.report.ValidationReport.Level;
import com.atlassian.oai.validator.restassured.OpenApiValidationFilter;
import org.jspecify.annotations.Nullable;

/** Holds calls of the API against the API's own description; what differs from it fails the call. */
public final class Described {

    private static final String DESCRIPTION = "rinsebell/app/openapi.yaml";

    /** For calls that are right: the request and its answer. */
    public static final OpenApiValidationFilter BOTH = new OpenApiValidationFilter(DESCRIPTION);

    private static final OpenApiInteractionValidator ONLY_ANSWERS =
            OpenApiInteractionValidator.createForSpecificationUrl(DESCRIPTION)
                    .withLevelResolver(LevelResolver.create()
                            .withLevel("validation.request", Level.IGNORE)
                            .build())
                    .build();

    /** For calls that are wrong on purpose: only the answer. */
    public static final OpenApiValidationFilter ANSWERS = new OpenApiValidationFilter(ONLY_ANSWERS);

    private Described() {}

    /** The same of an answer to whoever asked by other means. */
    public static void answers(String method, String path, int status, @Nullable String type, String body) {
        var answer = SimpleResponse.Builder.status(status).withBody(body);
        if (type != null) {
            answer.withContentType(type);
        }
        var report = ONLY_ANSWERS.validateResponse(path, Request.Method.valueOf(method), answer.build());
        if (report.hasErrors()) {
            throw new AssertionError(method + " " + path + ": "
                    + SimpleValidationReportFormat.getInstance().apply(report));
        }
    }
}
