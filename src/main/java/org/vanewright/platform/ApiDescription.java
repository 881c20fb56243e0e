package org.vanewright.platform;

import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.oas.models.media.ArraySchema;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.IntegerSchema;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.ObjectSchema;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.media.StringSchema;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.responses.ApiResponses;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import org.springdoc.core.customizers.OpenApiCustomizer;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/**
 * Adds to the description of the API what its classes do not say: the answers that are problems, and for each body an
 * example. Calculations have theirs under {@code api/examples/<name>.json}; for a kind of record it is the first
 * document of its demonstration data.
 */
@Component
class ApiDescription implements OpenApiCustomizer {
    private static final String PROBLEM = "Problem";
    private static final String RECORDS = "/api/v1/";
    private static final String DRAFTS = "/api/v1/drafts/";
    private static final String REVIEW = "/api/v1/review/";
    private static final String CALCULATIONS = "/api/v1/calculations/";

    private final JsonMapper mapper;

    ApiDescription(JsonMapper mapper) {
        this.mapper = mapper;
    }

    @Override
    public void customise(OpenAPI api) {
        api.getComponents().addSchemas(PROBLEM, problem());
        api.getPaths().forEach(this::describe);
    }

    private void describe(String path, PathItem item) {
        for (Map.Entry<PathItem.HttpMethod, Operation> entry :
                item.readOperationsMap().entrySet()) {
            Operation operation = entry.getValue();
            boolean calculation = path.startsWith(CALCULATIONS);
            if (operation.getRequestBody() != null) {
                describeBody(path, entry.getKey(), operation, calculation);
            }
            if (operation.getParameters() != null && !operation.getParameters().isEmpty()) {
                add(operation, 400, "A parameter cannot be used.");
            }
            if (path.contains("{slug}")) {
                add(operation, 404, "There is no such record or revision.");
            }
            if (path.startsWith(DRAFTS)) {
                add(operation, 401, "There is no valid token in the Authorization header.");
                add(operation, 404, "You have no such draft.");
            }
        }
    }

    private void describeBody(String path, PathItem.HttpMethod method, Operation operation, boolean calculation) {
        add(operation, 400, "One or more fields cannot be used; all of them are listed.");
        add(operation, 413, "The body is too large.");
        add(operation, 415, "The body is not application/json.");
        if (calculation) {
            add(operation, 429, "Too many calculations from one address; Retry-After says when to go on.");
        } else {
            ApiResponses responses = operation.getResponses();
            ApiResponse ok = method == PathItem.HttpMethod.POST ? responses.remove("200") : null;
            if (ok != null) {
                responses.addApiResponse("201", ok.description("Made; Location and ETag name it."));
            }
            add(operation, 401, "There is no valid token in the Authorization header.");
            add(operation, 403, "The token, or its owner, may not do this.");
        }
        if (path.endsWith("/revisions") || method == PathItem.HttpMethod.PUT) {
            add(operation, 409, "Somebody else was faster, or you have an unfinished draft of this record.");
            add(operation, 412, "If-Match does not name what stands now.");
            add(operation, 428, "If-Match is missing.");
        }
        addExample(path, operation);
    }

    private void addExample(String path, Operation operation) {
        String name = exampleName(path);
        try {
            Resource[] found = new PathMatchingResourcePatternResolver().getResources("classpath*:" + name);
            MediaType body = operation.getRequestBody().getContent().get("application/json");
            if (found.length > 0 && body != null) {
                try (InputStream in = found[0].getInputStream()) {
                    body.setExample(mapper.readValue(in, Object.class));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("no example for " + path, e);
        }
    }

    /** Calculations and steps have examples of their own; records are shown by the demonstration's. */
    private static String exampleName(String path) {
        if (path.startsWith(CALCULATIONS) || path.startsWith(DRAFTS) || path.startsWith(REVIEW)) {
            String last = path.substring(path.lastIndexOf('/') + 1);
            return "api/examples/" + (last.startsWith("{") ? "draft" : last) + ".json";
        }
        return "db/demo/" + path.substring(RECORDS.length()).replaceFirst("/.*", "") + "/*.json";
    }

    private static void add(Operation operation, int status, String description) {
        Schema<?> schema = new Schema<>().$ref("#/components/schemas/" + PROBLEM);
        Content content = new Content().addMediaType("application/problem+json", new MediaType().schema(schema));
        operation
                .getResponses()
                .addApiResponse(
                        Integer.toString(status),
                        new ApiResponse().description(description).content(content));
    }

    private static Schema<?> problem() {
        Schema<?> error = new ObjectSchema()
                .addProperty("field", new StringSchema().description("Path of the field, such as vane.heightMm"))
                .addProperty("value", new StringSchema().description("What was sent, shortened; or missing"))
                .addProperty("allowed", new StringSchema().description("What would be accepted"));
        return new ObjectSchema()
                .description("A problem document (RFC 9457)")
                .addProperty("title", new StringSchema())
                .addProperty("status", new IntegerSchema())
                .addProperty("detail", new StringSchema())
                .addProperty("instance", new StringSchema().description("Path that was asked for"))
                .addProperty("errors", new ArraySchema().items(error).description("With status 400"))
                .addProperty("reference", new StringSchema().description("With status 500: quote it to the keeper"));
    }
}
