package org.vanewright.record;

import static org.mockito.Mockito.mock;

/** Summaries of which none is kept, for tests without a database. */
public final class NothingKept {
    private NothingKept() {}

    public static Summaries summaries() {
        return new Summaries(mock(SummaryRepository.class), new CanonicalJson());
    }
}
