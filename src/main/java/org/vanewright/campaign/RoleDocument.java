package org.vanewright.campaign;

import org.jspecify.annotations.Nullable;

/**
 * Somebody who takes part, by what they do.
 *
 * @param role such as pilot, observer, ground
 * @param who as they wish to be called in public; may be absent
 */
public record RoleDocument(@Nullable String role, @Nullable String who) {}
