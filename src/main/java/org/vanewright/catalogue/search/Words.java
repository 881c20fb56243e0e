package org.vanewright.catalogue.search;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.LowerCaseFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.Tokenizer;
import org.apache.lucene.analysis.en.EnglishAnalyzer;
import org.apache.lucene.analysis.en.EnglishPossessiveFilter;
import org.apache.lucene.analysis.miscellaneous.ASCIIFoldingFilter;
import org.apache.lucene.analysis.standard.StandardTokenizer;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.tartarus.snowball.ext.EnglishStemmer;

/**
 * Cuts text into words by Unicode's rules (UAX 29), in lower case and without accents, and stems them by the English
 * Snowball stemmer. Words consist of letters, digits and inner dots only.
 */
final class Words {
    /** Characters of a word that are kept. */
    static final int LONGEST = 40;

    private static final Pattern OTHER = Pattern.compile("[^\\p{L}\\p{N}.]+|\\.+$");
    private static final Analyzer ANALYZER = new Analyzer() {
        @Override
        protected TokenStreamComponents createComponents(String field) {
            Tokenizer tokens = new StandardTokenizer();
            return new TokenStreamComponents(
                    tokens, new ASCIIFoldingFilter(new LowerCaseFilter(new EnglishPossessiveFilter(tokens))));
        }
    };

    private Words() {}

    /** In the order of the text, repeated ones, too. */
    static List<String> of(String text) {
        List<String> words = new ArrayList<>();
        try (TokenStream tokens = ANALYZER.tokenStream("", text)) {
            CharTermAttribute term = tokens.addAttribute(CharTermAttribute.class);
            tokens.reset();
            while (tokens.incrementToken()) {
                String word = cut(OTHER.matcher(term.toString()).replaceAll(""));
                if (!word.isEmpty()) {
                    words.add(word);
                }
            }
            tokens.end();
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory is readable", e);
        }
        return List.copyOf(words);
    }

    /** What is common to the forms of a word, such as {@code rotat} of {@code rotating}. */
    static String stem(String word) {
        EnglishStemmer stemmer = new EnglishStemmer();
        stemmer.setCurrent(word);
        stemmer.stem();
        return stemmer.getCurrent();
    }

    /** Whether a word says nothing, such as {@code the}. */
    static boolean isFiller(String word) {
        return EnglishAnalyzer.ENGLISH_STOP_WORDS_SET.contains(word);
    }

    /** Whether a word is a figure or holds one: such words are never taken for a slip of another. */
    static boolean hasDigit(String word) {
        return word.chars().anyMatch(c -> c >= '0' && c <= '9');
    }

    private static String cut(String word) {
        if (word.length() <= LONGEST) {
            return word;
        }
        boolean halved = Character.isHighSurrogate(word.charAt(LONGEST - 1));
        return word.substring(0, halved ? LONGEST - 1 : LONGEST);
    }
}
