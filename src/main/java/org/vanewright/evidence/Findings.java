package org.vanewright.evidence;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.annotation.PreDestroy;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignService;
import org.vanewright.platform.BackgroundStop;
import org.vanewright.record.Lists;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionHead;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.Summaries;

/**
 * Every published comparison. What a campaign came to depends on nothing but its revision, so each is reduced once and kept
 * in the database. Of those an instance has not met before, a page view takes {@value #AT_ONCE} and leaves the rest to the
 * background.
 */
@Service
public class Findings {
    /** More campaigns than this are not looked at; the newest count. */
    public static final int MOST_CAMPAIGNS = 20_000;

    /** A campaign takes up to a twentieth of a second, most of it for the flow over its layouts. */
    static final int AT_ONCE = 20;

    /** As many as one statement asks for. */
    private static final int ASKED_FOR = 200;

    private static final Summaries.Kind<OfCampaign> KIND = new Summaries.Kind<>("finding", 1, OfCampaign.class);

    private static final Logger LOG = LoggerFactory.getLogger(Findings.class);

    private final CampaignService campaigns;
    private final FindingReader reader;
    private final Summaries summaries;
    private final Cache<RevisionHash, List<Finding>> kept =
            Caffeine.newBuilder().maximumSize(MOST_CAMPAIGNS).build();
    private volatile boolean stopped;
    private final ThreadPoolExecutor background =
            new ThreadPoolExecutor(0, 1, 1, TimeUnit.MINUTES, new ArrayBlockingQueue<>(1), work -> {
                Thread thread = new Thread(work, "findings");
                thread.setDaemon(true);
                return thread;
            });

    /** Two records may say the same, such as one that was imported twice. */
    private record RevisionHash(RevisionRef ref, String sha256) {}

    Findings(CampaignService campaigns, FindingReader reader, Summaries summaries) {
        this.campaigns = campaigns;
        this.reader = reader;
        this.summaries = summaries;
    }

    /** As it is kept in the database. */
    record OfCampaign(List<Finding> findings) {
        OfCampaign {
            findings = Lists.present(findings);
        }
    }

    /**
     * All that is known by now.
     *
     * @param findings of the published revision of each campaign, newest first
     * @param campaigns how many are published
     * @param awaited how many of them are still to be reduced
     */
    public record Known(List<Finding> findings, int campaigns, int awaited) {
        public Known {
            findings = List.copyOf(findings);
        }
    }

    /** Another text whenever other campaigns are published than before. */
    String state() {
        return campaigns.publishedState();
    }

    /** Of all published campaigns: one statement, and what those not met before take. */
    public Known all() {
        List<RevisionHead> heads = campaigns.heads(0, MOST_CAMPAIGNS);
        List<RevisionHead> unknown =
                heads.stream().filter(h -> kept.getIfPresent(key(h)) == null).toList();
        read(unknown.subList(0, Math.min(AT_ONCE, unknown.size())));
        if (unknown.size() > AT_ONCE) {
            readOn(unknown.subList(AT_ONCE, unknown.size()));
        }
        List<Finding> findings = new ArrayList<>();
        int awaited = 0;
        for (RevisionHead head : heads) {
            List<Finding> known = kept.getIfPresent(key(head));
            if (known == null) {
                awaited++;
            } else {
                findings.addAll(known);
            }
        }
        return new Known(findings, heads.size(), awaited);
    }

    /** Of one exact revision of a campaign; empty where it is not public or nothing can be said. */
    public List<Finding> ofCampaign(RevisionRef ref) {
        return campaigns.find(ref).filter(Revision::isPublic).map(this::of).orElse(List.of());
    }

    /** Of published campaigns that flew exactly that revision of a layout, newest first. */
    public List<Finding> ofLayout(RevisionRef ref) {
        return ofLayout(ref.slug()).stream().filter(f -> f.layout().equals(ref)).toList();
    }

    /** Of published campaigns that flew any revision of a layout, newest first. */
    public List<Finding> ofLayout(String slug) {
        return campaigns.withLayout(slug).stream()
                .flatMap(campaign -> of(campaign).stream())
                .filter(f -> f.layout().slug().equals(slug))
                .toList();
    }

    private List<Finding> of(Revision<CampaignDocument> campaign) {
        return kept.get(new RevisionHash(campaign.ref(), campaign.sha256()), k -> reader.of(campaign));
    }

    private void read(List<RevisionHead> heads) {
        Map<RevisionRef, RevisionHead> unknown = new LinkedHashMap<>();
        heads.stream().filter(h -> kept.getIfPresent(key(h)) == null).forEach(h -> unknown.put(h.ref(), h));
        summaries
                .of(KIND, unknown.keySet(), this::worked)
                .forEach((ref, found) -> kept.put(key(Objects.requireNonNull(unknown.get(ref))), found.findings()));
    }

    /** One after the other, since each may hold thousands of test points. */
    private Map<RevisionRef, OfCampaign> worked(List<RevisionRef> refs) {
        Map<RevisionRef, OfCampaign> found = new HashMap<>();
        for (RevisionRef ref : refs) {
            if (stopped) {
                break;
            }
            campaigns.allPublic(List.of(ref)).forEach(r -> found.put(ref, new OfCampaign(reader.of(r))));
        }
        return found;
    }

    /** One at a time; whoever comes meanwhile finds it under way. */
    private void readOn(List<RevisionHead> heads) {
        try {
            background.execute(() -> {
                try {
                    for (int from = 0; from < heads.size() && !stopped; from += ASKED_FOR) {
                        read(heads.subList(from, Math.min(heads.size(), from + ASKED_FOR)));
                    }
                } catch (RuntimeException e) {
                    // Asked again at the next view.
                    LOG.warn("campaigns could not be looked at together", e);
                }
            });
        } catch (RejectedExecutionException e) {
            LOG.debug("campaigns are being looked at already");
        }
    }

    @PreDestroy
    void stop() {
        stopped = true;
        BackgroundStop.of(background, "looking at campaigns together");
    }

    private static RevisionHash key(RevisionHead head) {
        return new RevisionHash(head.ref(), head.sha256());
    }
}
