package org.vanewright.kit;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.vanewright.platform.Downloads;
import org.vanewright.platform.StoredZip;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** A kit taken apart, to be changed and closed again with hashes that agree. */
final class TestKit {
    private static final JsonMapper MAPPER = new JsonMapper();
    private final Map<String, byte[]> files = new LinkedHashMap<>();

    static TestKit of(byte[] zip) {
        TestKit kit = new TestKit();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry e = in.getNextEntry(); e != null; e = in.getNextEntry()) {
                kit.files.put(e.getName(), in.readAllBytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return kit;
    }

    Map<String, byte[]> files() {
        return files;
    }

    String text(String name) {
        return new String(files.get(name), StandardCharsets.UTF_8);
    }

    TestKit put(String name, String text) {
        files.put(name, text.getBytes(StandardCharsets.UTF_8));
        return this;
    }

    TestKit change(String name, UnaryOperator<String> how) {
        String before = text(name);
        String after = how.apply(before);
        if (after.equals(before)) {
            throw new AssertionError("nothing changed in " + name + ": " + before);
        }
        return put(name, after);
    }

    JsonNode index() {
        return MAPPER.readTree(files.get("kit.json"));
    }

    /** Path of the first document of that kind. */
    String document(String plural) {
        for (JsonNode entry : index().get("revisions")) {
            if (entry.get("plural").asString().equals(plural)) {
                return entry.get("path").asString();
            }
        }
        throw new AssertionError("no document of " + plural);
    }

    /** Takes the hashes of the files as they are now into index, crate and manifest. */
    TestKit rehash() {
        ObjectNode index = (ObjectNode) index();
        for (JsonNode entry : index.get("revisions")) {
            byte[] document = files.get(entry.path("path").asString(""));
            if (document != null) {
                ((ObjectNode) entry).put("sha256", Downloads.sha256(document));
            }
        }
        put("kit.json", index.toString());
        return described();
    }

    /** Takes the hashes of the files into crate and manifest, not into the index. */
    TestKit described() {
        ObjectNode crate = (ObjectNode) MAPPER.readTree(files.get("ro-crate-metadata.json"));
        for (JsonNode entity : crate.get("@graph")) {
            byte[] file = files.get(entity.get("@id").asString());
            if (entity.has("sha256") && file != null) {
                ((ObjectNode) entity).put("sha256", Downloads.sha256(file));
            }
        }
        put("ro-crate-metadata.json", crate.toString());
        return sealedOnly();
    }

    /** Takes the hashes into the manifest alone. */
    TestKit sealedOnly() {
        StringBuilder manifest = new StringBuilder();
        files.forEach((name, bytes) -> {
            if (!name.equals("manifest-sha256.txt")) {
                manifest.append(Downloads.sha256(bytes))
                        .append("  ")
                        .append(name)
                        .append('\n');
            }
        });
        return put("manifest-sha256.txt", manifest.toString());
    }

    byte[] zip() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (StoredZip zip = new StoredZip(out)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                zip.add(file.getKey(), file.getValue());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
