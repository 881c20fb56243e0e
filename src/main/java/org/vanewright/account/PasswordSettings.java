package org.vanewright.account;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.validation.annotation.Validated;

/**
 * Work of Argon2id for one password. The defaults are those of the OWASP Password Storage Cheat Sheet: 19 MiB, two
 * passes, one lane.
 *
 * @param memoryKib KiB of memory, at least 8 for one lane (RFC 9106, section 3.1)
 * @param passes over that memory
 * @param atOnce hashes computed at a time by this instance, which bounds its memory
 */
@Validated
@ConfigurationProperties("vanewright.password")
record PasswordSettings(
        @Min(8) @Max(4_194_304) @DefaultValue("19456") int memoryKib,
        @Min(1) @Max(1000) @DefaultValue("2") int passes,
        @Min(1) @Max(1000) @DefaultValue("4") int atOnce) {}
