package org.vanewright.account;

import java.security.SecureRandom;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Codes for who lost what makes the other ones; long enough (79 bits) that a fast hash suffices. */
final class RecoveryCodes {
    static final int COUNT = 10;
    private static final String ALPHABET = "abcdefghjkmnpqrstuvwxyz23456789";
    private static final int GROUPS = 4;
    private static final int GROUP = 4;

    private final SecureRandom random = new SecureRandom();

    List<String> next() {
        return Stream.generate(this::code).limit(COUNT).toList();
    }

    /** Of a code as typed, however its groups are set apart. */
    static String hash(String typed) {
        return Secrets.hash(typed.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", ""));
    }

    private String code() {
        return Stream.generate(this::group).limit(GROUPS).collect(Collectors.joining("-"));
    }

    private String group() {
        return IntStream.generate(() -> ALPHABET.charAt(random.nextInt(ALPHABET.length())))
                .limit(GROUP)
                .mapToObj(Character::toString)
                .collect(Collectors.joining());
    }
}
