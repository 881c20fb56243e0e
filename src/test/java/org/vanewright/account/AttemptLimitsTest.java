package org.vanewright.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.eq;
import static org.mockito.Mockito.atLeastOnce;
import static org.mockito.Mockito.verify;

import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.vanewright.account.SigningIn.Outcome;
import org.vanewright.testing.Databases.Engine;

class AttemptLimitsTest {
    private static final String HERE = "192.0.2.7";

    @ParameterizedTest
    @EnumSource
    void afterFiveWrongPasswordsEvenTheRightOneWaitsEachTimeLonger(Engine engine) {
        try (Bench bench = new Bench(engine)) {
            Person person = bench.add(Role.MEMBER, PersonState.ACTIVE);
            for (int i = 0; i < 5; i++) {
                assertThat(bench.signingIn.attempt(person.email(), "wrong", HERE))
                        .isEqualTo(new Outcome.Refused());
            }
            assertThat(bench.signingIn.attempt(person.email(), NewPeople.PASSWORD, HERE))
                    .isEqualTo(new Outcome.Limited(Duration.ofSeconds(30)));
            verify(bench.audit, atLeastOnce()).add(any(), any(), eq("sign-in.limited"), eq(person.email()), any());
            bench.clock.advance(Duration.ofSeconds(30));
            assertThat(bench.signingIn.attempt(person.email(), "wrong", HERE)).isEqualTo(new Outcome.Refused());
            assertThat(bench.signingIn.attempt(person.email(), NewPeople.PASSWORD, HERE))
                    .isEqualTo(new Outcome.Limited(Duration.ofSeconds(60)));
            bench.clock.advance(Duration.ofSeconds(60));
            assertThat(bench.signingIn.attempt(person.email(), NewPeople.PASSWORD, HERE))
                    .isEqualTo(new Outcome.Accepted(person));
            for (int i = 0; i < 4; i++) {
                bench.signingIn.attempt(person.email(), "wrong", HERE);
            }
            assertThat(bench.signingIn.attempt(person.email(), NewPeople.PASSWORD, HERE))
                    .as("a success starts the count anew")
                    .isEqualTo(new Outcome.Accepted(person));
        }
    }

    @ParameterizedTest
    @EnumSource
    void unknownClosedAndKnownAccountsAreAnsweredAlike(Engine engine) {
        try (Bench bench = new Bench(engine)) {
            Person known = bench.add(Role.MEMBER, PersonState.ACTIVE);
            Person closed = bench.add(Role.MEMBER, PersonState.CLOSED);
            List<String> answers = List.of(known.email(), closed.email(), "nobody@club.example").stream()
                    .map(email -> IntStream.range(0, 8)
                            .mapToObj(i -> bench.signingIn
                                    .attempt(email, "wrong", "192.0.2." + email.length() + i)
                                    .toString())
                            .toList()
                            .toString())
                    .distinct()
                    .toList();
            assertThat(answers).hasSize(1).allMatch(a -> a.contains("Refused") && a.contains("Limited"));
            assertThat(bench.signingIn.attempt(closed.email(), NewPeople.PASSWORD, "198.51.100.1"))
                    .isInstanceOf(Outcome.Limited.class);
        }
    }

    @ParameterizedTest
    @EnumSource
    void aNetworkThatTriesManyAccountsWaitsAndOthersDoNot(Engine engine) {
        try (Bench bench = new Bench(engine)) {
            Person person = bench.add(Role.MEMBER, PersonState.ACTIVE);
            for (int i = 0; i < 30; i++) {
                String address = "2001:db8:1:2::" + Integer.toHexString(i + 1);
                assertThat(bench.signingIn.attempt("a" + i + "@club.example", "wrong", address))
                        .isEqualTo(new Outcome.Refused());
            }
            assertThat(bench.signingIn.attempt(person.email(), NewPeople.PASSWORD, "2001:db8:1:2::99"))
                    .isEqualTo(new Outcome.Limited(Duration.ofSeconds(30)));
            assertThat(bench.signingIn.attempt(person.email(), NewPeople.PASSWORD, "2001:db8:1:3::1"))
                    .isEqualTo(new Outcome.Accepted(person));
        }
    }

    @ParameterizedTest
    @EnumSource
    void manyAttemptsAtOnceAreCountedEach(Engine engine) throws Exception {
        try (Bench bench = new Bench(engine)) {
            Person person = bench.add(Role.MEMBER, PersonState.ACTIVE);
            List<Outcome> outcomes =
                    Races.run(10, i -> bench.signingIn.attempt(person.email(), "wrong", "192.0.2." + i));
            assertThat(outcomes.stream().filter(Outcome.Refused.class::isInstance))
                    .hasSize(5);
            assertThat(outcomes.stream().filter(Outcome.Limited.class::isInstance))
                    .hasSize(5);
        }
    }

    @ParameterizedTest
    @EnumSource
    void whoWaitsForAdmissionLearnsSoOnlyWithThePassword(Engine engine) {
        try (Bench bench = new Bench(engine)) {
            Person pending = bench.add(Role.MEMBER, PersonState.PENDING);
            assertThat(bench.signingIn.attempt(pending.email(), "wrong", HERE)).isEqualTo(new Outcome.Refused());
            assertThat(bench.signingIn.attempt(pending.email(), NewPeople.PASSWORD, HERE))
                    .isEqualTo(new Outcome.Waiting());
        }
    }

    @ParameterizedTest
    @EnumSource
    void aHashOfEarlierSettingsIsMadeAnewAtSignIn(Engine engine) {
        try (Bench bench = new Bench(engine)) {
            Person person = bench.add(Role.MEMBER, PersonState.ACTIVE);
            String old = new Passwords(new PasswordSettings(32, 1, 1)).hash(NewPeople.PASSWORD);
            bench.people.changePassword(person.id(), old);
            assertThat(bench.signingIn.attempt(person.email(), NewPeople.PASSWORD, HERE))
                    .isInstanceOf(Outcome.Accepted.class);
            assertThat(bench.people.passwordHash(person.id()))
                    .hasValueSatisfying(hash -> assertThat(hash).contains("$m=64,t=1,p=1$"));
        }
    }

    @ParameterizedTest
    @EnumSource
    void oldCountersAreForgotten(Engine engine) {
        try (Bench bench = new Bench(engine)) {
            bench.signingIn.attempt("nobody@club.example", "wrong", HERE);
            bench.clock.advance(Duration.ofHours(25));
            bench.limits.tidy();
            assertThat(bench.attempts.find("network:" + HERE)).isEmpty();
        }
    }
}
