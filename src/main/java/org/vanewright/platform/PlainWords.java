package org.vanewright.platform;

import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;

/** What an HTTP status means, in words for the person who meets it. */
final class PlainWords {
    private PlainWords() {}

    static String title(int status) {
        HttpStatus known = HttpStatus.resolve(status);
        return switch (status) {
            case 400 -> "Input cannot be used";
            case 403 -> "Not allowed";
            case 404 -> "Not found";
            case 413 -> "Request too large";
            default -> reason(known);
        };
    }

    static String detail(int status) {
        return switch (status) {
            case 400 -> "The request could not be understood.";
            case 403 -> "This may not be done here.";
            case 404 -> "There is nothing at this address.";
            case 405 -> "This address does not take requests of this kind.";
            case 406 -> "This address has no answer in a form that was asked for.";
            case 413 -> "More was sent than may be sent at once.";
            case 429 -> "More was asked for from one address than one may ask for in a minute. Try again shortly.";
            case 415 -> "This address does not read content of this type.";
            default -> "The request could not be answered.";
        };
    }

    private static String reason(@Nullable HttpStatus known) {
        return known == null ? "Problem" : known.getReasonPhrase();
    }
}
