package org.vanewright.security;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/** Fields of forms as tables and tests write them. */
final class Forms {
    private Forms() {}

    /** Of {@code a=b&c=d}, encoded as in an address. */
    static Map<String, String> fields(String body) {
        Map<String, String> fields = new LinkedHashMap<>();
        Arrays.stream(body.split("&", -1))
                .filter(field -> !field.isEmpty())
                .map(field -> field.split("=", 2))
                .forEach(field -> fields.put(field[0], URLDecoder.decode(field[1], StandardCharsets.UTF_8)));
        return fields;
    }

    static Map<String, String> with(Map<String, String> fields, String name, String value) {
        Map<String, String> more = new LinkedHashMap<>(fields);
        more.put(name, value);
        return more;
    }
}
