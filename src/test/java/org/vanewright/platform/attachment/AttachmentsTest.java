package org.vanewright.platform.attachment;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.vanewright.platform.Outage;

class AttachmentsTest {
    private static final Instant NOW = Instant.parse("2026-05-17T10:00:00Z");
    private static final byte[] BYTES = "a picture".getBytes(UTF_8);

    private final TestBucket bucket = TestBucket.start();
    private final Attachments attachments = bucket.attachments();

    @AfterEach
    void close() {
        bucket.close();
    }

    @Test
    void bytesLieInTheBucketOrInTheirRow() {
        assertThat(attachments.keep("photographs/ab/large.jpg", BYTES)).isNull();
        assertThat(bucket.keys()).containsExactly("of-tests/photographs/ab/large.jpg");
        assertThat(attachments.read(null, "photographs/ab/large.jpg")).isEqualTo(BYTES);
        assertThat(bucket.refused()).isEmpty();
        assertThat(Attachments.IN_ROWS.keep("photographs/ab/large.jpg", BYTES)).isEqualTo(BYTES);
        byte[] before = "kept before there was a bucket".getBytes(UTF_8);
        assertThat(attachments.read(before, "photographs/cd/large.jpg")).isEqualTo(before);
    }

    @Test
    void whatIsGoneOrCannotBeReachedIsSaid() {
        assertThatThrownBy(() -> attachments.read(null, "photographs/ef/large.jpg"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("photographs/ef/large.jpg is not in the object storage");
        assertThatThrownBy(() -> Attachments.IN_ROWS.read(null, "photographs/ef/large.jpg"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("vanewright.attachments.bucket is not set");
        bucket.breakDown();
        assertThatThrownBy(() -> attachments.keep("photographs/ab/large.jpg", BYTES))
                .isInstanceOf(AttachmentsAwayException.class)
                .satisfies(e -> assertThat(Outage.of(e)).isEqualTo(Outage.ATTACHMENTS_AWAY))
                .satisfies(e -> assertThat(Outage.ATTACHMENTS_AWAY.passes()).isTrue());
        assertThat(bucket.keys()).isEmpty();
    }

    @Test
    void halfAKeyIsNoKey() {
        AttachmentSettings s = bucket.settings("");
        AttachmentSettings half = new AttachmentSettings(
                s.bucket(), s.endpoint(), s.region(), s.accessKey(), null, s.pathStyle(), s.prefix());
        assertThatThrownBy(() -> AttachmentConfiguration.storage(half)).hasMessageContaining("secret-key");
    }

    private AttachmentSweep sweep() {
        AttachmentFolder folder = new AttachmentFolder() {
            @Override
            public String name() {
                return "logs";
            }

            @Override
            public Set<String> existing(Collection<String> owners) {
                return owners.stream().filter(o -> o.startsWith("kept")).collect(Collectors.toSet());
            }
        };
        return new AttachmentSweep(attachments, List.of(folder), Clock.fixed(NOW, ZoneOffset.UTC));
    }

    /** A day old, over several pages of a list; nothing of other folders. */
    @Test
    void whatBelongsToNobodyIsRemovedOnceItIsOld() {
        for (String key :
                List.of("logs/gone/0", "logs/gone/1", "logs/gone/2", "logs/kept/0", "logs/lost/0", "photos/x")) {
            attachments.keep(key, BYTES);
        }
        bucket.changedAt = NOW.minus(23, ChronoUnit.HOURS);
        sweep().sweep();
        assertThat(bucket.keys()).hasSize(6);
        bucket.changedAt = NOW.minus(25, ChronoUnit.HOURS);
        sweep().sweep();
        assertThat(bucket.keys()).containsExactly("of-tests/logs/kept/0", "of-tests/photos/x");
        bucket.breakDown();
        sweep().sweep();
    }
}
