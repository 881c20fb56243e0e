package org.vanewright.platform;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.text.Normalizer;
import java.time.Duration;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.info.BuildProperties;
import org.springframework.core.io.Resource;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Component;
import org.springframework.util.StringUtils;
import org.springframework.web.context.request.WebRequest;
import org.vanewright.record.Revision;

/** Sends generated files so that browsers and proxies may keep them: strong ETag, 304, lasting at a fixed revision. */
@Component
public class Downloads {
    private final String build;

    /** A later build may make other bytes from the same records, so the build is part of every ETag. */
    Downloads(ObjectProvider<BuildProperties> builds) {
        BuildProperties properties = builds.getIfAvailable();
        this.build = properties == null ? "" : properties.getVersion() + "@" + properties.getTime();
    }

    /**
     * The response for a file, or 304 where {@code If-None-Match} names it.
     *
     * @param file what to send
     * @param fixedRevision whether the address names an exact revision, so that its answer never changes; otherwise
     *     caches must ask again each time
     */
    public ResponseEntity<byte[]> send(WebRequest request, GeneratedFile file, boolean fixedRevision) {
        return send(request, file, cacheControl(fixedRevision));
    }

    /** As {@link #send(WebRequest, GeneratedFile, boolean)}; a file of what is not public is kept by nobody. */
    public ResponseEntity<byte[]> send(
            WebRequest request, GeneratedFile file, boolean fixedRevision, Revision<?> revision) {
        return send(
                request,
                file,
                revision.isPublic()
                        ? cacheControl(fixedRevision)
                        : CacheControl.noStore().cachePrivate());
    }

    /**
     * A file too large for memory, made on demand.
     *
     * @param contentKey as that of a {@link GeneratedFile}
     * @param path writes it to a place of its own, from where it is sent and then removed
     */
    public record LargeFile(String fileName, MediaType type, String contentKey, Maker path) {}

    /** Writes a file. */
    @FunctionalInterface
    public interface Maker {
        Path write() throws IOException;
    }

    /** As {@link #send(WebRequest, GeneratedFile, boolean, Revision)} for a large file; caches must ask again each time. */
    public ResponseEntity<Resource> send(WebRequest request, LargeFile file, Revision<?> revision) throws IOException {
        CacheControl keeping = revision.isPublic()
                ? cacheControl(false)
                : CacheControl.noStore().cachePrivate();
        String etag = etag(file.contentKey());
        if (matches(request, etag)) {
            return unchanged(etag, keeping);
        }
        Resource sentOnce = new SentOnce(file.path().write());
        return ResponseEntity.ok()
                .eTag(etag)
                .cacheControl(keeping)
                .contentType(file.type())
                .contentLength(sentOnce.contentLength())
                .header(HttpHeaders.CONTENT_DISPOSITION, disposition(file.fileName(), false))
                .header(HttpHeaders.ACCEPT_RANGES, "none")
                .body(sentOnce);
    }

    private String etag(String contentKey) {
        return "\"" + sha256((build + "\n" + contentKey).getBytes(StandardCharsets.UTF_8)) + "\"";
    }

    private static <T> ResponseEntity<T> unchanged(String etag, CacheControl keeping) {
        return ResponseEntity.status(HttpStatus.NOT_MODIFIED)
                .eTag(etag)
                .cacheControl(keeping)
                .build();
    }

    private ResponseEntity<byte[]> send(WebRequest request, GeneratedFile file, CacheControl keeping) {
        String etag = etag(file.contentKey());
        if (matches(request, etag)) {
            return unchanged(etag, keeping);
        }
        byte[] bytes = file.bytes().get();
        return ResponseEntity.ok()
                .eTag(etag)
                .cacheControl(keeping)
                .contentType(file.type())
                .contentLength(bytes.length)
                .header(HttpHeaders.CONTENT_DISPOSITION, disposition(file.fileName(), file.shown()))
                .body(bytes);
    }

    /** SHA-256 as 64 hexadecimal digits, for a content key made from bytes. */
    public static String sha256(byte[] bytes) {
        return HexFormat.of().formatHex(sha256().digest(bytes));
    }

    /** Computes SHA-256 of what comes in pieces. */
    public static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** ASCII letters, digits, dots, hyphens and underscores only, with no dot in front. */
    static String safeName(String name) {
        String ascii = Normalizer.normalize(name, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}+", "")
                .replaceAll("[^A-Za-z0-9._-]+", "-")
                .replaceAll("^[.-]+", "");
        return ascii.isEmpty() ? "file" : ascii;
    }

    private static String disposition(String fileName, boolean shown) {
        var builder = shown ? ContentDisposition.inline() : ContentDisposition.attachment();
        return builder.filename(safeName(fileName)).build().toString();
    }

    private static CacheControl cacheControl(boolean fixedRevision) {
        return fixedRevision
                ? CacheControl.maxAge(Duration.ofDays(365)).cachePublic().immutable()
                : CacheControl.noCache().cachePublic();
    }

    private static boolean matches(WebRequest request, String etag) {
        String @Nullable [] values = request.getHeaderValues(HttpHeaders.IF_NONE_MATCH);
        if (values == null) {
            return false;
        }
        for (String value : values) {
            for (String candidate : StringUtils.commaDelimitedListToStringArray(value)) {
                String tag = candidate.strip();
                // RFC 9110, 13.1.2: weak comparison, so that a proxy's W/ mark does not matter.
                if (tag.equals("*") || tag.equals(etag) || tag.equals("W/" + etag)) {
                    return true;
                }
            }
        }
        return false;
    }
}
