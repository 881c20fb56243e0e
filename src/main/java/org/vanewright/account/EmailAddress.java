package org.vanewright.account;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** E-mail addresses as accounts know them: in lower case, short, of plain visible characters. */
final class EmailAddress {
    private static final int LONGEST = 254;
    private static final Pattern USUAL = Pattern.compile(
            "[a-z0-9!#$%&'*+/=?^_`{|}~-]+(\\.[a-z0-9!#$%&'*+/=?^_`{|}~-]+)*@[a-z0-9]([a-z0-9-]*[a-z0-9])?(\\.[a-z0-9]([a-z0-9-]*[a-z0-9])?)+");

    private EmailAddress() {}

    /** In the form in which accounts are found; empty for anything that is no address. */
    static Optional<String> of(@Nullable String typed) {
        String address = typed == null ? "" : typed.strip();
        if (address.length() > LONGEST) {
            return Optional.empty();
        }
        String lower = address.toLowerCase(Locale.ROOT);
        return USUAL.matcher(lower).matches() ? Optional.of(lower) : Optional.empty();
    }
}
