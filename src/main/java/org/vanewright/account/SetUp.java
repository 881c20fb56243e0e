package org.vanewright.account;

import java.time.Duration;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.vanewright.account.OneTimeLink.Purpose;

/** Shows who runs the machine how to become the first steward: by a link in the log, and by nothing else. */
@Component
@ConditionalOnWebApplication
class SetUp {
    private static final Logger LOG = LoggerFactory.getLogger(SetUp.class);
    private static final Duration LIFETIME = Duration.ofHours(24);

    private final PersonRepository people;
    private final SettingRepository settings;
    private final LinkRepository stored;
    private final Links links;
    private final BaseUrl baseUrl;

    SetUp(PersonRepository people, SettingRepository settings, LinkRepository stored, Links links, BaseUrl baseUrl) {
        this.people = people;
        this.settings = settings;
        this.stored = stored;
        this.links = links;
        this.baseUrl = baseUrl;
    }

    @EventListener(ApplicationReadyEvent.class)
    void offer() {
        if (isOpen()) {
            LOG.info(
                    "No steward yet. Within {} hours, open {} to become the first one.",
                    LIFETIME.toHours(),
                    baseUrl.of("/set-up/" + newSecret()));
        }
    }

    boolean isOpen() {
        return settings.setUpIsOpen() && !people.otherActive(List.of(Role.STEWARD), "");
    }

    /** Of a link that takes the place of every earlier one. */
    String newSecret() {
        stored.endAll(Purpose.SET_UP);
        return links.make(Purpose.SET_UP, Role.STEWARD, null, "", "the service itself", LIFETIME)
                .secret();
    }
}
