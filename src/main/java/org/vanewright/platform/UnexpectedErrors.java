package org.vanewright.platform;

import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Logs what nobody foresaw under a reference; only the reference goes out. */
final class UnexpectedErrors {
    static final String TITLE = "Something went wrong here";
    static final String DETAIL = "The service could not answer this request. Nothing was saved.";

    private static final Logger LOG = LoggerFactory.getLogger(UnexpectedErrors.class);

    private UnexpectedErrors() {}

    /** The reference under which the error is found in the log. */
    static String log(Throwable error) {
        String request = RequestIds.current();
        String reference = request == null ? UUID.randomUUID().toString() : request;
        LOG.error("unexpected error {}", reference, error);
        return reference;
    }
}
