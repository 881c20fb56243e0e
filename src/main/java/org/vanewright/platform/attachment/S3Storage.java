package org.vanewright.platform.attachment;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import software.amazon.awssdk.core.exception.SdkException;
import software.amazon.awssdk.core.sync.RequestBody;
import software.amazon.awssdk.services.s3.S3Client;
import software.amazon.awssdk.services.s3.model.NoSuchKeyException;
import software.amazon.awssdk.services.s3.model.ObjectIdentifier;

/** A bucket that speaks the S3 API. */
final class S3Storage implements ObjectStorage {
    /** Most that the API removes at once. */
    private static final int MOST_REMOVED = 1000;

    private final S3Client client;
    private final String bucket;
    private final String prefix;

    S3Storage(S3Client client, String bucket, String prefix) {
        this.client = client;
        this.bucket = bucket;
        this.prefix = prefix;
    }

    @Override
    public void put(String key, byte[] bytes) {
        asked(
                "keep " + key,
                () -> client.putObject(r -> r.bucket(bucket).key(prefix + key), RequestBody.fromBytes(bytes)));
    }

    @Override
    public Optional<byte[]> get(String key) {
        return asked("read " + key, () -> {
            try {
                return Optional.of(client.getObjectAsBytes(r -> r.bucket(bucket).key(prefix + key))
                        .asByteArray());
            } catch (NoSuchKeyException e) {
                return Optional.empty();
            }
        });
    }

    @Override
    public void list(String folder, Consumer<List<Listed>> some) {
        asked("list " + folder, () -> {
            client.listObjectsV2Paginator(r -> r.bucket(bucket).prefix(prefix + folder)).stream()
                    .map(page -> page.contents().stream()
                            .map(o -> new Listed(o.key().substring(prefix.length()), o.lastModified()))
                            .toList())
                    .forEach(some);
            return true;
        });
    }

    @Override
    public void remove(Collection<String> keys) {
        List<ObjectIdentifier> all = keys.stream()
                .map(key -> ObjectIdentifier.builder().key(prefix + key).build())
                .toList();
        for (int from = 0; from < all.size(); from += MOST_REMOVED) {
            List<ObjectIdentifier> some = all.subList(from, Math.min(all.size(), from + MOST_REMOVED));
            asked(
                    "remove " + some.size() + " objects",
                    () -> client.deleteObjects(
                            r -> r.bucket(bucket).delete(d -> d.objects(some).quiet(true))));
        }
    }

    private <T> T asked(String what, Callable<T> question) {
        try {
            return question.call();
        } catch (SdkException e) {
            throw new AttachmentsAwayException("object storage could not " + what, e);
        } catch (RuntimeException e) {
            throw e;
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }
}
