package org.vanewright.campaign;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.Lists;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordUse;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.photograph.PhotographUse;
import org.vanewright.record.provenance.FigureGroup;
import org.vanewright.record.provenance.FigureOrigin;

/**
 * What a revision of a campaign says: its plan, and what has been recorded so far. Parts may be absent until
 * {@link CampaignRules} has passed it.
 *
 * @param name what people call it
 * @param description what it is for, in the contributor's words
 * @param plan what is to be found out and how
 * @param points as they were read, in the order of flying
 * @param handling what pilots say
 * @param tufts where they are and what was seen of them
 * @param invented true for demonstration data
 * @param provenance where its figures come from
 * @param photographs of it
 */
public record CampaignDocument(
        String name,
        @Nullable String description,
        PlanDocument plan,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<PointDocument> points,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<HandlingDocument> handling,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<TuftGridDocument> tufts,
        boolean invented,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<FigureOrigin> provenance,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<PhotographUse> photographs)
        implements RecordContent {
    @SuppressWarnings("NullAway") // documents arrive with parts missing; the rules name them
    public CampaignDocument {
        name = name == null ? "" : name;
        plan = plan == null ? PlanDocument.NONE : plan;
        points = Lists.present(points);
        handling = Lists.present(handling);
        tufts = Lists.present(tufts);
        provenance = Lists.present(provenance);
        photographs = Lists.present(photographs);
    }

    /** A plan of which nothing has been flown. */
    public CampaignDocument(String name, @Nullable String description, PlanDocument plan, boolean invented) {
        this(name, description, plan, List.of(), List.of(), List.of(), invented, List.of(), List.of());
    }

    /** As read from JSON, where {@code invented} may be left out and then is false. */
    @JsonCreator(mode = JsonCreator.Mode.PROPERTIES)
    @SuppressWarnings("NullAway") // the canonical constructor takes what is absent
    static CampaignDocument read(
            @JsonProperty("name") @Nullable String name,
            @JsonProperty("description") @Nullable String description,
            @JsonProperty("plan") @Nullable PlanDocument plan,
            @JsonProperty("points") @Nullable List<PointDocument> points,
            @JsonProperty("handling") @Nullable List<HandlingDocument> handling,
            @JsonProperty("tufts") @Nullable List<TuftGridDocument> tufts,
            @JsonProperty("invented") @Nullable Boolean invented,
            @JsonProperty("provenance") @Nullable List<FigureOrigin> provenance,
            @JsonProperty("photographs") @Nullable List<PhotographUse> photographs) {
        return new CampaignDocument(
                name,
                description,
                plan,
                points,
                handling,
                tufts,
                Boolean.TRUE.equals(invented),
                provenance,
                photographs);
    }

    /** The same with other test points. */
    public CampaignDocument withPoints(List<PointDocument> other) {
        return new CampaignDocument(name, description, plan, other, handling, tufts, invented, provenance, photographs);
    }

    /** The same with other ratings. */
    public CampaignDocument withHandling(List<HandlingDocument> other) {
        return new CampaignDocument(name, description, plan, points, other, tufts, invented, provenance, photographs);
    }

    /** The same with other grids of tufts. */
    public CampaignDocument withTufts(List<TuftGridDocument> other) {
        return new CampaignDocument(
                name, description, plan, points, handling, other, invented, provenance, photographs);
    }

    /** The same with other photographs. */
    public CampaignDocument withPhotographs(List<PhotographUse> other) {
        return new CampaignDocument(name, description, plan, points, handling, tufts, invented, provenance, other);
    }

    /** Its test points of one kind, in the order of flying. */
    public List<PointDocument> points(PointKind kind) {
        return points.stream().filter(p -> p.kind() == kind).toList();
    }

    @Override
    public List<RecordUse> uses() {
        List<RecordUse> uses = new ArrayList<>();
        Stream.ofNullable(plan.airframe())
                .map(a -> new RecordUse("airframes", a))
                .forEach(uses::add);
        plan.configurations().stream()
                .map(ConfigurationDocument::layout)
                .flatMap(Stream::ofNullable)
                .distinct()
                .map(layout -> new RecordUse("layouts", layout))
                .forEach(uses::add);
        RevisionRef calibration = plan.calibration().campaign();
        if (calibration != null) {
            uses.add(new RecordUse("campaigns", calibration));
        }
        return List.copyOf(uses);
    }

    @Override
    public CampaignDocument relocated(UnaryOperator<RecordUse> to) {
        return new CampaignDocument(
                name, description, plan.relocated(to), points, handling, tufts, invented, provenance, photographs);
    }

    @Override
    public List<FigureGroup> figureGroups() {
        List<FigureGroup> groups = new ArrayList<>();
        groups.add(new FigureGroup("plan", "Plan"));
        groups.add(new FigureGroup("plan.conditions", "Conditions"));
        if (!points.isEmpty()) {
            groups.add(new FigureGroup("points", "Test points"));
        }
        if (!handling.isEmpty()) {
            groups.add(new FigureGroup("handling", "Handling"));
        }
        if (!tufts.isEmpty()) {
            groups.add(new FigureGroup("tufts", "Tuft surveys"));
        }
        return List.copyOf(groups);
    }
}
