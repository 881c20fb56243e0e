package org.vanewright.campaign.reduction;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignService;
import org.vanewright.campaign.Measure;
import org.vanewright.engineering.inference.Comparison;
import org.vanewright.engineering.inference.Sample;
import org.vanewright.engineering.inference.Welch;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionHead;
import org.vanewright.record.RevisionRef;

/** Finds what configurations came to, of one campaign or of several. */
@Service
public class Outcomes {
    /** More than this cannot be read side by side. */
    public static final int MOST = 12;

    private static final int OFFERED = 100;
    private static final Pattern REFERENCE =
            Pattern.compile("([a-z0-9-]{1,80})@([1-9][0-9]{0,5})\\.([A-Z][A-Z0-9]{0,3})");

    private final CampaignService campaigns;
    private final Reductions reductions;
    private final CampaignSummaries summaries;

    Outcomes(CampaignService campaigns, Reductions reductions, CampaignSummaries summaries) {
        this.campaigns = campaigns;
        this.reductions = reductions;
        this.summaries = summaries;
    }

    /**
     * A configuration that may be chosen.
     *
     * @param reference as in addresses
     * @param words what it is and of which campaign
     */
    public record Offered(String reference, String words) {}

    /** Every configuration of the newest published campaigns that was flown. */
    public List<Offered> offered() {
        List<RevisionRef> newest = campaigns.listHeads(null, OFFERED).items().stream()
                .map(RevisionHead::ref)
                .toList();
        Map<RevisionRef, CampaignSummary> known = summaries.of(newest);
        return newest.stream()
                .flatMap(ref -> Stream.ofNullable(known.get(ref)).flatMap(campaign -> offered(ref, campaign)))
                .toList();
    }

    private static Stream<Offered> offered(RevisionRef ref, CampaignSummary campaign) {
        return campaign.lines().stream()
                .filter(CampaignSummary.Line::flown)
                .map(line -> new Offered(
                        Outcome.reference(ref, line.key()),
                        line.label() + " – " + campaign.name() + ", revision " + ref.revision()));
    }

    /** Of a published layout in any revision. */
    public List<Outcome> ofLayout(String layoutSlug) {
        return campaigns.withLayout(layoutSlug).stream()
                .flatMap(r -> of(r).stream())
                .filter(o -> {
                    RevisionRef layout =
                            o.conclusion().configuration().configuration().layout();
                    return layout != null && layout.slug().equals(layoutSlug);
                })
                .toList();
    }

    /** Of one campaign, of every configuration that was flown. */
    List<Outcome> of(Revision<CampaignDocument> revision) {
        Optional<ReducedCampaign> reduced = reductions.of(revision);
        String aircraft = campaigns
                .airframe(revision.content())
                .map(a -> a.content().name())
                .orElse("an unknown aircraft");
        List<Outcome> outcomes = new ArrayList<>();
        reduced.ifPresent(r -> r.conclusions().stream()
                .filter(c -> !c.configuration().points().isEmpty())
                .forEach(c -> outcomes.add(new Outcome(revision, aircraft, r, c, liftChange(r, c)))));
        return List.copyOf(outcomes);
    }

    private static @Nullable Comparison liftChange(ReducedCampaign reduced, Conclusion conclusion) {
        double[] baseline = lift(reduced.baseline());
        double[] modified = lift(conclusion.configuration());
        if (reduced.measure() != Measure.STALL_SPEED || baseline.length < 2 || modified.length < 2) {
            return null;
        }
        try {
            return Welch.compare(Sample.of(baseline), Sample.of(modified), CampaignReducer.CONFIDENCE);
        } catch (InvalidInputException e) {
            return null;
        }
    }

    private static double[] lift(ReducedConfiguration configuration) {
        return configuration.points().stream()
                .map(ReducedPoint::liftCoefficient)
                .filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue)
                .toArray();
    }

    /**
     * Of the configurations that an address names.
     *
     * @param references such as {@code clean-stall@2.B}, at most {@value #MOST}
     * @throws InvalidInputException field {@code of}: one that cannot be read, or that nobody may see
     */
    public List<Outcome> of(List<String> references) {
        if (references.size() > MOST) {
            throw refused(references.size() + " configurations", "at most " + MOST + " configurations");
        }
        return references.stream().distinct().map(this::one).toList();
    }

    private Outcome one(String reference) {
        Matcher matcher = REFERENCE.matcher(reference);
        if (!matcher.matches()) {
            throw refused(reference, "a campaign, its revision and a configuration, such as clean-stall@2.B");
        }
        RevisionRef ref = new RevisionRef(matcher.group(1), Integer.parseInt(matcher.group(2)));
        return campaigns
                .find(ref)
                .flatMap(revision -> of(revision).stream()
                        .filter(o -> o.reference().equals(reference))
                        .findFirst())
                .orElseThrow(() -> refused(reference, "a configuration that was flown, of a campaign you may see"));
    }

    private static InvalidInputException refused(String value, String allowed) {
        String shown = value.length() > 80 ? value.substring(0, 77) + "…" : value;
        return new InvalidInputException(new FieldProblem("of", shown, allowed));
    }
}
