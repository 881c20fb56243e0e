package org.vanewright.account;

import static org.assertj.core.api.Assertions.assertThat;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.UUID;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.vanewright.testing.Databases;
import org.vanewright.testing.Databases.Engine;

class AccessTokenRepositoryTest {
    private static final Instant NOW = Instant.parse("2026-03-01T09:00:00.123456Z");

    private static AccessToken token(Person owner, String name) {
        return new AccessToken(
                UUID.randomUUID().toString(),
                owner.id(),
                name,
                EnumSet.of(TokenScope.READ, TokenScope.REVIEW),
                NOW,
                NOW.plus(Duration.ofDays(30)),
                null);
    }

    @ParameterizedTest
    @EnumSource(Engine.class)
    void aTokenWorksUntilItExpiresOrItsOwnerLeaves(Engine engine) {
        try (HikariDataSource source = Databases.migrated(engine)) {
            PersonRepository people = Databases.transactional(source, PersonRepository::new);
            AccessTokenRepository tokens = Databases.transactional(source, AccessTokenRepository::new);
            Person owner = NewPeople.person(Role.MAINTAINER, PersonState.ACTIVE);
            people.add(owner, null);
            AccessToken token = token(owner, "workshop");
            tokens.add(token, "hash");
            assertThat(tokens.findUsable("hash", NOW)).contains(token);
            assertThat(tokens.findUsable("hash", token.expiresAt().minusNanos(1000)))
                    .isPresent();
            assertThat(tokens.findUsable("hash", token.expiresAt())).isEmpty();
            assertThat(tokens.findUsable("other", NOW)).isEmpty();
            people.place(owner.id(), Role.MAINTAINER, PersonState.CLOSED);
            assertThat(tokens.findUsable("hash", NOW)).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource(Engine.class)
    void aUseIsNotedOnceInAWhile(Engine engine) {
        try (HikariDataSource source = Databases.migrated(engine)) {
            PersonRepository people = Databases.transactional(source, PersonRepository::new);
            AccessTokenRepository tokens = Databases.transactional(source, AccessTokenRepository::new);
            Person owner = NewPeople.person(Role.MEMBER, PersonState.ACTIVE);
            people.add(owner, null);
            AccessToken token = token(owner, "workshop");
            tokens.add(token, "hash");
            Duration minute = Duration.ofMinutes(1);
            tokens.used(token.id(), NOW, NOW.minus(minute));
            tokens.used(token.id(), NOW.plusSeconds(59), NOW.plusSeconds(59).minus(minute));
            assertThat(tokens.all(owner.id()))
                    .extracting(AccessToken::lastUsedAt)
                    .containsExactly(NOW);
            tokens.used(token.id(), NOW.plusSeconds(60), NOW.plusSeconds(60).minus(minute));
            assertThat(tokens.all(owner.id()))
                    .extracting(AccessToken::lastUsedAt)
                    .containsExactly(NOW.plusSeconds(60));
        }
    }

    @ParameterizedTest
    @EnumSource(Engine.class)
    void onlyItsOwnerTakesATokenAway(Engine engine) {
        try (HikariDataSource source = Databases.migrated(engine)) {
            PersonRepository people = Databases.transactional(source, PersonRepository::new);
            AccessTokenRepository tokens = Databases.transactional(source, AccessTokenRepository::new);
            Person owner = NewPeople.person(Role.MEMBER, PersonState.ACTIVE);
            Person other = NewPeople.person(Role.MEMBER, PersonState.ACTIVE);
            people.add(owner, null);
            people.add(other, null);
            AccessToken token = token(owner, "workshop");
            tokens.add(token, "hash");
            tokens.add(token(owner, "hangar"), "another hash");
            assertThat(tokens.remove(other.id(), token.id())).isFalse();
            assertThat(tokens.remove(owner.id(), token.id())).isTrue();
            assertThat(tokens.remove(owner.id(), token.id())).isFalse();
            assertThat(tokens.removeAll(other.id())).isZero();
            assertThat(tokens.removeAll(owner.id())).isEqualTo(1);
            assertThat(tokens.all(owner.id())).isEmpty();
        }
    }
}
