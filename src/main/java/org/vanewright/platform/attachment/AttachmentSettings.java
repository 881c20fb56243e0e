package org.vanewright.platform.attachment;

import java.net.URI;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * Object storage for attachments, by the S3 API.
 *
 * @param bucket absent keeps them in the database
 * @param endpoint of the storage; absent means the one of the region
 * @param region as the storage calls it
 * @param accessKey absent means what the surroundings say, as the client library looks for it
 * @param secretKey with it
 * @param pathStyle whether the bucket stands in the path rather than in the host's name
 * @param prefix in front of every key, so that a bucket may hold other things
 */
@ConfigurationProperties("vanewright.attachments")
record AttachmentSettings(
        @Nullable String bucket,
        @Nullable URI endpoint,
        @DefaultValue("us-east-1") String region,
        @Nullable String accessKey,
        @Nullable String secretKey,
        @DefaultValue("true") boolean pathStyle,
        @DefaultValue("") String prefix) {
    boolean isOutside() {
        return bucket != null && !bucket.isBlank();
    }
}
