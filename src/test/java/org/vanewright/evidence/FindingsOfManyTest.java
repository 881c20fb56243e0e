package org.vanewright.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyCollection;
import static org.mockito.ArgumentMatchers.anyInt;
import static org.mockito.Mockito.clearInvocations;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.verifyNoMoreInteractions;
import static org.mockito.Mockito.when;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignService;
import org.vanewright.campaign.Campaigns;
import org.vanewright.campaign.FlyingOrder;
import org.vanewright.campaign.Measure;
import org.vanewright.campaign.PlanDocument;
import org.vanewright.record.NothingKept;
import org.vanewright.record.RecordState;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionHead;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.Standing;

/** A catalogue of five thousand campaigns is neither read nor reduced again for each page. */
class FindingsOfManyTest {
    private static final int MANY = 5000;
    private static final PlanDocument PLAN = Campaigns.plan(Measure.STALL_SPEED, FlyingOrder.ONE_AFTER_ANOTHER);
    private static final Instant AT = Instant.parse("2026-03-01T00:00:00Z");

    private final List<RevisionHead> heads = IntStream.range(0, MANY)
            .mapToObj(i -> new RevisionHead("campaign-" + i, 1, hash(i), AT.minusSeconds(i)))
            .toList();
    private final CampaignService campaigns = mock(CampaignService.class);
    private final FindingReader reader = mock(FindingReader.class);
    private final CountDownLatch reduced = new CountDownLatch(MANY);

    private static String hash(int i) {
        return String.format("%064x", i);
    }

    private static Revision<CampaignDocument> campaign(RevisionRef ref) {
        int i = Integer.parseInt(ref.slug().replace("campaign-", ""));
        return new Revision<>(
                ref.slug(),
                ref.revision(),
                RecordState.PUBLISHED,
                new CampaignDocument("Campaign", null, PLAN, false),
                hash(i),
                "Somebody",
                AT,
                null,
                new Standing(null, null, null, null, AT, "Somebody", null, null, null));
    }

    @Test
    void eachIsReducedOnceAndAPageAsksOneStatement() throws InterruptedException {
        when(campaigns.heads(anyInt(), anyInt())).thenReturn(heads);
        List<Integer> batches = new ArrayList<>();
        when(campaigns.allPublic(anyCollection())).thenAnswer(call -> {
            Collection<RevisionRef> refs = call.getArgument(0);
            synchronized (batches) {
                batches.add(refs.size());
            }
            return refs.stream().map(FindingsOfManyTest::campaign).toList();
        });
        when(reader.of(any())).thenAnswer(call -> {
            reduced.countDown();
            return List.of();
        });
        Findings findings = new Findings(campaigns, reader, NothingKept.summaries());
        Findings.Known first = findings.all();
        assertThat(first.campaigns()).isEqualTo(MANY);
        assertThat(reduced.await(30, TimeUnit.SECONDS))
                .as("the rest in the background")
                .isTrue();
        findings.stop();
        Findings.Known second = findings.all();
        synchronized (batches) {
            assertThat(batches).allMatch(size -> size <= Findings.AT_ONCE);
        }
        // The last of the background may still be on its way into the cache.
        assertThat(second.awaited()).isLessThanOrEqualTo(1);
        findings.all();
        clearInvocations(campaigns, reader);
        assertThat(findings.all().awaited()).isZero();
        verify(campaigns).heads(0, Findings.MOST_CAMPAIGNS);
        verifyNoMoreInteractions(campaigns, reader);
    }
}
