package org.vanewright.account;

import static org.assertj.core.api.Assertions.assertThat;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.vanewright.account.SecondFactorRepository.Stored;
import org.vanewright.testing.Databases;
import org.vanewright.testing.Databases.Engine;

class SecondFactorRepositoryTest {
    private static final Instant NOW = Instant.parse("2026-03-01T09:00:00.123456Z");
    private static final int MANY = 6;

    private static Person added(HikariDataSource source) {
        Person person = NewPeople.person(Role.MEMBER, PersonState.ACTIVE);
        Databases.transactional(source, PersonRepository::new).add(person, null);
        return person;
    }

    @ParameterizedTest
    @EnumSource(Engine.class)
    void aSecretIsInUseOnlyOnceItWasProven(Engine engine) {
        try (HikariDataSource source = Databases.migrated(engine)) {
            SecondFactorRepository factors = Databases.transactional(source, SecondFactorRepository::new);
            String id = added(source).id();
            factors.prepare(id, "first");
            factors.prepare(id, "second");
            assertThat(factors.find(id)).contains(new Stored("second", false));
            assertThat(factors.useStep(id, 10)).isFalse();
            assertThat(factors.switchOn(id, "first", 10, NOW, List.of("a"))).isFalse();
            assertThat(factors.recoveryCodes(id)).isZero();
            assertThat(factors.switchOn(id, "second", 10, NOW, List.of("a", "b")))
                    .isTrue();
            assertThat(factors.switchOn(id, "second", 11, NOW, List.of("c"))).isFalse();
            factors.prepare(id, "third");
            assertThat(factors.find(id)).contains(new Stored("second", true));
            assertThat(factors.recoveryCodes(id)).isEqualTo(2);
            assertThat(factors.remove(id)).isTrue();
            assertThat(factors.remove(id)).isFalse();
            assertThat(factors.find(id)).isEmpty();
            assertThat(factors.recoveryCodes(id)).isZero();
        }
    }

    @ParameterizedTest
    @EnumSource(Engine.class)
    void everyCodeWorksForOneOfManyAtOnce(Engine engine) throws Exception {
        try (HikariDataSource source = Databases.migrated(engine)) {
            SecondFactorRepository factors = Databases.transactional(source, SecondFactorRepository::new);
            String id = added(source).id();
            factors.prepare(id, "secret");
            factors.switchOn(id, "secret", 10, NOW, List.of("a", "b"));
            assertThat(factors.useStep(id, 10)).isFalse();
            assertThat(AtOnce.successes(MANY, () -> factors.useStep(id, 12))).isEqualTo(1);
            assertThat(factors.useStep(id, 11)).isFalse();
            assertThat(AtOnce.successes(MANY, () -> factors.useRecoveryCode(id, "a")))
                    .isEqualTo(1);
            assertThat(factors.useRecoveryCode(id, "c")).isFalse();
            assertThat(factors.recoveryCodes(id)).isEqualTo(1);
        }
    }

    @ParameterizedTest
    @EnumSource(Engine.class)
    void aLaterLinkEndsTheEarlierOfThatPersonOnly(Engine engine) {
        try (HikariDataSource source = Databases.migrated(engine)) {
            ResetLinkRepository resets = Databases.transactional(source, ResetLinkRepository::new);
            LinkRepository links = Databases.transactional(source, LinkRepository::new);
            Person kim = added(source);
            Person lou = added(source);
            links.add(link(kim), "of kim");
            links.add(link(lou), "of lou");
            resets.endAll(kim.id());
            assertThat(links.open(OneTimeLink.Purpose.RESET, "of kim", NOW)).isEmpty();
            assertThat(links.open(OneTimeLink.Purpose.RESET, "of lou", NOW)).isPresent();
        }
    }

    private static OneTimeLink link(Person person) {
        return new OneTimeLink(
                person.id(), OneTimeLink.Purpose.RESET, null, person.id(), "", "mail", NOW, NOW.plusSeconds(3600));
    }
}
