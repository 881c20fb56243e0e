package org.vanewright.platform;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import java.time.Duration;
import java.util.concurrent.TimeUnit;

/** Counts what each network asks this instance for in a minute. */
final class NetworkBuckets {
    private final int perMinute;
    private final Cache<String, Bucket> buckets;

    /** @param tracked networks counted at a time; the least used are forgotten first */
    NetworkBuckets(int perMinute, int tracked) {
        this.perMinute = perMinute;
        // After two idle minutes a bucket is full again, so that forgetting it changes nothing.
        this.buckets = Caffeine.newBuilder()
                .maximumSize(tracked)
                .expireAfterAccess(Duration.ofMinutes(2))
                .build();
    }

    /** Counts one more; seconds to wait where that is one too many, otherwise 0. */
    long take(String remoteAddress) {
        Bucket bucket = buckets.get(Networks.of(remoteAddress), ignored -> newBucket());
        ConsumptionProbe probe = bucket.tryConsumeAndReturnRemaining(1);
        return probe.isConsumed() ? 0 : TimeUnit.NANOSECONDS.toSeconds(probe.getNanosToWaitForRefill()) + 1;
    }

    private Bucket newBucket() {
        return Bucket.builder()
                .addLimit(limit -> limit.capacity(perMinute).refillGreedy(perMinute, Duration.ofMinutes(1)))
                .build();
    }
}
