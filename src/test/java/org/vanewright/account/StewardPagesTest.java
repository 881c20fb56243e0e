package org.vanewright.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.testing.Caller;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;

/** People, invitations and settings in the steward's console. */
class StewardPagesTest extends ServerTest {
    private static final String PASSWORD = "five slow kites over reeds";

    private final List<String> rooms =
            List.of("", "/people", "/invitations", "/instance", "/log", "/log.csv", "/log.jsonl");

    @AfterEach
    void settingsAsBefore() {
        SettingRepository settings = context().getBean(SettingRepository.class);
        settings.put("name", "Vanewright");
        settings.put("contact", "");
        settings.put("registering", "closed");
    }

    @ParameterizedTest
    @EnumSource(names = {"MEMBER", "MAINTAINER"})
    void nobodyElseGetsIn(Role role) {
        SignedIn other = signIn(role);
        NewPerson victim = newPerson(Role.MEMBER);
        for (String room : rooms) {
            assertThat(other.get("/steward" + room).statusCode()).as(room).isEqualTo(403);
            HttpResponse<String> visitor = get("/steward" + room);
            assertThat(visitor.statusCode()).as(room).isEqualTo(303);
            assertThat(visitor.headers().firstValue("Location").orElseThrow()).startsWith("/sign-in?back=");
        }
        String person = "/steward/people/" + victim.id();
        assertThat(other.get(person).statusCode()).isEqualTo(403);
        for (String step : List.of("/role", "/admit", "/close", "/reopen", "/second-factor/reset", "/reset-link")) {
            assertThat(other.postForm(person + step, Map.of("role", "STEWARD")).statusCode())
                    .as(step)
                    .isEqualTo(403);
        }
        assertThat(other.postForm("/steward/invitations", Map.of("role", "STEWARD"))
                        .statusCode())
                .isEqualTo(403);
        assertThat(other.postForm("/steward/instance", Map.of("name", "Mine")).statusCode())
                .isEqualTo(403);
        assertThat(person(victim.id()).role()).isEqualTo(Role.MEMBER);
    }

    @Test
    void theRoleChangesAtOnce() {
        SignedIn steward = signIn(Role.STEWARD);
        SignedIn member = signIn(Role.MEMBER);
        assertThat(member.get("/review").statusCode()).isEqualTo(403);
        String path = "/steward/people/" + member.id();
        assertThat(steward.page(path, 200).select("option[selected]").text()).isEqualTo("Member");
        assertThat(location(steward.postForm(path + "/role", Map.of("role", "MAINTAINER"))))
                .isEqualTo(path + "?done=role");
        assertThat(steward.page(path + "?done=role", 200).select(".note").text())
                .contains("The role is changed");
        assertThat(member.get("/review").statusCode()).isEqualTo(200);
        Document refused = parsed(steward.postForm(path + "/role", Map.of("role", "KING")), 422);
        assertThat(refused.select("#role-error").text()).isEqualTo("Must be one of the choices.");
        assertThat(parsed(steward.postForm(path + "/role", Map.of()), 422)
                        .select("#role-error")
                        .text())
                .isNotEmpty();
    }

    @Test
    void aClosedAccountIsOutUntilItIsOpenedAgain() {
        SignedIn steward = signIn(Role.STEWARD);
        SignedIn member = signIn(Role.MEMBER);
        String path = "/steward/people/" + member.id();
        assertThat(location(steward.postForm(path + "/close", Map.of()))).isEqualTo(path + "?done=closed");
        assertThat(member.get("/account").statusCode()).isEqualTo(303);
        Map<String, String> typed = Map.of(
                "email", member.person().email(), "password", member.person().password());
        assertThat(newVisitor().postForm("/sign-in", typed).statusCode()).isEqualTo(422);
        assertThat(steward.page(path, 200).text()).contains("Open again").doesNotContain("Make a link");
        assertThat(location(steward.postForm(path + "/reopen", Map.of()))).isEqualTo(path + "?done=reopened");
        assertThat(newVisitor().postForm("/sign-in", typed).statusCode()).isEqualTo(303);
        assertThat(logged(steward, member.person().email())).contains("account.closed", "account.reopened");
    }

    @Test
    void theLastStewardStays() {
        SignedIn steward = signIn(Role.STEWARD);
        PersonRepository people = context().getBean(PersonRepository.class);
        List<Person> others = people.active().stream()
                .filter(p -> p.role() == Role.STEWARD && !p.id().equals(steward.id()))
                .toList();
        others.forEach(p -> people.place(p.id(), Role.MEMBER, PersonState.ACTIVE));
        String path = "/steward/people/" + steward.id();
        assertThat(steward.page(path, 200).text()).contains("This is the last steward");
        for (HttpResponse<String> refused : List.of(
                steward.postForm(path + "/close", Map.of()),
                steward.postForm(path + "/role", Map.of("role", "MEMBER")))) {
            assertThat(parsed(refused, 422).select("[role=alert]").text()).contains("The last steward cannot leave");
        }
        assertThat(person(steward.id()))
                .extracting(Person::role, Person::state)
                .containsExactly(Role.STEWARD, PersonState.ACTIVE);
        others.forEach(p -> people.place(p.id(), Role.STEWARD, PersonState.ACTIVE));
    }

    @Test
    void aResetLinkIsShownOnceAndWorks() {
        SignedIn steward = signIn(Role.STEWARD);
        NewPerson member = newPerson(Role.MEMBER);
        String path = "/steward/people/" + member.id();
        Document made = parsed(steward.postForm(path + "/reset-link", Map.of()), 200);
        String link = made.select("textarea.secret").text();
        assertThat(link).startsWith(origin() + "/reset/");
        assertThat(steward.page(path, 200).html()).doesNotContain("/reset/");
        Caller visitor = newVisitor();
        String local = link.substring(origin().length());
        assertThat(visitor.postForm(local, Map.of("newPassword", PASSWORD, "action", "save"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(newVisitor()
                        .postForm("/sign-in", Map.of("email", member.email(), "password", PASSWORD))
                        .statusCode())
                .isEqualTo(303);
        assertThat(steward.get("/steward/log.csv").body())
                .contains("reset.link-made")
                .doesNotContain(local.substring("/reset/".length()));
    }

    @Test
    void aLostSecondFactorIsReset() {
        SignedIn steward = signIn(Role.STEWARD);
        SignedIn member = signIn(Role.MEMBER);
        String path = "/steward/people/" + member.id();
        assertThat(steward.page(path, 200).text()).doesNotContain("Reset the second factor");
        member.postForm("/account/second-factor", Map.of());
        Authenticator app = new Authenticator(context(), member.id());
        member.postForm(
                "/account/second-factor/on", Map.of("password", member.person().password(), "code", app.code()));
        assertThat(steward.page(path, 200).text()).contains("Reset the second factor");
        assertThat(location(steward.postForm(path + "/second-factor/reset", Map.of())))
                .isEqualTo(path + "?done=second-factor");
        assertThat(signIn(member.person()).page("/account/second-factor", 200).text())
                .doesNotContain("Recovery codes left");
        assertThat(logged(steward, member.person().email())).contains("second-factor.reset");
    }

    @Test
    void whoRegisteredIsAdmittedOrRefused() {
        SignedIn steward = signIn(Role.STEWARD);
        NewPerson one = NewPeople.add(context(), Role.MEMBER, PersonState.PENDING);
        NewPerson other = NewPeople.add(context(), Role.MEMBER, PersonState.PENDING);
        assertThat(steward.page("/steward", 200)
                        .select("[aria-labelledby=waiting-title]")
                        .text())
                .contains(one.email(), other.email());
        steward.postForm("/steward/people/" + one.id() + "/admit", Map.of());
        steward.postForm("/steward/people/" + other.id() + "/close", Map.of());
        assertThat(person(one.id()).state()).isEqualTo(PersonState.ACTIVE);
        assertThat(person(other.id()).state()).isEqualTo(PersonState.CLOSED);
        assertThat(steward.page("/steward", 200)
                        .select("[aria-labelledby=waiting-title]")
                        .text())
                .doesNotContain(one.email(), other.email());
    }

    @Test
    void peopleAreFoundByWordsAndStateAndPagedByName() {
        SignedIn steward = signIn(Role.STEWARD);
        for (int i = 0; i < PeopleDesk.PAGE + 3; i++) {
            NewPeople.add(context(), Role.MEMBER);
        }
        NewPerson waiting = NewPeople.add(context(), Role.MAINTAINER, PersonState.PENDING);
        Document found = steward.page("/steward/people?words=" + waiting.email(), 200);
        assertThat(found.select("tbody tr")).hasSize(1);
        assertThat(found.select("tbody td").eachText())
                .containsExactly(waiting.email(), "Maintainer", "Waiting to be admitted", "never");
        assertThat(steward.page("/steward/people?words=%25", 200).select("tbody tr"))
                .as("a percent sign is no wildcard")
                .isEmpty();
        assertThat(steward.page("/steward/people?state=PENDING", 200)
                        .select("tbody th")
                        .eachText())
                .contains(waiting.name());
        assertThat(steward.page("/steward/people?words='%20or%201=1%20--", 200).select("tbody tr"))
                .isEmpty();
        Document first = steward.page("/steward/people?words=member", 200);
        assertThat(first.select("tbody tr")).hasSize(PeopleDesk.PAGE);
        Element next = first.selectFirst("a[rel=next]");
        assertThat(next).isNotNull();
        Document second = steward.page(String.valueOf(next == null ? null : next.attr("href")), 200);
        assertThat(second.select("tbody td:nth-child(2)").eachText())
                .isNotEmpty()
                .doesNotContainAnyElementsOf(
                        first.select("tbody td:nth-child(2)").eachText());
        assertThat(steward.page("/steward/people?cursor=nonsense", 400).text()).contains("cursor");
    }

    @Test
    void anInvitationIsShownOnceListedAndWithdrawn() {
        SignedIn steward = signIn(Role.STEWARD);
        Document made = parsed(
                steward.postForm("/steward/invitations", Map.of("role", "MAINTAINER", "note", "kim@club.example")),
                200);
        String link = made.select("textarea.secret").text();
        assertThat(link).startsWith(origin() + "/join/");
        String local = link.substring(origin().length());
        Document list = steward.page("/steward/invitations", 200);
        assertThat(list.html()).doesNotContain(local);
        Element entry = list.select(".entries > li").stream()
                .filter(li -> li.text().contains("kim@club.example"))
                .findFirst()
                .orElseThrow();
        assertThat(entry.text()).contains("Maintainer", steward.name(), "UTC");
        assertThat(newVisitor().get(local).statusCode()).isEqualTo(200);
        steward.postForm(entry.select("form").attr("action"), Map.of());
        assertThat(newVisitor().get(local).statusCode()).isEqualTo(410);
        assertThat(logged(steward, steward.name())).contains("invitation.made", "invitation.withdrawn");
    }

    @ParameterizedTest
    @ValueSource(strings = {"KING", ""})
    void anInvitationNeedsARole(String role) {
        SignedIn steward = signIn(Role.STEWARD);
        Document refused = parsed(steward.postForm("/steward/invitations", Map.of("role", role, "note", "Kim")), 422);
        assertThat(refused.select("#role-error").text()).isNotEmpty();
        assertThat(refused.select("#note").attr("value")).isEqualTo("Kim");
    }

    @Test
    void whatAStewardChoosesStandsAtTheFootOfEveryPage() {
        SignedIn steward = signIn(Role.STEWARD);
        assertThat(get("/").body()).doesNotContain("small instance");
        Map<String, String> typed =
                Map.of("name", "Flying club <Quillmere>", "contact", "keepers@club.example", "registering", "true");
        assertThat(location(steward.postForm("/steward/instance", typed))).isEqualTo("/steward/instance?changed");
        assertThat(page("/", 200).select(".instance").text())
                .isEqualTo("Flying club <Quillmere> · kept by keepers@club.example");
        assertThat(page("/no-such-page", 404).select(".instance").text()).contains("Quillmere");
        assertThat(get("/join").statusCode()).isEqualTo(200);
        Document form = steward.page("/steward/instance", 200);
        assertThat(form.select("#registering").hasAttr("checked")).isTrue();
        Document refused =
                parsed(steward.postForm("/steward/instance", Map.of("name", "", "contact", "c@club.example")), 422);
        assertThat(refused.select("#name-error").text()).isNotEmpty();
        assertThat(refused.select("#contact").attr("value")).isEqualTo("c@club.example");
        assertThat(get("/join").statusCode()).as("nothing half saved").isEqualTo(200);
    }

    private List<String> logged(SignedIn steward, String word) {
        return steward.page("/steward/log?words=" + word.replace(" ", "+"), 200)
                .select(".log b")
                .eachText();
    }

    private Person person(String id) {
        return context().getBean(PersonRepository.class).find(id).orElseThrow();
    }

    private static String location(HttpResponse<String> response) {
        assertThat(response.statusCode()).isEqualTo(303);
        return response.headers().firstValue("Location").orElseThrow();
    }
}
