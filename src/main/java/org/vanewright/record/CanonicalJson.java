package org.vanewright.record;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import org.erdtman.jcs.JsonCanonicalizer;
import org.springframework.stereotype.Component;
import tools.jackson.core.json.JsonWriteFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Writes a document in the one form that is stored and hashed: JSON by the JSON Canonicalization Scheme (A. Rundgren,
 * B. Jordan, S. Erdtman, 2020, RFC 8785).
 *
 * <p>Absent values are left out, so that a property added later does not change the hash of documents that lack it. Only
 * components and fields are written, never what a getter computes. Whole numbers must stay within ±2<sup>53</sup>, since
 * RFC 8785 has double precision only.
 */
@Component
public class CanonicalJson {
    private final JsonMapper mapper = JsonMapper.builder()
            .changeDefaultPropertyInclusion(
                    ignored -> JsonInclude.Value.construct(JsonInclude.Include.NON_NULL, JsonInclude.Include.ALWAYS))
            .changeDefaultVisibility(checker -> checker.withFieldVisibility(Visibility.ANY)
                    .withGetterVisibility(Visibility.NONE)
                    .withIsGetterVisibility(Visibility.NONE))
            .disable(JsonWriteFeature.WRITE_NAN_AS_STRINGS)
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .build();

    /**
     * The document as canonical JSON.
     *
     * @throws IllegalArgumentException if it holds a number that JSON has no form for (NaN, infinite)
     */
    public String write(Object document) {
        return canonicalize(mapper.writeValueAsString(document));
    }

    /** Paths of the numbers that JSON has no form for, such as {@code rows[0].pitchMm}. */
    public List<String> unwritable(Object document) {
        List<String> found = new ArrayList<>();
        collectUnwritable("", mapper.valueToTree(document), found);
        return found;
    }

    private static void collectUnwritable(String path, JsonNode node, List<String> found) {
        if (node.isFloatingPointNumber() && !Double.isFinite(node.doubleValue())) {
            found.add(path);
        }
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            collectUnwritable(path + "[" + i + "]", node.get(i), found);
        }
        for (Map.Entry<String, JsonNode> part : node.properties()) {
            collectUnwritable(path.isEmpty() ? part.getKey() : path + "." + part.getKey(), part.getValue(), found);
        }
    }

    /** Any JSON object or array in canonical form. */
    public String canonicalize(String json) {
        try {
            return new JsonCanonicalizer(json).getEncodedString();
        } catch (IOException e) {
            throw new IllegalArgumentException("not JSON that can be made canonical: " + e.getMessage(), e);
        }
    }

    /** Reads what {@link #write} wrote; properties that the type no longer has are passed over. */
    public <T> T read(String json, Class<T> type) {
        return mapper.readValue(json, type);
    }

    /** SHA-256 of the text's UTF-8 bytes, as 64 lower-case hexadecimal digits. */
    public String sha256(String canonical) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(canonical.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
