package org.vanewright.platform.attachment;

import java.time.Duration;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import software.amazon.awssdk.auth.credentials.AwsBasicCredentials;
import software.amazon.awssdk.auth.credentials.StaticCredentialsProvider;
import software.amazon.awssdk.core.checksums.RequestChecksumCalculation;
import software.amazon.awssdk.core.checksums.ResponseChecksumValidation;
import software.amazon.awssdk.http.urlconnection.UrlConnectionHttpClient;
import software.amazon.awssdk.regions.Region;
import software.amazon.awssdk.services.s3.S3Client;
import software.amazon.awssdk.services.s3.S3ClientBuilder;

/** Chooses where attachments lie. The client is made only where a bucket is named. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(AttachmentSettings.class)
class AttachmentConfiguration {
    private static final Duration ONE_TRY = Duration.ofSeconds(8);
    private static final Duration ALL_TRIES = Duration.ofSeconds(20);

    @Bean
    Attachments attachments(AttachmentSettings settings) {
        return settings.isOutside() ? new Attachments(storage(settings)) : Attachments.IN_ROWS;
    }

    static ObjectStorage storage(AttachmentSettings settings) {
        if ((settings.accessKey() == null) != (settings.secretKey() == null)) {
            throw new IllegalStateException(
                    "vanewright.attachments.access-key and .secret-key stand together or not at all");
        }
        return new S3Storage(client(settings), String.valueOf(settings.bucket()), settings.prefix());
    }

    private static S3Client client(AttachmentSettings settings) {
        S3ClientBuilder builder = S3Client.builder()
                .region(Region.of(settings.region()))
                .forcePathStyle(settings.pathStyle())
                // What every storage that speaks the API understands: a body as it is, with its hash signed.
                .requestChecksumCalculation(RequestChecksumCalculation.WHEN_REQUIRED)
                .responseChecksumValidation(ResponseChecksumValidation.WHEN_REQUIRED)
                .serviceConfiguration(c -> c.chunkedEncodingEnabled(false))
                .httpClientBuilder(UrlConnectionHttpClient.builder())
                .overrideConfiguration(c -> c.apiCallAttemptTimeout(ONE_TRY).apiCallTimeout(ALL_TRIES));
        if (settings.endpoint() != null) {
            builder.endpointOverride(settings.endpoint());
        }
        if (settings.accessKey() != null && settings.secretKey() != null) {
            builder.credentialsProvider(StaticCredentialsProvider.create(
                    AwsBasicCredentials.create(settings.accessKey(), settings.secretKey())));
        }
        return builder.build();
    }
}
