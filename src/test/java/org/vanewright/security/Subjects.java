package org.vanewright.security;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.awaitility.Awaitility;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationContext;
import org.vanewright.account.AccessTokens;
import org.vanewright.account.AccountService;
import org.vanewright.account.Acting;
import org.vanewright.account.NewPeople;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.PasswordReset;
import org.vanewright.account.PersonState;
import org.vanewright.account.Role;
import org.vanewright.account.TokenScope;
import org.vanewright.campaign.log.FlightLogs;
import org.vanewright.export.Exports;
import org.vanewright.photograph.Photographs;
import org.vanewright.platform.job.JobState;
import org.vanewright.platform.job.NoteJob;
import org.vanewright.record.Draft;
import org.vanewright.record.Licence;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.testing.Pictures;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Makes what the calls of a table are about: drafts of the author, what they submitted, links, tokens. */
final class Subjects {
    /** By plural, a record that comes with the service. */
    private static final Map<String, String> DEMO = Map.of(
            "devices", "rectangular-vane-8-by-20",
            "airframes", "quillmere-tapered-low-wing",
            "layouts", "low-wing-pairs-over-the-taper",
            "installations", "pairs-over-the-taper-put-on-in-spring",
            "inspections", "pairs-over-the-taper-put-on-in-spring-inspection-1",
            "campaigns", "clean-stall-with-pairs-over-the-taper",
            "print-runs", "sixteen-vanes-for-the-high-wing",
            "adhesives", "foam-tape-30-pound-pack");

    private static final AtomicInteger COUNT = new AtomicInteger();

    private final ApplicationContext service;
    private final NewPerson author;
    private final NewPerson other;
    private final NewPerson maintainer;
    private final NewPerson steward;
    private final Map<String, String> made = new HashMap<>();

    Subjects(ApplicationContext service, NewPerson author, NewPerson other, NewPerson maintainer, NewPerson steward) {
        this.service = service;
        this.author = author;
        this.other = other;
        this.maintainer = maintainer;
        this.steward = steward;
    }

    /** Slug of a record of that kind that comes with the service. */
    static String demo(String plural) {
        return Objects.requireNonNull(DEMO.get(plural));
    }

    /** The call with subjects in place of the names in braces; the same ones until they are forgotten. */
    String fill(String call) {
        String plural = plural(call);
        String filled = call;
        int open = filled.indexOf('{');
        while (open >= 0) {
            String name = filled.substring(open + 1, filled.indexOf('}', open));
            String value = made.computeIfAbsent(plural + " " + name, ignored -> make(name, plural));
            filled = filled.replace("{" + name + "}", value);
            open = filled.indexOf('{');
        }
        return filled;
    }

    /** After a call that changed something, the next one gets subjects of its own. */
    void forget() {
        made.clear();
    }

    static String plural(String call) {
        return DEMO.keySet().stream().filter(call::contains).findFirst().orElse("devices");
    }

    private String make(String name, String plural) {
        return switch (name) {
            case "demo" -> demo(plural);
            case "draft" -> draft(plural).id();
            case "shared" -> shared(plural);
            case "waiting" -> waiting(plural);
            case "submitted" -> submitted(plural).slug();
            case "published" -> published(plural).slug();
            case "withdrawn" -> withdrawn(plural).slug();
            case "token" -> token();
            case "invitation" -> invitation();
            case "reset" -> reset();
            case "person" -> NewPeople.add(service, Role.MEMBER).id();
            case "pending" ->
                NewPeople.add(service, Role.MEMBER, PersonState.PENDING).id();
            case "closed" ->
                NewPeople.add(service, Role.MEMBER, PersonState.CLOSED).id();
            case "invited" -> invited();
            case "photograph" -> photograph();
            case "log" -> log(made.get(plural + " draft"), "time,ias\n0,50\n1,51\n");
            case "sharedlog" -> log(made.get(plural + " shared"), "time,ias\n0,50\n1,51\n");
            case "job" -> job();
            case "export" -> export();
            case "nolink" -> UUID.randomUUID().toString();
            case "nothing" -> "A".repeat(43);
            case "unknown" -> "walked-" + COUNT.incrementAndGet() + "%40club.example";
            case "author" -> author.id();
            case "other" -> other.id();
            default -> throw new IllegalArgumentException("no subject " + name);
        };
    }

    /** Of the author, and done. */
    private String job() {
        String id = Acting.as(author, () -> NoteJob.start(service, "walked"));
        NoteJob.await(service, id, JobState.DONE);
        return id;
    }

    /** One that is kept, of whatever the record was. */
    private String export() {
        Exports exports = service.getBean(Exports.class);
        if (exports.status().made() == null) {
            exports.start();
        }
        Awaitility.await("export")
                .atMost(Duration.ofMinutes(1))
                .until(() -> exports.status().made() != null);
        return "yes";
    }

    /** A document that can be submitted, under a name of its own. */
    ObjectNode document(String plural) {
        JsonMapper mapper = service.getBean(JsonMapper.class);
        RevisionRef demo = new RevisionRef(demo(plural), 1);
        ObjectNode document = mapper.valueToTree(records(plural).exactly(demo).content());
        return document.put("name", "Walked " + COUNT.incrementAndGet());
    }

    private RecordService<?> records(String plural) {
        return service.getBean(Records.class).ofPlural(plural).orElseThrow();
    }

    Draft<?> draft(String plural) {
        return draft(records(plural), document(plural));
    }

    private <T extends RecordContent> Draft<T> draft(RecordService<T> records, ObjectNode document) {
        T content = service.getBean(JsonMapper.class).treeToValue(document, records.contentType());
        return Acting.as(author, () -> records.drafts().start(content));
    }

    private String shared(String plural) {
        String id = draft(plural).id();
        Acting.as(author, () -> records(plural).drafts().share(id, other.id()));
        return id;
    }

    private String waiting(String plural) {
        Draft<?> draft = draft(plural);
        submit(plural, draft);
        return draft.id();
    }

    private Revision<?> submitted(String plural) {
        return submit(plural, draft(plural));
    }

    private Revision<?> submit(String plural, Draft<?> draft) {
        return Acting.as(
                author, () -> records(plural).drafts().submit(draft.id(), draft.version(), Licence.CC0_1_0, null));
    }

    private Revision<?> published(String plural) {
        RevisionRef ref = submitted(plural).ref();
        return Acting.as(maintainer, () -> records(plural).reviews().publish(ref));
    }

    private Revision<?> withdrawn(String plural) {
        RevisionRef ref = published(plural).ref();
        return Acting.as(maintainer, () -> records(plural).reviews().withdraw(ref, "It breaks."));
    }

    private String token() {
        AccessTokens tokens = service.getBean(AccessTokens.class);
        return Acting.as(
                author,
                () -> tokens.create("Walked " + COUNT.incrementAndGet(), Set.of(TokenScope.READ), 30)
                        .token()
                        .id());
    }

    private String invitation() {
        String path = Acting.as(
                steward,
                () -> service.getBean(AccountService.class)
                        .invite(Role.MEMBER, "")
                        .path());
        return path.replaceFirst("^.*/", "");
    }

    private String invited() {
        return Acting.as(
                steward,
                () -> service.getBean(AccountService.class)
                        .invite(Role.MEMBER, "")
                        .link()
                        .id());
    }

    /** One that no public record shows. */
    private String photograph() {
        byte[] file = Pictures.encoded(Pictures.quarters(40 + COUNT.incrementAndGet(), 30), "png");
        return Acting.as(author, () -> service.getBean(Photographs.class).take(file));
    }

    /** A table of the draft that stands before it in the call. */
    private String log(@Nullable String draft, String table) {
        byte[] bytes = table.getBytes(StandardCharsets.UTF_8);
        return Acting.as(
                author,
                () -> service.getBean(FlightLogs.class)
                        .add(Objects.requireNonNull(draft), "walked.csv", new ByteArrayInputStream(bytes))
                        .id());
    }

    private String reset() {
        String link =
                Acting.as(steward, () -> service.getBean(PasswordReset.class).issueResetLink(other.id()));
        return link.replaceFirst("^.*/", "");
    }
}
