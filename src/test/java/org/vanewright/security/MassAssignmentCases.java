package org.vanewright.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.account.AccessTokens;
import org.vanewright.account.Acting;
import org.vanewright.account.NewPeople;
import org.vanewright.account.TokenScope;
import org.vanewright.record.Draft;
import org.vanewright.record.RecordState;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.testing.Caller;
import org.vanewright.testing.SignedIn;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Fields that a caller adds in the hope that something takes them over. */
abstract class MassAssignmentCases extends WalkCases {
    /** What decides over people, drafts and revisions, under every name it has here or might have. */
    private static Map<String, String> wishes(String personId) {
        Map<String, String> wishes = new LinkedHashMap<>();
        for (String name :
                new String[] {"id", "person", "personId", "author", "authorId", "contributorId", "ownerId"}) {
            wishes.put(name, personId);
        }
        wishes.putAll(Map.of(
                "role", "STEWARD",
                "state", "PUBLISHED",
                "sha256", "0".repeat(64),
                "hash", "0".repeat(64),
                "slug", "chosen-by-the-caller",
                "revision", "77",
                "contributor", "Somebody else",
                "publishedAt", "2020-01-01T00:00:00Z",
                "powers", "RUN"));
        return wishes;
    }

    private Draft<?> draftAt(String path) {
        String id = path.replaceFirst("^.*/drafts/", "").replaceFirst("[?/].*$", "");
        return Acting.as(author, () -> context().getBean(Records.class).draft(id));
    }

    private static String location(HttpResponse<String> answer) {
        return URI.create(answer.headers().firstValue("Location").orElseThrow()).getPath();
    }

    @Test
    void aDraftFromAFormIsItsSendersAndADraft() {
        SignedIn person = signIn(author);
        Map<String, String> fields = Forms.with(wishes(other.id()), "name", "Wishful vane");
        fields.put("action", "save");
        Draft<?> draft = draftAt(location(person.postForm("/devices/new", fields)));
        assertThat(draft.author().id()).isEqualTo(author.id());
        assertThat(draft.state().isOpen()).isTrue();
        assertThat(draft.version()).isEqualTo(1);
        assertThat(draft.base()).isNull();
        fields.put("version", "1");
        person.postForm("/devices/drafts/" + draft.id(), fields);
        Draft<?> saved = draftAt("/devices/drafts/" + draft.id());
        assertThat(saved.author().id()).isEqualTo(author.id());
        assertThat(saved.state().isOpen()).isTrue();
        assertThat(saved.version()).isEqualTo(2);
        assertThat(context()
                        .getBean(Records.class)
                        .ofPlural("devices")
                        .orElseThrow()
                        .latest("chosen-by-the-caller"))
                .isEmpty();
    }

    @Test
    void aSubmissionFromAFormIsWhatItsDraftIs() {
        SignedIn person = signIn(author);
        Map<String, String> fields = Forms.with(wishes(other.id()), "version", "1");
        fields.put("licence", "CC0_1_0");
        String path = location(person.postForm(subjects.fill("/drafts/{draft}/submit"), fields));
        String[] parts = path.split("/");
        Revision<?> revision = Acting.as(
                author,
                () -> context()
                        .getBean(Records.class)
                        .ofPlural("devices")
                        .orElseThrow()
                        .exactly(new RevisionRef(parts[2], Integer.parseInt(parts[4]))));
        assertThat(revision.state()).isEqualTo(RecordState.SUBMITTED);
        assertThat(revision.slug()).isNotEqualTo("chosen-by-the-caller");
        assertThat(revision.number()).isEqualTo(1);
        assertThat(revision.contributor()).isEqualTo(author.name());
        assertThat(revision.standing().contributorId()).isEqualTo(author.id());
        assertThat(revision.sha256()).isNotEqualTo("0".repeat(64));
    }

    @Test
    void anAccountChangesInWhatItsFormShowsOnly() {
        SignedIn person = signIn(author);
        Map<String, String> fields = Forms.with(wishes(other.id()), "name", "Renamed " + author.name());
        fields.put("email", "taken@club.example");
        assertThat(person.postForm("/account", fields).statusCode()).isEqualTo(303);
        assertThat(person.page("/account", 200).text())
                .contains("Renamed " + author.name(), author.email())
                .doesNotContain("taken@club.example");
        assertThat(person.get("/review").statusCode()).as("still a member").isEqualTo(403);
        assertThat(signIn(other).page("/account", 200).text())
                .contains(other.name())
                .doesNotContain("Renamed");
    }

    @Test
    void whoJoinsGetsTheRoleOfTheInvitation() {
        Caller visitor = newVisitor();
        Map<String, String> fields = Forms.with(wishes(other.id()), "name", "Wishful person");
        fields.put("email", "wishful." + author.id() + "@club.example");
        fields.put("newPassword", NewPeople.PASSWORD);
        fields.put("action", "save");
        HttpResponse<String> joined = visitor.postForm(subjects.fill("/join/{invitation}"), fields);
        assertThat(location(joined)).isEqualTo("/account");
        assertThat(visitor.get("/review").statusCode()).isEqualTo(403);
    }

    @Test
    void aTokenIsItsMakersAndCarriesNoMoreThanTheyHave() {
        SignedIn person = signIn(author);
        Map<String, String> fields = Forms.with(wishes(steward.id()), "name", "Wishful");
        fields.putAll(Map.of("read", "true", "days", "30", "scopes", "REVIEW"));
        assertThat(person.postForm("/account/tokens", fields).statusCode()).isEqualTo(200);
        AccessTokens tokens = context().getBean(AccessTokens.class);
        assertThat(Acting.as(steward, tokens::mine)).isEmpty();
        assertThat(Acting.as(author, tokens::mine))
                .singleElement()
                .satisfies(token -> assertThat(token.scopes()).containsExactly(TokenScope.READ));
        fields.putAll(Map.of("name", "Wishful two", "review", "true"));
        assertThat(person.postForm("/account/tokens", fields).statusCode()).isEqualTo(422);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "id",
                "role",
                "state",
                "sha256",
                "hash",
                "slug",
                "revision",
                "contributor",
                "contributorId",
                "author",
                "version",
                "person",
                "__proto__",
                "class",
                "@type"
            })
    void jsonWithAPropertyThatIsNotTheCallersIsRefused(String name) {
        String submit = bearer(author, TokenScope.SUBMIT);
        ObjectNode document = subjects.document("devices").put(name, "PUBLISHED");
        for (String path : new String[] {"/api/v1/devices", subjects.fill("/api/v1/devices/{published}/revisions")}) {
            HttpResponse<String> answer = postJson(path, document.toString(), "Authorization", submit, "If-Match", "*");
            assertThat(json(answer, 400).at("/errors/0/field").asString()).contains(name);
        }
        String draft = subjects.fill("/api/v1/drafts/{draft}");
        HttpResponse<String> saved = newVisitor()
                .call(
                        "PUT",
                        draft,
                        document.toString(),
                        "Content-Type",
                        "application/json",
                        "Authorization",
                        submit,
                        "If-Match",
                        "*");
        assertThat(saved.statusCode()).isEqualTo(400);
        if (!name.equals("version")) {
            String submission = "{\"version\":1,\"licence\":\"CC0_1_0\",\"" + name + "\":\"PUBLISHED\"}";
            assertThat(postJson(draft + "/submission", submission, "Authorization", submit)
                            .statusCode())
                    .isEqualTo(400);
        }
        JsonNode kept = json(get(draft, "Authorization", submit), 200);
        assertThat(kept.get("version").asInt()).isEqualTo(1);
    }
}
