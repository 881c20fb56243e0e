package org.vanewright.platform;

import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.annotation.Profile;
import org.springframework.context.event.EventListener;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/**
 * Ends the service as soon as it is ready, where the profile {@code start-only} is on: Java then writes down which classes
 * a start needs.
 */
@Component
@Profile("start-only")
class StartOnly {
    /** On a thread of its own: the start waits for this listener, and the end for the start. */
    @EventListener(ApplicationReadyEvent.class)
    @Order(Ordered.LOWEST_PRECEDENCE)
    void end() {
        new Thread(() -> System.exit(0), "start-only").start();
    }
}
