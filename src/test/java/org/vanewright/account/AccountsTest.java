package org.vanewright.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.mockito.Mockito.verify;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.dao.DataIntegrityViolationException;
import org.vanewright.account.Joining.Details;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.record.Actor;
import org.vanewright.record.NotAllowedException;
import org.vanewright.record.SignInNeededException;
import org.vanewright.testing.Databases.Engine;

/** People, links and the set-up on both databases. */
class AccountsTest {
    private static final int RACERS = 6;
    private static final String PASSWORD = NewPeople.PASSWORD;

    private Bench bench = new Bench(Engine.H2);

    private void on(Engine engine) {
        bench.close();
        bench = new Bench(engine);
    }

    @AfterEach
    void close() {
        bench.close();
    }

    @ParameterizedTest
    @EnumSource
    void aPersonIsFoundAsAdded(Engine engine) {
        on(engine);
        Person person = bench.add(Role.MAINTAINER, PersonState.ACTIVE);
        assertThat(bench.people.find(person.id())).contains(person);
        assertThat(bench.people.findByEmail(person.email())).contains(person);
        assertThat(bench.people.find("nobody")).isEmpty();
        bench.people.describe(person.id(), "Kim", "Flies on Sundays.");
        bench.people.signedIn(person.id(), bench.clock.instant());
        assertThat(bench.people.find(person.id())).hasValueSatisfying(p -> {
            assertThat(p.name()).isEqualTo("Kim");
            assertThat(p.about()).isEqualTo("Flies on Sundays.");
            assertThat(p.version()).isEqualTo(2);
            assertThat(p.signedInAt()).isEqualTo(bench.clock.instant());
        });
        assertThatExceptionOfType(DataIntegrityViolationException.class)
                .isThrownBy(() ->
                        bench.jdbc().sql("update person set state = 'LOST'").update());
    }

    @ParameterizedTest
    @EnumSource
    void ofPeopleWithOneAddressAtOnceExactlyOneIsAdded(Engine engine) throws Exception {
        on(engine);
        Person one = NewPeople.person(Role.MEMBER, PersonState.ACTIVE);
        List<Boolean> added = Races.run(RACERS, i -> {
            Person same = NewPeople.person(Role.MEMBER, PersonState.ACTIVE);
            return bench.people.add(
                    new Person(
                            same.id(),
                            one.email(),
                            "Racer",
                            Role.MEMBER,
                            PersonState.ACTIVE,
                            null,
                            1,
                            one.createdAt(),
                            null),
                    null);
        });
        assertThat(added).containsOnlyOnce(true).hasSize(RACERS);
        assertThat(bench.people.all()).hasSize(1);
    }

    @ParameterizedTest
    @EnumSource
    void onlyActivePeopleCountAsOtherReviewers(Engine engine) {
        on(engine);
        KnownPeople known = new KnownPeople(bench.people);
        Person steward = bench.add(Role.STEWARD, PersonState.ACTIVE);
        bench.add(Role.MAINTAINER, PersonState.CLOSED);
        bench.add(Role.MAINTAINER, PersonState.PENDING);
        bench.add(Role.MEMBER, PersonState.ACTIVE);
        assertThat(known.anotherReviewerThan(steward.id())).isFalse();
        assertThat(known.members()).hasSize(2);
        bench.add(Role.MAINTAINER, PersonState.ACTIVE);
        assertThat(known.anotherReviewerThan(steward.id())).isTrue();
    }

    @ParameterizedTest
    @EnumSource
    void ofManyWhoUseTheSetUpLinkAtOnceOneBecomesSteward(Engine engine) throws Exception {
        on(engine);
        String secret = bench.setUp.newSecret();
        List<Optional<Person>> stewards = Races.run(
                RACERS, i -> bench.joining.setUp(secret, new Details("racer" + i + "@club.example", "Kim", PASSWORD)));
        assertThat(stewards.stream().filter(Optional::isPresent)).hasSize(1);
        assertThat(bench.people.all()).singleElement().satisfies(p -> {
            assertThat(p.role()).isEqualTo(Role.STEWARD);
            assertThat(p.active()).isTrue();
        });
        assertThat(bench.setUp.isOpen()).isFalse();
        assertThat(bench.joining.setUp(secret)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void twoInstancesThatStartAtOnceGiveOneSteward(Engine engine) throws Exception {
        on(engine);
        List<String> secrets = List.of(
                bench.links
                        .make(OneTimeLink.Purpose.SET_UP, Role.STEWARD, null, "", "a", Duration.ofHours(1))
                        .secret(),
                bench.links
                        .make(OneTimeLink.Purpose.SET_UP, Role.STEWARD, null, "", "b", Duration.ofHours(1))
                        .secret());
        List<Optional<Person>> stewards = Races.run(
                2, i -> bench.joining.setUp(secrets.get(i), new Details(i + "@club.example", "Kim", PASSWORD)));
        assertThat(stewards.stream().filter(Optional::isPresent)).hasSize(1);
        assertThat(bench.people.all()).hasSize(1);
    }

    @ParameterizedTest
    @EnumSource
    void eachStartReplacesTheSetUpLinkAndADayEndsIt(Engine engine) {
        on(engine);
        String first = bench.setUp.newSecret();
        String second = bench.setUp.newSecret();
        assertThat(bench.joining.setUp(first)).isEmpty();
        assertThat(bench.joining.setUp(second)).isPresent();
        assertThat(bench.jdbc()
                        .sql("select secret_hash from one_time_link")
                        .query(String.class)
                        .list())
                .containsExactly(Secrets.hash(second))
                .doesNotContain(second);
        bench.clock.advance(Duration.ofHours(24));
        assertThat(bench.joining.setUp(second)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void anInvitationLetsOneInAndInTheRoleItSays(Engine engine) throws Exception {
        on(engine);
        Person steward = bench.add(Role.STEWARD, PersonState.ACTIVE);
        bench.ask(steward);
        String path = bench.accounts.invite(Role.MAINTAINER, "Robin").path();
        String secret = path.substring(path.lastIndexOf('/') + 1);
        assertThat(bench.accounts.invitations()).hasSize(1);
        bench.asking.set(Actor.visitor());
        List<Optional<Person>> joined = Races.run(
                RACERS, i -> bench.joining.join(secret, new Details("racer" + i + "@club.example", "Kim", PASSWORD)));
        assertThat(joined.stream().flatMap(Optional::stream))
                .singleElement()
                .extracting(Person::role)
                .isEqualTo(Role.MAINTAINER);
        assertThat(bench.people.all()).hasSize(2);
        bench.ask(steward);
        assertThat(bench.accounts.invitations()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void anInvitationExpiresCanBeWithdrawnAndSurvivesARefusal(Engine engine) {
        on(engine);
        Person steward = bench.add(Role.STEWARD, PersonState.ACTIVE);
        bench.ask(steward);
        AccountService.Invitation withdrawn = bench.accounts.invite(Role.MEMBER, null);
        bench.accounts.withdrawInvitation(withdrawn.link().id());
        assertThat(bench.joining.invitation(secret(withdrawn))).isEmpty();
        String open = secret(bench.accounts.invite(Role.MEMBER, ""));
        assertThatExceptionOfType(InvalidInputException.class)
                .isThrownBy(() -> bench.joining.join(open, new Details(steward.email(), "Kim", PASSWORD)));
        assertThat(bench.joining.invitation(open)).isPresent();
        bench.clock.advance(Duration.ofDays(7));
        assertThat(bench.joining.join(open, new Details("kim@club.example", "Kim", PASSWORD)))
                .isEmpty();
        assertThat(bench.people.all()).hasSize(1);
    }

    @ParameterizedTest
    @EnumSource
    void theLastStewardStaysAlsoWhenTwoDemoteEachOtherAtOnce(Engine engine) throws Exception {
        on(engine);
        Person one = bench.add(Role.STEWARD, PersonState.ACTIVE);
        Person other = bench.add(Role.STEWARD, PersonState.ACTIVE);
        bench.add(Role.STEWARD, PersonState.CLOSED);
        bench.ask(one);
        List<Person> both = List.of(one, other);
        List<Boolean> demoted = Races.run(2, i -> {
            try {
                bench.accounts.changeRole(both.get(i).id(), Role.MEMBER);
                return true;
            } catch (NotAllowedException e) {
                return false;
            }
        });
        assertThat(demoted).containsExactlyInAnyOrder(true, false);
        Person last = bench.people.find(demoted.get(0) ? other.id() : one.id()).orElseThrow();
        assertThatExceptionOfType(NotAllowedException.class).isThrownBy(() -> bench.accounts.close(last.id()));
        assertThat(bench.people.find(last.id())).contains(last);
    }

    @ParameterizedTest
    @EnumSource
    void aStewardAdmitsClosesAndReopens(Engine engine) {
        on(engine);
        Person steward = bench.add(Role.STEWARD, PersonState.ACTIVE);
        Person pending = bench.add(Role.MEMBER, PersonState.PENDING);
        bench.ask(steward);
        bench.accounts.admit(pending.id());
        assertThat(bench.people.find(pending.id()).map(Person::state)).contains(PersonState.ACTIVE);
        bench.accounts.close(pending.id());
        verify(bench.sessions).endAll(pending.id());
        bench.accounts.admit(pending.id());
        assertThat(bench.people.find(pending.id()).map(Person::state))
                .as("admitting opens no closed account")
                .contains(PersonState.CLOSED);
        bench.accounts.reopen(pending.id());
        assertThat(bench.people.find(pending.id()).map(Person::state)).contains(PersonState.ACTIVE);
        verify(bench.audit)
                .add(
                        steward.id(),
                        steward.name(),
                        "account.admitted",
                        pending.email(),
                        "Member (Waiting to be admitted) to Member (Open)");
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void onlyStewardsRunAccounts(Role role) {
        if (role == Role.STEWARD) {
            assertThatExceptionOfType(SignInNeededException.class).isThrownBy(bench.accounts::all);
            return;
        }
        Person person = bench.add(role, PersonState.ACTIVE);
        bench.ask(person);
        List<Runnable> acts = List.of(
                bench.accounts::all,
                bench.accounts::invitations,
                () -> bench.accounts.invite(Role.STEWARD, ""),
                () -> bench.accounts.withdrawInvitation("x"),
                () -> bench.accounts.admit(person.id()),
                () -> bench.accounts.changeRole(person.id(), Role.STEWARD),
                () -> bench.accounts.close(person.id()),
                () -> bench.accounts.reopen(person.id()));
        assertThat(acts)
                .allSatisfy(act ->
                        assertThatExceptionOfType(NotAllowedException.class).isThrownBy(act::run));
        assertThat(bench.people.all()).containsExactly(person);
    }

    private static String secret(AccountService.Invitation invitation) {
        return invitation.path().substring("/join/".length());
    }

    @Test
    void registeringTakesTheWorkOfOneHashWhetherOrNotTheAddressIsKnown() {
        Person known = bench.add(Role.MEMBER, PersonState.ACTIVE);
        int forKnown = bench.encoder.during(
                () -> bench.joining.register(new Details(known.email(), "Kim", PASSWORD), "192.0.2.1"));
        int forUnknown = bench.encoder.during(
                () -> bench.joining.register(new Details("new@club.example", "Kim", PASSWORD), "192.0.2.1"));
        assertThat(forKnown).isEqualTo(1);
        assertThat(forUnknown).isEqualTo(1);
        assertThat(bench.people.all()).hasSize(2);
    }

    @Test
    void signingInTakesTheWorkOfOneHashWhetherOrNotTheAddressIsKnown() {
        Person known = bench.add(Role.MEMBER, PersonState.ACTIVE);
        // Whoever is first has something made to compare with, known or not.
        bench.signingIn.attempt(known.email(), "wrong", "192.0.2.2");
        Person closed = bench.add(Role.MEMBER, PersonState.CLOSED);
        for (String email : List.of(known.email(), closed.email(), "nobody@club.example", "no address")) {
            assertThat(bench.encoder.during(() -> bench.signingIn.attempt(email, "wrong", "192.0.2.1")))
                    .as(email)
                    .isEqualTo(1);
        }
    }
}
