package org.vanewright.platform;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import tools.jackson.core.JacksonException;
import tools.jackson.core.json.JsonReadFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.exc.MismatchedInputException;
import tools.jackson.databind.exc.UnrecognizedPropertyException;
import tools.jackson.databind.json.JsonMapper;

/** Says in the caller's words why a JSON body could not be read. */
final class UnreadableJson {
    private UnreadableJson() {}

    /** Reads what {@link StrictJson} reads, into a tree, which never finds a value of the wrong type. */
    private static final JsonMapper TREE = JsonMapper.builder()
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .build();

    /**
     * The problems of a body.
     *
     * @param cause what reading it threw; {@code null} where there was nothing to read
     * @param body as it was sent
     */
    static List<FieldProblem> explain(@Nullable Throwable cause, byte[] body) {
        for (Throwable link = cause; link != null; link = link.getCause()) {
            if (link instanceof InvalidInputException refusal) {
                String prefix = cause instanceof JacksonException outer ? path(outer) : "";
                return prefix.isEmpty()
                        ? refusal.problems()
                        : refusal.problems().stream().map(p -> p.under(prefix)).toList();
            }
        }
        if (cause instanceof UnrecognizedPropertyException unknown) {
            return List.of(new FieldProblem(path(unknown), "not known here", "one of " + known(unknown)));
        }
        if (cause instanceof MismatchedInputException mismatch) {
            return List.of(
                    new FieldProblem(bodyOr(path(mismatch)), value(mismatch, body), allowed(mismatch.getTargetType())));
        }
        if (cause instanceof JacksonException malformed) {
            var place = malformed.getLocation();
            String where = place == null ? "" : " at line " + place.getLineNr() + ", column " + place.getColumnNr();
            return List.of(new FieldProblem(
                    bodyOr(path(malformed)), "not JSON" + where, "a JSON document (RFC 8259), each property once"));
        }
        return List.of(new FieldProblem("body", "missing", "a JSON document (RFC 8259)"));
    }

    private static String bodyOr(String path) {
        return path.isEmpty() ? "body" : path;
    }

    /** The path as the caller wrote it, such as {@code surfaces[0].panels[1].outerChordMm}. */
    private static String path(JacksonException e) {
        StringBuilder path = new StringBuilder();
        for (JacksonException.Reference step : e.getPath()) {
            if (step.getPropertyName() == null) {
                path.append('[').append(step.getIndex()).append(']');
            } else {
                path.append(path.isEmpty() ? "" : ".").append(step.getPropertyName());
            }
        }
        return path.toString();
    }

    private static String known(UnrecognizedPropertyException unknown) {
        Collection<Object> names = unknown.getKnownPropertyIds();
        return names == null
                ? "the documented properties"
                : names.stream().map(Objects::toString).sorted().collect(Collectors.joining(", "));
    }

    private static String value(JacksonException refused, byte[] body) {
        JsonNode node;
        try {
            node = TREE.readTree(body);
        } catch (JacksonException e) {
            return "not JSON";
        }
        for (JacksonException.Reference step : refused.getPath()) {
            node = step.getPropertyName() == null ? node.path(step.getIndex()) : node.path(step.getPropertyName());
        }
        if (node.isMissingNode() || node.isNull()) {
            return "missing";
        }
        String text = node.isObject() ? "an object" : node.isArray() ? "an array" : node.asString();
        return text.length() <= 80 ? text : text.substring(0, 77) + "…";
    }

    static String allowed(@Nullable Class<?> target) {
        if (target == null) {
            return "a value of the documented type";
        }
        if (target.isEnum()) {
            return "one of "
                    + Arrays.stream(target.getEnumConstants())
                            .map(Object::toString)
                            .collect(Collectors.joining(", "));
        }
        if (List.of(int.class, Integer.class, long.class, Long.class).contains(target)) {
            return "a whole number";
        }
        if (target == double.class || Number.class.isAssignableFrom(target)) {
            return "a number";
        }
        if (target == boolean.class || target == Boolean.class) {
            return "true or false";
        }
        if (CharSequence.class.isAssignableFrom(target)) {
            return "text";
        }
        boolean list = target.isArray() || Collection.class.isAssignableFrom(target);
        return list
                ? "an array"
                : Map.class.isAssignableFrom(target) || !target.isPrimitive() ? "an object" : "a value";
    }
}
