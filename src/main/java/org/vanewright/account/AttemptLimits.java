package org.vanewright.account;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.vanewright.account.AttemptRepository.Count;
import org.vanewright.platform.Networks;

/**
 * Slows down guessing. Each attempt is counted before its password is looked at, so that many at once gain nothing; a
 * success takes the account's count back. After some attempts without success the next must wait, each time longer. A
 * network's count fades by itself only: else one account of one's own would open it for guessing at others.
 */
@Component
@EnableConfigurationProperties(AttemptSettings.class)
class AttemptLimits {
    private static final Duration FIRST_WAIT = Duration.ofSeconds(30);
    private static final Duration LONGEST_WAIT = Duration.ofMinutes(15);
    private static final int MOST_DOUBLINGS = 5;

    /** What is counted, and after what rest the count starts anew. */
    private enum Kind {
        ACCOUNT("account:", Duration.ofHours(24)),
        NETWORK("network:", Duration.ofHours(1)),
        /** Apart from the others: a forgotten program with an old token must not keep its network from signing in. */
        TOKENS("tokens:", Duration.ofHours(1));

        private final String prefix;
        private final Duration rest;

        Kind(String prefix, Duration rest) {
            this.prefix = prefix;
            this.rest = rest;
        }
    }

    private final AttemptRepository attempts;
    private final AttemptSettings settings;
    private final Clock clock;

    AttemptLimits(AttemptRepository attempts, AttemptSettings settings, Clock clock) {
        this.attempts = attempts;
        this.settings = settings;
        this.clock = clock;
    }

    /**
     * Counts an attempt.
     *
     * @param account what names the account, whether or not there is one
     * @return how long to wait instead; zero to go on
     */
    Duration begin(String account, String address) {
        Duration network = beginInNetwork(address);
        return network.isZero() ? begin(Kind.ACCOUNT, Secrets.hash(account)) : network;
    }

    /** As {@link #begin}, where there is no account to guess at. */
    Duration beginInNetwork(String address) {
        return begin(Kind.NETWORK, Networks.of(address));
    }

    /** Counts a token that was refused; how long to wait before the next. */
    Duration refusedToken(String address) {
        return begin(Kind.TOKENS, Networks.of(address));
    }

    /** Takes back what {@link #begin} counted. */
    void succeeded(String account, String address) {
        attempts.change(Kind.ACCOUNT.prefix + Secrets.hash(account), ignored -> Count.NONE);
        attempts.change(
                Kind.NETWORK.prefix + Networks.of(address),
                c -> new Count(Math.max(0, c.attempts() - 1), c.lastAt(), c.blockedUntil()));
    }

    /** Forgets what no longer counts. */
    @Scheduled(cron = "0 7 * * * *")
    void tidy() {
        attempts.forgetBefore(clock.instant(), Kind.ACCOUNT.rest);
    }

    private Duration begin(Kind kind, String key) {
        Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        Count before = attempts.change(kind.prefix + key, count -> counted(kind, count, now));
        return before.blockedUntil().isAfter(now) ? Duration.between(now, before.blockedUntil()) : Duration.ZERO;
    }

    private Count counted(Kind kind, Count count, Instant now) {
        if (count.blockedUntil().isAfter(now)) {
            return count;
        }
        int number = count.lastAt().plus(kind.rest).isBefore(now) ? 1 : count.attempts() + 1;
        return new Count(number, now, now.plus(wait(number - free(kind))));
    }

    private int free(Kind kind) {
        return switch (kind) {
            case ACCOUNT -> settings.account();
            case NETWORK -> settings.network();
            case TOKENS -> settings.tokens();
        };
    }

    private static Duration wait(int beyond) {
        if (beyond < 0) {
            return Duration.ZERO;
        }
        Duration wait = FIRST_WAIT.multipliedBy(1L << Math.min(beyond, MOST_DOUBLINGS));
        return wait.compareTo(LONGEST_WAIT) < 0 ? wait : LONGEST_WAIT;
    }
}
