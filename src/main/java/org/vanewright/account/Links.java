package org.vanewright.account;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.account.OneTimeLink.Purpose;

/** Makes links that work once. Their secrets are given out once, too. */
@Component
class Links {
    private final LinkRepository links;
    private final Clock clock;
    private final Secrets secrets = new Secrets();

    Links(LinkRepository links, Clock clock) {
        this.links = links;
        this.clock = clock;
    }

    /** A link and the secret that nobody can find out later. */
    record Made(OneTimeLink link, String secret) {}

    Made make(
            Purpose purpose,
            @Nullable Role role,
            @Nullable String personId,
            String note,
            String createdBy,
            Duration lifetime) {
        Instant now = now();
        OneTimeLink link = new OneTimeLink(
                UUID.randomUUID().toString(), purpose, role, personId, note, createdBy, now, now.plus(lifetime));
        String secret = secrets.next();
        links.add(link, secret);
        return new Made(link, secret);
    }

    Optional<OneTimeLink> open(Purpose purpose, String secret) {
        return links.open(purpose, secret, now());
    }

    /** True for exactly one of those who try. */
    boolean use(OneTimeLink link) {
        return links.use(link.id(), now());
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
