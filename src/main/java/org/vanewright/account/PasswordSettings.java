package org.vanewright.account;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * Work of Argon2id for one password. The defaults are those of the OWASP Password Storage Cheat Sheet: 19 MiB, two
 * passes, one lane.
 *
 * @param memoryKib KiB of memory
 * @param passes over that memory
 * @param atOnce hashes computed at a time by this instance, which bounds its memory
 */
@ConfigurationProperties("vanewright.password")
record PasswordSettings(
        @DefaultValue("19456") int memoryKib,
        @DefaultValue("2") int passes,
        @DefaultValue("4") int atOnce) {}
