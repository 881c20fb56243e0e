package org.vanewright.campaign.log;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.springframework.context.ApplicationContext;

/** Waits for what is read in the background. */
public final class Reading {
    private Reading() {}

    /** Returns when everything that waits is read. */
    public static void finish(ApplicationContext service) {
        try {
            service.getBean(LogReader.class).wake().get(60, TimeUnit.SECONDS);
        } catch (ExecutionException | TimeoutException e) {
            throw new AssertionError(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }
}
