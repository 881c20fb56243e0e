package org.vanewright.account;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import me.gosimple.nbvcxz.Nbvcxz;
import me.gosimple.nbvcxz.resources.Configuration;
import me.gosimple.nbvcxz.resources.ConfigurationBuilder;
import me.gosimple.nbvcxz.resources.Dictionary;
import me.gosimple.nbvcxz.resources.DictionaryBuilder;
import me.gosimple.nbvcxz.scoring.Result;
import org.springframework.stereotype.Component;

/** Estimates how many guesses a password withstands. */
@Component
public class PasswordStrength {
    /** What stands beyond only makes it harder to guess, and the estimate slower. */
    private static final int LONGEST_LOOKED_AT = 64;

    private static final long PATIENCE_MS = 300;
    private static final Pattern NO_LETTER = Pattern.compile("[^\\p{L}\\p{N}]+");
    private static final int SHORTEST_WORD = 4;
    private static final List<String> OUR_WORDS = List.of("vanewright", "airframe", "vortex", "generator");
    private static final List<String> LABELS = List.of("very weak", "weak", "fair", "good", "strong");

    /** Powers of ten of guesses from which a password is weak, fair, good, strong; common practice, no source. */
    private static final double[] STEPS = {6, 9, 11, 14};

    /** Read when a password is first chosen: they take time and memory. */
    private static final class Common {
        static final List<Dictionary> DICTIONARIES = ConfigurationBuilder.getDefaultDictionaries();
    }

    /**
     * An estimate.
     *
     * @param score 0 to {@link #BEST}
     */
    public record Estimate(int score) {
        public static final int BEST = 4;

        public String label() {
            return LABELS.get(score);
        }

        /** Whether somebody without luck needs long enough to guess it. */
        public boolean suffices() {
            return score >= 2;
        }
    }

    /**
     * Estimates.
     *
     * @param personal what others know of the person, such as name and address
     */
    public Estimate of(String password, String... personal) {
        if (password.isEmpty()) {
            return new Estimate(0);
        }
        List<Dictionary> dictionaries = new ArrayList<>(Common.DICTIONARIES);
        dictionaries.add(new DictionaryBuilder()
                .setDictionaryName("personal")
                .setExclusion(true)
                .addWords(words(personal), 1)
                .createDictionary());
        Configuration configuration = new ConfigurationBuilder()
                .setLocale(Locale.ENGLISH)
                .setDictionaries(dictionaries)
                .setMaxLength(LONGEST_LOOKED_AT)
                .setCombinationAlgorithmTimeout(PATIENCE_MS)
                .createConfiguration();
        Result result = new Nbvcxz(configuration).estimate(shortened(password));
        double power = Math.log10(Math.max(1, result.getGuesses().doubleValue()));
        int score = 0;
        while (score < STEPS.length && power >= STEPS[score]) {
            score++;
        }
        return new Estimate(score);
    }

    /** Words of a person's details that are long enough to be recognised. */
    static List<String> words(String... personal) {
        Stream<String> theirs = Stream.of(personal).flatMap(NO_LETTER::splitAsStream);
        return Stream.concat(theirs, OUR_WORDS.stream())
                .map(word -> word.toLowerCase(Locale.ROOT))
                .filter(word -> word.length() >= SHORTEST_WORD)
                .distinct()
                .toList();
    }

    private static String shortened(String password) {
        int points = password.codePointCount(0, password.length());
        return points <= LONGEST_LOOKED_AT
                ? password
                : password.substring(0, password.offsetByCodePoints(0, LONGEST_LOOKED_AT));
    }
}
