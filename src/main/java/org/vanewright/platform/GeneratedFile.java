package org.vanewright.platform;

import java.nio.charset.StandardCharsets;
import java.util.function.Supplier;
import org.springframework.http.MediaType;

/**
 * A file made on demand, a pure function of what its key names.
 *
 * @param fileName proposed to the person who saves it; made safe before it is sent
 * @param type of its content
 * @param contentKey names everything the bytes depend on beside the revision that they are sent for, which {@link Downloads} adds:
 *     hashes of the other revisions used and every parameter; two files with the same key have the same bytes
 * @param shown true to show it in the browser where it can, false to save it
 * @param bytes makes the content; not called when the caller holds it already
 */
public record GeneratedFile(String fileName, MediaType type, String contentKey, boolean shown, Supplier<byte[]> bytes) {
    /** A table as it is now, with nothing else to name what it depends on. */
    public static GeneratedFile csv(String fileName, String table) {
        byte[] bytes = table.getBytes(StandardCharsets.UTF_8);
        MediaType type = new MediaType("text", "csv", StandardCharsets.UTF_8);
        return new GeneratedFile(fileName, type, Downloads.sha256(bytes), false, () -> bytes);
    }
}
