package org.vanewright.account;

import java.time.Duration;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.vanewright.account.OneTimeLink.Purpose;

/** Makes links to choose a new password; a person's earlier ones end. */
@Component
class ResetLinks {
    static final Duration LIFETIME = Duration.ofHours(1);

    private final ResetLinkRepository earlier;
    private final Links links;
    private final BaseUrl baseUrl;

    ResetLinks(ResetLinkRepository earlier, Links links, BaseUrl baseUrl) {
        this.earlier = earlier;
        this.links = links;
        this.baseUrl = baseUrl;
    }

    /** The whole address of the link. */
    @Transactional
    String make(Person person, String createdBy) {
        earlier.endAll(person.id());
        Links.Made made = links.make(Purpose.RESET, null, person.id(), "", createdBy, LIFETIME);
        return baseUrl.of("/reset/" + made.secret());
    }
}
