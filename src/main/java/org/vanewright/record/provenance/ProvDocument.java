package org.vanewright.record.provenance;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A document of the PROV data model in the making, in the form of PROV-JSON (T. D. Huynh, M. O. Jewell, A. S. Keshavarz,
 * D. T. Michaelides, H. Yang, L. Moreau: The PROV-JSON Serialization, W3C Member Submission, 24 April 2013).
 */
final class ProvDocument {
    private final Map<String, Map<String, Object>> parts = new LinkedHashMap<>();
    private int relations;

    ProvDocument prefix(String prefix, String namespace) {
        part("prefix").put(prefix, namespace);
        return this;
    }

    /** An element of that kind: {@code entity}, {@code activity} or {@code agent}. */
    Attributes element(String kind, String id) {
        Attributes attributes = new Attributes();
        part(kind).put(id, attributes.map);
        return attributes;
    }

    /** A relation without an identity of its own, such as {@code used}. */
    Attributes relation(String kind) {
        Attributes attributes = new Attributes();
        part(kind).put("_:r" + ++relations, attributes.map);
        return attributes;
    }

    /** Ready to be written as JSON. */
    Map<String, Map<String, Object>> parts() {
        return parts;
    }

    private Map<String, Object> part(String name) {
        return parts.computeIfAbsent(name, n -> new LinkedHashMap<>());
    }

    /** What is said of an element or a relation. What is absent is left out. */
    static final class Attributes {
        private final Map<String, Object> map = new LinkedHashMap<>();

        Attributes text(String name, @Nullable String text) {
            if (text != null && !text.isEmpty()) {
                map.put(name, text);
            }
            return this;
        }

        Attributes time(String name, @Nullable Instant time) {
            return text(name, time == null ? null : time.toString());
        }

        Attributes number(String name, int number) {
            return typed(name, Integer.toString(number), "xsd:int");
        }

        /** A qualified name as a value. */
        Attributes name(String name, String qualified) {
            return typed(name, qualified, "prov:QUALIFIED_NAME");
        }

        Attributes typed(String name, @Nullable String lexical, String type) {
            if (lexical != null && !lexical.isEmpty()) {
                map.put(name, Map.of("$", lexical, "type", type));
            }
            return this;
        }
    }
}
