package org.vanewright.platform;

import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.MeterRegistry;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.text.Normalizer;
import java.time.Duration;
import java.util.HexFormat;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.info.BuildProperties;
import org.springframework.core.io.FileSystemResource;
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
import org.vanewright.platform.files.KeptFile;
import org.vanewright.platform.files.KeptFiles;
import org.vanewright.platform.files.KeptLargeFiles;
import org.vanewright.platform.files.WorkingFiles;
import org.vanewright.record.Revision;

/** Sends generated files so that browsers and proxies may keep them: strong ETag, 304, lasting at a fixed revision. */
@Component
public class Downloads {
    private final String build;
    private final KeptFiles kept;
    private final KeptLargeFiles large;
    private final WorkingFiles working;
    private final RenderLimit limit;
    private final Counter notModified;

    /** A later build may make other bytes from the same records, so the build is part of every ETag. */
    Downloads(
            ObjectProvider<BuildProperties> builds,
            KeptFiles kept,
            KeptLargeFiles large,
            WorkingFiles working,
            RenderLimit limit,
            MeterRegistry meters) {
        this.kept = kept;
        this.large = large;
        this.working = working;
        this.limit = limit;
        this.notModified = Counter.builder("vanewright.files.not.modified")
                .description("Files that whoever asked had already")
                .register(meters);
        BuildProperties properties = builds.getIfAvailable();
        this.build = properties == null ? "" : properties.getVersion() + "@" + properties.getTime();
    }

    /**
     * The response for a file, or 304 where {@code If-None-Match} names it. It is made each time.
     *
     * @param file what to send
     * @param fixedRevision whether the address names an exact revision, so that its answer never changes; otherwise
     *     caches must ask again each time
     */
    public ResponseEntity<byte[]> send(WebRequest request, GeneratedFile file, boolean fixedRevision) {
        String tag = tag(file.contentKey());
        return matches(request, quoted(tag))
                ? notModified(tag, cacheControl(fixedRevision))
                : answer(request, made(file), tag, cacheControl(fixedRevision));
    }

    /** As {@link #send(WebRequest, String, boolean, Revision, Supplier)}, where the file's name takes no work. */
    public ResponseEntity<byte[]> send(
            WebRequest request, GeneratedFile file, boolean fixedRevision, Revision<?> revision) {
        return send(request, file.contentKey(), fixedRevision, revision, () -> file);
    }

    /**
     * A file of one revision, from what is kept where it is. A file of what is not public is made each time and kept by
     * nobody.
     *
     * @param contentKey names everything the file depends on beside the revision
     * @param file makes the file; not called where it is kept, or whoever asks holds it already
     */
    public ResponseEntity<byte[]> send(
            WebRequest request,
            String contentKey,
            boolean fixedRevision,
            Revision<?> revision,
            Supplier<GeneratedFile> file) {
        // When and by whom it was submitted stands on files, and tells apart databases that are filled alike.
        String tag = tag(String.join(
                "\n",
                revision.slug(),
                Integer.toString(revision.number()),
                revision.contentKey(),
                revision.createdAt().toString(),
                revision.contributor(),
                Boolean.toString(revision.isPublic()),
                Boolean.toString(revision.isReleased()),
                contentKey));
        CacheControl keeping = revision.isPublic()
                ? cacheControl(fixedRevision)
                : CacheControl.noStore().cachePrivate();
        if (matches(request, quoted(tag))) {
            return notModified(tag, keeping);
        }
        if (revision.isPublic()) {
            return answer(request, kept.get(tag, () -> limit.admit(request), () -> made(file.get())), tag, keeping);
        }
        limit.admit(request);
        return answer(request, made(file.get()), tag, keeping);
    }

    /**
     * A file too large for memory.
     *
     * @param contentKey as that of a {@link GeneratedFile}
     * @param maker writes it
     */
    public record LargeFile(String fileName, MediaType type, String contentKey, KeptLargeFiles.Maker maker) {}

    /** As {@link #send(WebRequest, GeneratedFile, boolean, Revision)} for a large file; caches must ask again each time. */
    public ResponseEntity<Resource> send(WebRequest request, LargeFile file, Revision<?> revision) throws IOException {
        CacheControl keeping = revision.isPublic()
                ? cacheControl(false)
                : CacheControl.noStore().cachePrivate();
        String tag = tag(file.contentKey());
        if (matches(request, quoted(tag))) {
            return notModified(tag, keeping);
        }
        return ResponseEntity.ok()
                .eTag(quoted(tag))
                .cacheControl(keeping)
                .contentType(file.type())
                .header(HttpHeaders.CONTENT_DISPOSITION, disposition(file.fileName(), false))
                .body(revision.isPublic() ? kept(request, tag, file) : once(request, file));
    }

    private Resource kept(WebRequest request, String tag, LargeFile file) throws IOException {
        KeptLargeFiles.Held held = large.get(tag, () -> limit.admit(request), file.maker());
        return held.isKept() ? new FileSystemResource(held.path()) : new SentOnce(held.path());
    }

    private Resource once(WebRequest request, LargeFile file) throws IOException {
        limit.admit(request);
        return new SentOnce(working.written("sent", file.maker()));
    }

    /**
     * Counts work for one address as a file that is made is counted.
     *
     * @throws org.springframework.web.ErrorResponseException 429 with {@code Retry-After}
     */
    public void admit(WebRequest request) {
        limit.admit(request);
    }

    /** RFC 9110, 13.1.2: a star means any file that there is, which is known when it could be made. */
    private ResponseEntity<byte[]> answer(WebRequest request, KeptFile file, String tag, CacheControl keeping) {
        return matches(request, "*") ? notModified(tag, keeping) : sent(file, tag, keeping);
    }

    private String tag(String key) {
        return sha256((build + "\n" + key).getBytes(StandardCharsets.UTF_8));
    }

    private static String quoted(String tag) {
        return "\"" + tag + "\"";
    }

    private static KeptFile made(GeneratedFile file) {
        return new KeptFile(
                safeName(file.fileName()),
                file.type().toString(),
                file.shown(),
                file.bytes().get());
    }

    private <T> ResponseEntity<T> notModified(String tag, CacheControl keeping) {
        notModified.increment();
        return ResponseEntity.status(HttpStatus.NOT_MODIFIED)
                .eTag(quoted(tag))
                .cacheControl(keeping)
                .build();
    }

    private static ResponseEntity<byte[]> sent(KeptFile file, String tag, CacheControl keeping) {
        return ResponseEntity.ok()
                .eTag(quoted(tag))
                .cacheControl(keeping)
                .contentType(MediaType.parseMediaType(file.type()))
                .contentLength(file.bytes().length)
                .header(HttpHeaders.CONTENT_DISPOSITION, disposition(file.fileName(), file.shown()))
                .body(file.bytes());
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
                if (tag.equals(etag) || tag.equals("W/" + etag)) {
                    return true;
                }
            }
        }
        return false;
    }
}
