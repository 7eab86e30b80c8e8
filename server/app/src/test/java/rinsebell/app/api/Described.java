package rinsebell.app.api;

import com.atlassian.oai.validator.OpenApiInteractionValidator;
import com.atlassian.oai.validator.report.LevelResolver;
import com.atlassian.oai.validator.report.ValidationReport.Level;
import com.atlassian.oai.validator.restassured.OpenApiValidationFilter;

/** Holds calls of the API against the API's own description; what differs from it fails the call. */
public final class Described {

    private static final String DESCRIPTION = "rinsebell/app/openapi.yaml";

    /** For calls that are right: the request and its answer. */
    public static final OpenApiValidationFilter BOTH = new OpenApiValidationFilter(DESCRIPTION);

    /** For calls that are wrong on purpose: only the answer. */
    public static final OpenApiValidationFilter ANSWERS =
            new OpenApiValidationFilter(OpenApiInteractionValidator.createForSpecificationUrl(DESCRIPTION)
                    .withLevelResolver(LevelResolver.create()
                            .withLevel("validation.request", Level.IGNORE)
                            .build())
                    .build());

    private Described() {}
}
